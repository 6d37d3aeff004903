package everyblade.core.gap;

import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.AirfoilNames;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

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
        return what + ": " + state + " (" + why(gap.why()) + ")" + reach(gap, zoning) + ".";
    }

    private static String why(Why why) {
        return switch (why) {
            case SKIPPED -> "skipped";
            case NO_ACCESS -> "no view of this engine model shows it";
            case FAST -> "in view too briefly";
            case COUNT_LOST -> "the count was lost";
            case PLAY -> "the turning tool has too much play";
        };
    }

    private static String reach(Gap gap, Zoning zoning) {
        if (gap.reach().isEmpty()) {
            return gap.why() == Why.NO_ACCESS ? "" : "; to reach it, first bring a known airfoil to the reference";
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
        return "; through view " + reach.view() + part + " " + go + watch;
    }

    private static String number(double degrees) {
        return BigDecimal.valueOf(degrees)
                .setScale(1, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Zones in few words: whole bands where all of a band belongs, else zone by zone. */
    public static String zones(Zoning zoning, ZoneSet zones) {
        if (zones.equals(zoning.all())) {
            return "everything";
        }
        List<String> words = new ArrayList<>();
        ZoneSet rest = zones;
        rest = bands(zoning.spans(), zoning::span, zones, rest, words);
        rest = bands(zoning.sides(), zoning::side, zones, rest, words);
        rest = bands(zoning.chords(), zoning::chord, zones, rest, words);
        List<String> names = zoning.names();
        for (int zone = 0; zone < names.size(); zone++) {
            if (rest.contains(zone)) {
                words.add(names.get(zone));
            }
        }
        return String.join(" and ", words);
    }

    private static ZoneSet bands(
            List<String> names,
            java.util.function.IntFunction<ZoneSet> band,
            ZoneSet zones,
            ZoneSet rest,
            List<String> words) {
        ZoneSet left = rest;
        for (int i = 0; i < names.size(); i++) {
            ZoneSet whole = band.apply(i);
            boolean inside = zones.intersection(whole).equals(whole);
            if (inside && !left.intersection(whole).isEmpty()) {
                words.add(names.get(i));
                left = left.minus(whole);
            }
        }
        return left;
    }
}
