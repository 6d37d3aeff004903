package everyblade.core.gap;

import everyblade.core.coverage.State;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.AirfoilNames;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.BitSet;

/** A gap in one sentence, as one person would tell another. */
public final class GapText {

    private GapText() {}

    /** The sentence, without a line break. */
    public static String of(Gap gap) {
        BitSet airfoils = new BitSet();
        gap.airfoils().forEach(n -> airfoils.set(n - 1));
        Zoning zoning = Zoning.of(gap.row());
        String what = gap.row().name() + " (" + gap.row().id() + "): " + AirfoilNames.of(gap.row(), airfoils) + ", "
                + zones(zoning, gap.zones());
        String state = gap.state() == State.MAYBE ? "only maybe seen" : "not seen";
        return what + ": " + state + " (" + gap.why().words() + ")" + reach(gap, zoning) + ".";
    }

    private static String reach(Gap gap, Zoning zoning) {
        if (gap.reach().isEmpty()) {
            return gap.why().outOfReach()
                    ? ""
                    : "; to reach it, first bring a known airfoil to the reference"
                            + gap.first().map(known -> landmark(gap, known)).orElse("");
        }
        Gap.Reach reach = gap.reach().get();
        String part = reach.zones().equals(gap.zones()) ? "" : " for " + zones(zoning, reach.zones());
        String from = number(reach.from());
        String far = number(Math.abs(reach.sweep()));
        String way = reach.sweep() >= 0 ? "clockwise" : "counter-clockwise";
        String go = reach.drawn() ? "feed the scope tip to " + from + "°" : "turn unwatched to " + from + "°";
        String watch = reach.sweep() == 0
                ? " and look"
                : (reach.drawn() ? ", then draw it " : ", then turn ") + far + "° " + way + " watching";
        String station = reach.station().map(id -> ", station " + id).orElse("");
        return "; through view " + reach.view() + station + part + (station.isEmpty() ? " " : ", ") + go + watch;
    }

    private static String landmark(Gap gap, Gap.Landmark known) {
        return ": " + gap.row().kind().airfoil() + " " + known.airfoil() + " ("
                + known.what().orElse("any that you mark") + "), in view " + known.view() + " at "
                + number(known.reference()) + "°";
    }

    private static String number(double degrees) {
        return BigDecimal.valueOf(degrees)
                .setScale(1, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Zones in few words: the largest parts that hold nothing else, such as {@code tip and pressure/leading}. */
    public static String zones(Zoning zoning, ZoneSet zones) {
        return ZonePhrase.of(zoning, zones).written();
    }
}
