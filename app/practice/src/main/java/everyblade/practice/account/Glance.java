package everyblade.practice.account;

import everyblade.core.sight.Pose;
import everyblade.practice.drill.Hands;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Mockup;
import everyblade.practice.eye.EyeFrame;
import everyblade.practice.eye.Optics;
import everyblade.practice.eye.Raster;
import everyblade.practice.harm.Harm;
import java.util.BitSet;
import java.util.List;

/** Tells which harms are in the picture at a moment; costs some milliseconds. For one thread. */
public final class Glance {

    private static final int SIZE = 320;

    private final Mockup mockup;
    private final Hands hands;
    private final List<Harm> harms;
    private final Raster raster = new Raster(SIZE);

    public Glance(Mockup mockup, Hands hands, List<Harm> harms) {
        this.mockup = mockup;
        this.hands = hands;
        this.harms = List.copyOf(harms);
    }

    /**
     * What is in the picture.
     *
     * @param properly harms that could be called from it, by their index
     * @param atAll these, and those that are in it too small, too slantwise or out of focus
     */
    public record Harms(BitSet properly, BitSet atAll) {}

    /** At a moment. */
    public Harms at(Moment moment) {
        Pose pose = hands.pose(moment.tip());
        Optics optics = hands.optics(moment.tip());
        EyeFrame frame = raster.draw(mockup.at(moment.shafts()), pose, optics.dark());
        LookedAt looked = new LookedAt(frame, mockup, pose, harms);
        Harms seen = new Harms(new BitSet(), new BitSet());
        for (int harm = 0; harm < harms.size(); harm++) {
            LookedAt.How how = looked.at(harm);
            seen.properly().set(harm, how == LookedAt.How.PROPERLY);
            seen.atAll().set(harm, how != LookedAt.How.NOT);
        }
        return seen;
    }
}
