package everyblade.practice.account;

import everyblade.core.sight.Pose;
import everyblade.practice.drill.Mockup;
import everyblade.practice.drill.Mockup.Owner;
import everyblade.practice.eye.EyeFrame;
import everyblade.practice.harm.Harm;
import everyblade.practice.harm.Vector;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What one frame has in it, and how well: faces by their number, harms by the picture elements that lie on them. */
final class LookedAt {

    /** So many picture elements of the scope tip lie across what can be recognised, and so far from grazing, as in a job. */
    private static final double ELEMENTS = 3;

    private static final double GRAZING = Math.sin(Math.toRadians(30));

    /** Something is looked for as far as this from its middle, times its size; half a millimetre at the least. */
    private static final double ROUND = 0.6;

    /** How something is in the picture. */
    enum How {
        NOT,
        POORLY,
        PROPERLY
    }

    private final Mockup mockup;
    private final Pose pose;
    private final List<Harm> harms;
    private final Map<Owner, Integer> elements = new HashMap<>();
    private final Map<Owner, BitSet> proper = new HashMap<>();
    private final int[] on;
    private final int[] well;
    private int all;

    LookedAt(EyeFrame frame, Mockup mockup, Pose pose, List<Harm> harms) {
        this.mockup = mockup;
        this.pose = pose;
        this.harms = harms;
        this.on = new int[harms.size()];
        this.well = new int[harms.size()];
        count(frame);
    }

    private void count(EyeFrame frame) {
        Map<Owner, int[]> byOwner = new HashMap<>();
        for (int harm = 0; harm < harms.size(); harm++) {
            Owner owner = new Owner(harms.get(harm).row(), harms.get(harm).airfoil());
            int[] before = byOwner.getOrDefault(owner, new int[0]);
            int[] longer = java.util.Arrays.copyOf(before, before.length + 1);
            longer[before.length] = harm;
            byOwner.put(owner, longer);
        }
        Owner[] owners = frame.drawn().stream()
                .map(placed -> mockup.owner(placed.owner()))
                .toArray(Owner[]::new);
        int[][] harmsOf = new int[owners.length][];
        BitSet[] facesOf = new BitSet[owners.length];
        int[] counts = new int[owners.length];
        for (int i = 0; i < owners.length; i++) {
            harmsOf[i] = byOwner.getOrDefault(owners[i], new int[0]);
            facesOf[i] = proper.computeIfAbsent(owners[i], key -> new BitSet());
        }
        float[] place = new float[3];
        int size = frame.size() * frame.size();
        for (int element = 0; element < size; element++) {
            int index = frame.placed(element);
            if (index == EyeFrame.NOTHING) {
                continue;
            }
            all++;
            counts[index]++;
            if (owners[index].airfoil() == 0) {
                continue;
            }
            double slant = frame.slant(element);
            double distance = frame.distance(element);
            boolean good = slant >= GRAZING && distance >= pose.near() && distance <= pose.far();
            if (good) {
                facesOf[index].set(frame.face(element));
            }
            if (harmsOf[index].length > 0) {
                frame.place(element, place);
                for (int harm : harmsOf[index]) {
                    meet(harms.get(harm), harm, place, good, distance, slant);
                }
            }
        }
        for (int i = 0; i < owners.length; i++) {
            elements.merge(owners[i], counts[i], Integer::sum);
        }
    }

    private void meet(Harm harm, int index, float[] place, boolean good, double distance, double slant) {
        Vector at = harm.at();
        double dx = place[0] - at.x();
        double dy = place[1] - at.y();
        double dz = place[2] - at.z();
        double round = Math.max(0.5, ROUND * harm.size()) + (harm.isCut() ? harm.size() / 2 : 0);
        if (dx * dx + dy * dy + dz * dz > round * round) {
            return;
        }
        on[index]++;
        double field = 2 * distance * Math.tan(Math.toRadians(pose.cone().degrees()) / 2);
        boolean large = harm.size() * pose.pixels() / field * slant >= ELEMENTS;
        well[index] += good && large ? 1 : 0;
    }

    /** How a harm is in the picture. */
    How at(int harm) {
        return well[harm] > 0 ? How.PROPERLY : on[harm] > 0 ? How.POORLY : How.NOT;
    }

    /** The share of the round field that each airfoil and wall takes. */
    Map<Owner, Double> shares() {
        Map<Owner, Double> shares = new HashMap<>();
        elements.forEach((owner, count) -> shares.put(owner, (double) count / all));
        return shares;
    }

    /** Adds the faces that are properly in sight. */
    void facets(Map<String, List<BitSet>> seen) {
        proper.forEach((owner, faces) -> {
            if (owner.airfoil() > 0) {
                seen.get(owner.row()).get(owner.airfoil() - 1).or(faces);
            }
        });
    }
}
