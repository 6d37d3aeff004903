package everyblade.window.view;

import everyblade.core.angle.Turn;
import everyblade.core.finding.Finding;
import everyblade.core.sight.Lens;
import everyblade.core.sight.Pose;
import everyblade.practice.account.Burst;
import everyblade.practice.account.Debrief;
import everyblade.practice.account.Outcome;
import everyblade.practice.account.Outcome.Fate;
import everyblade.practice.drill.Hands;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Mockup;
import everyblade.practice.drill.Truth;
import everyblade.practice.eye.Optics;
import everyblade.practice.eye.Picture;
import everyblade.practice.eye.Raster;
import everyblade.practice.harm.Harm;
import everyblade.session.drill.DrillRecord;
import everyblade.session.drill.DrillText;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Makes pictures of moments, as the scope tip sees them, and tells what a call is worth. Never changes but for its drawing tools. */
public final class ScopeEye {

    private final DrillRecord drill;
    private final Mockup mockup;
    private final Hands hands;
    private final Truth truth;
    private final Map<Integer, Raster> rasters = new TreeMap<>();
    private int shots;

    ScopeEye(DrillRecord drill, Mockup mockup, Hands hands, Truth truth) {
        this.drill = drill;
        this.mockup = mockup;
        this.hands = hands;
        this.truth = truth;
    }

    /**
     * A picture.
     *
     * @param size picture elements across
     * @param pixels alpha, red, green and blue of each, line by line
     */
    public record Shot(int size, int[] pixels) {}

    /**
     * The picture of a moment.
     *
     * @param most picture elements across; never more than the scope tip has
     */
    public Shot shot(Moment moment, int most) {
        Pose pose = hands.pose(moment.tip());
        Optics optics = hands.optics(moment.tip());
        int size = Math.min(most, pose.pixels());
        Raster raster = rasters.computeIfAbsent(size, Raster::new);
        return new Shot(
                size, Picture.of(raster.draw(mockup.at(moment.shafts()), pose, optics.dark()), optics, shots++));
    }

    /**
     * Where something is in the picture of a moment, as shares of its width and height, and how far it reaches.
     *
     * @param x from the left
     * @param y from the top
     */
    public record Spot(double x, double y, double radius) {}

    /** Where a harm is in the picture; empty if it is behind the scope tip or outside the field. */
    public Optional<Spot> spot(Moment moment, Harm harm) {
        Row row = drill.row(harm);
        double shaft = row.spool()
                .map(spool -> moment.shafts().getOrDefault(spool, 0.0))
                .orElse(0.0);
        Turn clock = mockup.clock(harm.row(), harm.airfoil(), shaft);
        double turned = Math.toRadians(clock.degrees());
        double y = harm.at().y() * Math.cos(turned) + harm.at().z() * Math.sin(turned);
        double z = harm.at().z() * Math.cos(turned) - harm.at().y() * Math.sin(turned);
        int size = 1000;
        Lens lens = new Lens(hands.pose(moment.tip()), size);
        double[] seen = lens.seen(harm.at().x(), y, z);
        if (seen[2] <= 0) {
            return Optional.empty();
        }
        double across = lens.across(seen) / size;
        double down = lens.down(seen) / size;
        double radius = lens.across(new double[] {harm.size(), 0, seen[2]}) / size - 0.5;
        return Math.hypot(across - 0.5, down - 0.5) > 0.5
                ? Optional.empty()
                : Optional.of(new Spot(across, down, Math.max(0.02, radius)));
    }

    /** What a call is worth, said at once. */
    public String answer(Finding call, Words words) {
        Debrief debrief = Burst.debrief(truth, List.of(call));
        return debrief.outcomes().stream()
                .filter(Outcome::found)
                .findFirst()
                .map(outcome -> outcome.fate() == Fate.CALLED
                        ? words.say(
                                "drill.answer.right",
                                words.number(outcome.harm().size(), 2))
                        : words.say(
                                "drill.answer.nearly",
                                words.say(outcome.harm().kind().called().orElseThrow()),
                                new DrillText(words)
                                        .airfoil(
                                                drill.row(outcome.harm()),
                                                outcome.harm().airfoil()),
                                new DrillText(words).zone(outcome.harm())))
                .orElseGet(() -> words.say(
                        "drill.answer.wrong",
                        call.row().id(),
                        new DrillText(words).airfoil(call.row(), call.airfoil())));
    }
}
