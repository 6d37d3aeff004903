package everyblade.practice.account;

import everyblade.core.sight.Pose;
import everyblade.core.sight.Progress;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.UnusableShape;
import everyblade.practice.account.SeenFacets.Turning;
import everyblade.practice.drill.Hands;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Mockup;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.drill.Truth;
import everyblade.practice.eye.EyeFrame;
import everyblade.practice.eye.Optics;
import everyblade.practice.eye.Raster;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * Goes through the track of a drill again, and keeps account of what was in the picture: by a small frame of each sample, whose
 * faces are known. Costs some milliseconds a sample.
 */
public final class DrillReplay {

    /** Picture elements across; coarser than the trainee's picture. */
    private static final int SIZE = 320;

    /** Whoever does nothing for longer than this is taken to have left, seconds. */
    private static final double LONGEST = 20;

    /** What was moved within so short a time is gone through once, seconds: half of what it takes to be looked at. */
    private static final double STEP = TargetSighting.LEAST / 2;

    /** An airfoil that fills this share of the picture is being looked at. */
    private static final double GOOD_PART = 0.04;

    private final Truth truth;
    private final TipTrack track;
    private final Mockup mockup;
    private final Hands hands;
    private final Raster raster = new Raster(SIZE);
    private final List<TargetSighting> harms = new ArrayList<>();
    private final Map<String, List<BitSet>> facets = new HashMap<>();
    private final Map<String, double[]> seconds = new HashMap<>();
    private Optional<Look> looked = Optional.empty();
    private double degrees;
    private double turned;
    private double fastest;

    /** A picture that was gone through; most of a drill nothing moves, and it need be gone through once only. */
    private record Look(Moment moment, LookedAt at) {}

    private DrillReplay(ViewScene engine, Truth truth, TipTrack track) throws UnusableShape {
        this.truth = truth;
        this.track = track;
        this.mockup = new Mockup(
                engine, truth.harms(), truth.standing(), truth.recipe().grime());
        this.hands = new Hands(engine, mockup);
        truth.harms().forEach(harm -> harms.add(TargetSighting.NEVER));
        for (Row row : engine.model().rows()) {
            List<BitSet> each = new ArrayList<>();
            for (int i = 0; i < row.count(); i++) {
                each.add(new BitSet());
            }
            facets.put(row.id(), each);
            seconds.put(row.id(), new double[row.count()]);
        }
    }

    /**
     * What a drill had in sight.
     *
     * @throws UnusableShape if a shape gives no surface
     * @throws CancellationException if {@code progress} says so
     */
    public static SeenFacets of(ViewScene engine, Truth truth, TipTrack track, Progress progress) throws UnusableShape {
        DrillReplay replay = new DrillReplay(engine, truth, track);
        int size = track.samples().size();
        double pending = 0;
        for (int i = 0; i < size; i++) {
            if (progress.cancelled()) {
                throw new CancellationException("the account of the drill was cancelled");
            }
            double stood = Math.min(LONGEST, track.seconds(i));
            pending += stood;
            if (pending >= STEP || i + 2 >= size && pending > 0) {
                replay.look(
                        track.samples().get(i).moment(),
                        pending,
                        track.samples().get(i).millis());
                pending = 0;
            }
            if (stood > 0) {
                replay.turning(i, stood);
            }
            progress.done(i + 1, size);
        }
        return new SeenFacets(
                replay.harms,
                replay.facets,
                replay.seconds,
                new Turning(replay.degrees, replay.turned, replay.fastest));
    }

    private void turning(int index, double stood) {
        double most = 0;
        Moment here = track.samples().get(index).moment();
        Moment next = track.samples().get(index + 1).moment();
        for (Map.Entry<String, Double> shaft : next.shafts().entrySet()) {
            most = Math.max(
                    most, Math.abs(shaft.getValue() - here.shafts().getOrDefault(shaft.getKey(), shaft.getValue())));
        }
        if (most > 0) {
            degrees += most;
            turned += stood;
            fastest = Math.max(fastest, most / stood);
        }
    }

    private void look(Moment moment, double stood, long millis) {
        if (!looked.map(before -> before.moment.equals(moment)).orElse(false)) {
            looked = Optional.of(new Look(moment, drawn(moment)));
        }
        LookedAt here = looked.get().at;
        for (int harm = 0; harm < harms.size(); harm++) {
            LookedAt.How how = here.at(harm);
            if (how != LookedAt.How.NOT) {
                harms.set(harm, harms.get(harm).and(how == LookedAt.How.PROPERLY, stood, millis));
            }
        }
        here.shares().forEach((owner, share) -> {
            if (share >= GOOD_PART && owner.airfoil() > 0) {
                seconds.get(owner.row())[owner.airfoil() - 1] += stood;
            }
        });
    }

    private LookedAt drawn(Moment moment) {
        Pose pose = hands.pose(moment.tip());
        Optics optics = hands.optics(moment.tip());
        EyeFrame frame = raster.draw(mockup.at(moment.shafts()), pose, optics.dark());
        LookedAt drawn = new LookedAt(frame, mockup, pose, truth.harms());
        drawn.facets(facets);
        return drawn;
    }
}
