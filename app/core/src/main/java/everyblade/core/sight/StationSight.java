package everyblade.core.sight;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.spi.Row;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * What a scope tip shows that stands somewhere within the tolerance of a station: the sight arcs of each facet from each
 * pose of the family, those under 0.2° left out as marginal. A station without a tolerance has one pose, the nominal one,
 * which always comes first. Where a row between may stand in several ways, each way from each pose counts as a pose of its
 * own. Past rows of another count the airfoils are of several kinds, in turn clockwise from the first. Never changes.
 *
 * <p>The arcs of a facet are those of its middle. Where an edge of sight crosses it, it is divided, and each of its patches
 * has arcs of its own; elsewhere {@link #startSlack}, {@link #endSlack} and {@link #shorter} say by how much they may change
 * towards its borders. Of patches along an edge of sight it is known whether they are in sight as a whole, or the edge may run
 * through them.
 */
public final class StationSight {

    /** Facets in sight over less than this are marginal and do not count. */
    static final long LEAST_ARC = Circle.TICKS_PER_DEGREE / 5;

    /** By kind, facet and pose. */
    private final ArcSet[][][] arcs;
    /** By kind and facet. */
    private final byte[][] why;

    /** By kind, facet, patch and pose; null where a facet is not divided, or a patch is as its facet. */
    private final ArcSet[][][][] divided;
    /** By kind, facet, patch and pose, what {@link PatchBorders} finds. */
    private final ArcSet[][][][] whole;
    /** By kind. */
    private final List<Slack> slack;
    /** By kind, facet and patch, whether every pose shows it; null where a facet is not divided. */
    private final boolean[][][] shown;
    /** Whether a facet of some kind is divided. */
    private final boolean[] divides;

    private StationSight(
            ArcSet[][][] arcs, byte[][] why, ArcSet[][][][] divided, ArcSet[][][][] whole, List<Slack> slack) {
        this.arcs = arcs;
        this.why = why;
        this.divided = divided;
        this.whole = whole;
        this.slack = slack;
        this.shown = new boolean[arcs.length][arcs[0].length][];
        this.divides = new boolean[arcs[0].length];
        for (int kind = 0; kind < arcs.length; kind++) {
            for (int facet = 0; facet < divides.length; facet++) {
                ArcSet[][] patches = divided[kind][facet];
                divides[facet] |= patches != null;
                shown[kind][facet] = patches == null ? null : new boolean[patches.length];
                for (int patch = 0; patches != null && patch < patches.length; patch++) {
                    shown[kind][facet][patch] = everyPoseShows(kind, facet, patch);
                }
            }
        }
    }

    /** What was found before, for an airfoil of this grain. */
    static StationSight of(ArcSet[][][] arcs, byte[][] why, ArcSet[][][][] divided, ArcSet[][][][] whole, Grain grain) {
        return new StationSight(arcs, why, divided, whole, Slack.of(arcs, grain));
    }

    /**
     * What a scope tip shows.
     *
     * @param grain of the row
     * @param family the poses that stand for the tolerance, the nominal one first
     * @throws CancellationException if {@code progress} says so
     */
    static StationSight compute(Setting setting, Grain grain, List<Pose> family, Criteria asked, Progress progress) {
        SightScene scene = setting.scene();
        Standings standings = Standings.of(family, setting.others());
        List<List<SightArcs>> found = SightArcs.compute(scene, standings, asked, progress);
        int facets = scene.facets().count();
        ArcSet[][][] arcs = new ArcSet[standings.kinds()][facets][standings.size()];
        byte[][] why = new byte[standings.kinds()][facets];
        for (int kind = 0; kind < arcs.length; kind++) {
            for (int facet = 0; facet < facets; facet++) {
                why[kind][facet] = -1;
                for (int standing = 0; standing < standings.size(); standing++) {
                    SightArcs from = found.get(standings.pose(standing)).get(standings.way(kind, standing));
                    ArcSet counted = counted(from.arcs(facet));
                    arcs[kind][facet][standing] = counted;
                    if (counted.isEmpty() && why[kind][facet] < 0) {
                        why[kind][facet] =
                                (byte) from.why(facet).orElse(Hindrance.HIDDEN).ordinal();
                    }
                }
            }
        }
        List<Slack> slack = Slack.of(arcs, grain);
        ArcSet[][][][] divided = EdgeOfSight.find(scene, grain, standings, asked, arcs, progress);
        StationSight sight = new StationSight(arcs, why, divided, new ArcSet[arcs.length][facets][][], slack);
        ArcSet[][][][] whole = PatchBorders.find(scene, grain, standings, asked, sight, progress);
        return new StationSight(arcs, why, divided, whole, slack);
    }

    static ArcSet counted(ArcSet arcs) {
        return arcs.withoutShorter(LEAST_ARC);
    }

    /** How many poses stand for the tolerance. */
    public int poses() {
        return arcs[0][0].length;
    }

    /** How many facets an airfoil has. */
    public int facets() {
        return arcs[0].length;
    }

    /** How many kinds of airfoils there are: 1 if what a pose shows of one it shows of all. */
    public int kinds() {
        return arcs.length;
    }

    /** Of which kind airfoil n of a row is, counted from 1. */
    public int kind(Row row, int n) {
        return Environment.kind(row, n, kinds());
    }

    /** The clock angles of the first airfoil, and of all that are of its kind, at which a facet is in sight from a pose. */
    public ArcSet arcs(int pose, int facet) {
        return arcs(0, pose, facet);
    }

    /** The clock angles of airfoils of a kind at which a facet is in sight from a pose. */
    public ArcSet arcs(int kind, int pose, int facet) {
        return arcs[kind][facet][pose];
    }

    /** Whether a facet is judged patch by patch. */
    public boolean divides(int facet) {
        return divides[facet];
    }

    /** Into how many patches a facet is divided; 1 if it is not. */
    public int patches(int facet) {
        for (ArcSet[][][] kind : divided) {
            if (kind[facet] != null) {
                return kind[facet].length;
            }
        }
        return 1;
    }

    /**
     * The clock angles at which a patch of airfoils of a kind is in sight from a pose; none from any if some pose does not
     * show it.
     *
     * @param patch counted from the first of the facet
     */
    public ArcSet arcs(int kind, int pose, int facet, int patch) {
        return asItsFacet(kind, pose, facet, patch) ? arcs[kind][facet][pose] : divided[kind][facet][patch][pose];
    }

    /**
     * By how much the beginnings of a patch's arcs may lie elsewhere at its borders, ticks: half of what they change from its
     * facet to the next; none where the patch has arcs of its own.
     */
    public long startSlack(int kind, int pose, int facet, int patch) {
        return asItsFacet(kind, pose, facet, patch) ? slack.get(kind).starts()[facet][pose] : 0;
    }

    /** The same of their ends. */
    public long endSlack(int kind, int pose, int facet, int patch) {
        return asItsFacet(kind, pose, facet, patch) ? slack.get(kind).ends()[facet][pose] : 0;
    }

    /** By how much the arcs themselves may be shorter there, ticks. */
    public long shorter(int kind, int pose, int facet, int patch) {
        return asItsFacet(kind, pose, facet, patch) ? slack.get(kind).shorter()[facet][pose] : 0;
    }

    /** Whether every pose shows all of some patch of a facet of airfoils of a kind that lies along an edge of sight. */
    public boolean showsWhole(int kind, int facet) {
        return whole[kind][facet] != null;
    }

    /**
     * Clock angles of airfoils of a kind, no more than are needed, at which a pose shows all of a patch along an edge of sight;
     * none where some pose does not, and elsewhere than along such an edge.
     *
     * @param patch counted from the first of the facet, of which {@link #showsWhole} says so
     */
    public ArcSet whole(int kind, int pose, int facet, int patch) {
        return whole[kind][facet][patch][pose];
    }

    private boolean asItsFacet(int kind, int pose, int facet, int patch) {
        return divided[kind][facet] == null || divided[kind][facet][patch][pose] == null;
    }

    /** Whether every pose shows a patch of airfoils of a kind at some clock angle. */
    public boolean reaches(int kind, int facet, int patch) {
        return shown[kind][facet] == null ? reaches(kind, facet) : shown[kind][facet][patch];
    }

    private boolean everyPoseShows(int kind, int facet, int patch) {
        for (int pose = 0; pose < poses(); pose++) {
            if (arcs(kind, pose, facet, patch).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** Whether every pose shows a facet of each airfoil at some clock angle. */
    public boolean reaches(int facet) {
        return hiding(facet) < 0;
    }

    /** Whether every pose shows a facet of airfoils of a kind at some clock angle. */
    public boolean reaches(int kind, int facet) {
        return why[kind][facet] < 0;
    }

    /** What keeps a facet out of sight from the first pose that does not show it; empty if every pose does, of each airfoil. */
    public Optional<Hindrance> why(int facet) {
        int hiding = hiding(facet);
        return hiding < 0 ? Optional.empty() : Optional.of(Hindrance.values()[hiding]);
    }

    private int hiding(int facet) {
        for (byte[] kind : why) {
            if (kind[facet] >= 0) {
                return kind[facet];
            }
        }
        return -1;
    }

    /** What {@link StationBytes#read} reads. */
    byte[] written() {
        return StationBytes.of(arcs, why, divided, whole);
    }
}
