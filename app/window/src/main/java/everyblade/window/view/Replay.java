package everyblade.window.view;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.session.JobState;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * A job as it stood after each of its entries. Some of these states are kept, so that any other is not far from one: going
 * on from it costs what the entries between change, going further one coverage anew. For one thread at a time.
 */
public final class Replay {

    /** States are kept so many entries apart, and twice so many of those that were asked for last. */
    static final int APART = 64;

    private static final int MOST_APART = 1024;

    private final JobState last;
    private final List<Logged> entries;
    private final int apart;
    private final NavigableMap<Integer, JobState> kept = new TreeMap<>();
    private final NavigableMap<Integer, JobState> recent = new TreeMap<>();

    /** @param last the job with all its entries */
    public Replay(JobState last) {
        this.last = last;
        this.entries = last.fold().entries();
        this.apart = Math.min(MOST_APART, Math.max(APART, entries.size() / MOST_APART));
        Fold start = Fold.start(last.situation().engine());
        kept.put(0, last.at(start, anew(start)));
        kept.put(entries.size(), last);
    }

    /** How many entries there are. */
    public int length() {
        return entries.size();
    }

    /** The entry that led to a state. */
    public Logged entry(int k) {
        return entries.get(k - 1);
    }

    /** The job after the first {@code k} entries. */
    public JobState at(int k) {
        JobState near = nearest(k);
        int from = near.fold().entries().size();
        if (from == k) {
            return near;
        }
        Fold fold = near.fold();
        for (int next = from + 1; next <= k; next++) {
            fold = with(fold, next);
        }
        Coverage coverage = k - from <= APART ? near.coverage().after(fold.situation()) : anew(fold);
        return keep(k, last.at(fold, coverage));
    }

    /**
     * Some of the states after entry {@code k}.
     *
     * @param count how many, at most
     * @param stride how many entries from one to the next; the last entry of all is not passed over
     */
    public List<JobState> after(int k, int count, int stride) {
        List<JobState> states = new ArrayList<>();
        for (int at = k; at < length() && states.size() < count; ) {
            at = Math.min(length(), at + stride);
            states.add(at(at));
        }
        return states;
    }

    private JobState nearest(int k) {
        JobState keptOne = kept.floorEntry(k).getValue();
        var recentOne = recent.floorEntry(k);
        return recentOne != null
                        && recentOne.getKey() > keptOne.fold().entries().size()
                ? recentOne.getValue()
                : keptOne;
    }

    private Fold with(Fold fold, int k) {
        try {
            return fold.with(entry(k));
        } catch (Refusal impossible) {
            throw new IllegalStateException("entry " + k + " was folded before", impossible);
        }
    }

    private Coverage anew(Fold fold) {
        return Coverage.of(
                fold.situation(), last.coverage().settings(), last.coverage().sights());
    }

    private JobState keep(int k, JobState state) {
        if (k % apart == 0) {
            kept.put(k, state);
        }
        recent.put(k, state);
        while (recent.size() > 2 * APART) {
            recent.remove(k - recent.firstKey() > recent.lastKey() - k ? recent.firstKey() : recent.lastKey());
        }
        return state;
    }
}
