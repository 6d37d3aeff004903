package everyblade.session.around;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PatienceTest {

    private static final String LINE = "Part 1: 40 %; Ctrl+C stops it";

    private final Onlooker onlooker = new Onlooker();

    private Patience patience(boolean watched) {
        return new Patience(onlooker.around(watched), "wait.sight");
    }

    @Test
    void aPersonIsToldAfterHalfASecondHowFarItIsInALineThatGoesInTheEnd() {
        Patience patience = patience(true);
        onlooker.now = 499;
        patience.done(1, 10);
        assertThat(onlooker.told()).isEmpty();
        onlooker.now = 500;
        patience.done(2, 10);
        assertThat(onlooker.told())
                .startsWith("Computing what each view can show of the blades.")
                .endsWith("\rPart 1: 20 %; Ctrl+C stops it");
        onlooker.now = 600;
        patience.done(3, 10);
        assertThat(onlooker.told()).endsWith("20 %; Ctrl+C stops it");
        onlooker.now = 700;
        patience.done(4, 10);
        assertThat(onlooker.told()).endsWith("\r" + LINE);
        patience.done(10, 10);
        assertThat(onlooker.told()).endsWith(LINE + "\r" + " ".repeat(LINE.length()) + "\r");
        onlooker.now = 900;
        patience.done(1, 4);
        assertThat(onlooker.told()).endsWith("\rPart 2: 25 %; Ctrl+C stops it").containsOnlyOnce("Computing");
    }

    @Test
    void nobodyIsToldOfWhatIsOverBefore() {
        Patience patience = patience(true);
        patience.done(1, 2);
        patience.done(2, 2);
        assertThat(onlooker.told()).isEmpty();
    }

    @Test
    void aFileIsNotToldThatSomebodyWaits() {
        Patience patience = patience(false);
        onlooker.now = 60_000;
        patience.done(1, 2);
        assertThat(onlooker.told()).isEmpty();
    }
}
