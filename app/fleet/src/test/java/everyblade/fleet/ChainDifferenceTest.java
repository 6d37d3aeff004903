package everyblade.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.SealedLine;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is to be done with a chain is told by a few of its hashes, since each holds all lines before it. */
class ChainDifferenceTest {

    /** Lines whose hashes are these letters. */
    private static List<SealedLine> lines(String hashes) {
        return IntStream.range(0, hashes.length())
                .mapToObj(n -> new SealedLine(n, new byte[0], hashes.substring(n, n + 1)))
                .toList();
    }

    private static ChainDifference of(String here, String there) throws StoreRefusal {
        return ChainDifference.of(lines(here), there.length() - 1, n -> there.substring(n, n + 1));
    }

    @Test
    void theSameIsTheSame() throws StoreRefusal {
        assertThat(of("abc", "abc")).isEqualTo(new ChainDifference.Same());
        assertThat(of("", "")).isEqualTo(new ChainDifference.Same());
    }

    @Test
    void whatIsOnlyHereIsSentAndWhatIsOnlyThereIsBrought() throws StoreRefusal {
        assertThat(of("abcd", "ab")).isEqualTo(new ChainDifference.Send(2));
        assertThat(of("abcd", "")).isEqualTo(new ChainDifference.Send(0));
        assertThat(of("ab", "abcd")).isEqualTo(new ChainDifference.Bring(2));
        assertThat(of("", "ab")).isEqualTo(new ChainDifference.Bring(0));
    }

    @Test
    void twoContinuationsPartAtTheFirstLineThatDiffersHoweverLongEachIs() throws StoreRefusal {
        assertThat(of("abcd", "abxyz")).isEqualTo(new ChainDifference.Parted(2));
        assertThat(of("abcdefgh", "abx")).isEqualTo(new ChainDifference.Parted(2));
        assertThat(of("a", "x")).isEqualTo(new ChainDifference.Parted(0));
        assertThat(of("abcdefghijklm", "abcdefghijklX")).isEqualTo(new ChainDifference.Parted(12));
    }

    @Test
    void fewLinesAreAskedFor() throws StoreRefusal {
        AtomicInteger asked = new AtomicInteger();
        List<SealedLine> here = IntStream.range(0, 1000)
                .mapToObj(n -> new SealedLine(n, new byte[0], "h" + n))
                .toList();

        ChainDifference course = ChainDifference.of(here, 999, n -> {
            asked.incrementAndGet();
            return n < 700 ? "h" + n : "other";
        });

        assertThat(course).isEqualTo(new ChainDifference.Parted(700));
        assertThat(asked.get()).isLessThan(13);
    }
}
