package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Zones said in the words of the entry that watches them, against how that entry is read. */
class WatchWordsTest {

    /** Root and tip, both sides, leading edge, middle and trailing edge: twelve zones. */
    private final Zoning zoning = new Engines()
            .row(
                    "r",
                    RowKind.ROTOR,
                    12,
                    Direction.CW,
                    2,
                    List.of(ChordBand.values()).subList(0, 3),
                    true,
                    0)
            .built()
            .zonings()
            .get("r");

    @Test
    void whateverIsToBeWatchedIsSaidExactly() throws Refusal {
        for (long bits = 1; bits < 1 << zoning.size(); bits++) {
            ZoneSet zones = new ZoneSet(bits);
            List<Said<String>> said = WatchWords.of(zoning, zones).stream()
                    .map(word -> new Said<>(word, 1))
                    .toList();
            assertThat(ZoneWords.parts(zoning, said)).isEqualTo(zones);
        }
    }

    @Test
    void bandsAreNamedAndNotTheirZones() {
        assertThat(WatchWords.of(zoning, zoning.all())).containsExactly("all");
        assertThat(WatchWords.of(zoning, zoning.span(1))).containsExactly("tip");
        assertThat(WatchWords.of(zoning, zoning.span(0).intersection(zoning.side(1))))
                .containsExactly("root", "suction");
        assertThat(WatchWords.of(zoning, zoning.chord(0).union(zoning.chord(2))))
                .containsExactly("leading", "trailing");
        assertThat(WatchWords.of(zoning, new ZoneSet(0b1))).containsExactly("root", "pressure", "leading");
    }

    @Test
    void zonesThatNoBandsMeetAreNamedOneByOne() {
        assertThat(WatchWords.of(zoning, new ZoneSet(0b100000000001)))
                .containsExactly(zoning.names().get(0), zoning.names().get(11));
    }
}
