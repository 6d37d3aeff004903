package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.English;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import java.util.List;
import org.junit.jupiter.api.Test;

class ZonesTheOtherWayTest {

    private static final Zoning BLADE = new Zoning(
            List.of("root", "tip"), List.of("pressure", "suction"), List.of("leading", "middle", "trailing"));

    @Test
    void areUnderstoodInTheWordsInWhichGapsTellThem() throws Refusal {
        for (long bits = 1; bits <= BLADE.all().bits(); bits++) {
            ZoneSet zones = new ZoneSet(bits);
            String told = English.say(ZonePhrase.of(BLADE, zones));
            assertThat(ZoneWords.zone(BLADE, new Said<>(told, 1))).as(told).isEqualTo(zones);
        }
    }
}
