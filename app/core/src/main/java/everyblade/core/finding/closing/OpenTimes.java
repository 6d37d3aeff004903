package everyblade.core.finding.closing;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.Stated;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.closing.TimeProblem.Later;
import everyblade.core.turning.EntryTime;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Logged;
import everyblade.fact.Fact;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the two times of entries do not bear out: that at which it was, as was said, and that at which it was typed.
 *
 * @param fold of the journal
 * @param coverage of its situation
 */
record OpenTimes(Fold fold, Coverage coverage) {

    /** A shaft is not turned faster by hand, watched or not, degrees a second; common practice, no source. */
    private static final double WATCHED = 60;

    private static final double UNWATCHED = 180;

    /** People round what a turn took, and type while it ends. */
    private static final double SHARE_OF_STATED = 0.8;

    private static final double SLACK_OF_STATED = 5;

    List<OpenItem> items() {
        Several several = new Several(new Answered(fold));
        List<OpenItem> items = new ArrayList<>();
        items.addAll(several.items(Kind.TIME, close(), ToDo.Advice.SAY_WHEN, this::closeTold));
        items.addAll(several.items(Kind.TIME, back(), ToDo.Advice.SAY_WHEN, this::backTold));
        items.addAll(several.items(Kind.TIME, toCome(), ToDo.Advice.SAY_WHEN, OpenTimes::toComeTold));
        items.addAll(longAfter(several));
        items.addAll(oneTimeOnly());
        items.addAll(several.items(
                Kind.TIME,
                untimed(),
                ToDo.Advice.SAY_HOW_LONG,
                (first, all) -> new TimeProblem.Untimed(
                        all.size(),
                        Rounded.tenths(coverage.settings().leastView().orElse(0)),
                        EntryNumbers.of(all))));
        return items;
    }

    private List<Logged> counting() {
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .toList();
    }

    /** Entries that come sooner after the one before than what they say can be done. */
    private List<Logged> close() {
        Map<Integer, Double> moved = fold.situation().moved();
        List<Logged> counting = counting();
        List<Logged> close = new ArrayList<>();
        for (int i = 1; i < counting.size(); i++) {
            Logged logged = counting.get(i);
            if (EntryTime.isClaimed(logged) && EntryTime.isClaimed(counting.get(i - 1))) {
                double since = EntryTime.seconds(counting.get(i - 1).at(), logged.at());
                if (since >= 0 && since < least(logged.entry(), moved.getOrDefault(logged.number(), 0.0))) {
                    close.add(logged);
                }
            }
        }
        return close;
    }

    /** The least time in which an entry can be done, s. */
    private static double least(Entry entry, double degrees) {
        EntryKind kind = EntryKind.of(entry);
        double byHand = degrees / (kind.moves() && !kind.watches() ? UNWATCHED : WATCHED);
        return Stated.seconds(entry)
                .map(seconds -> Math.max(byHand, SHARE_OF_STATED * seconds.doubleValue() - SLACK_OF_STATED))
                .orElse(byHand);
    }

    private Fact closeTold(Logged first, List<Logged> all) {
        Logged before = before(first);
        return new TimeProblem.TooSoon(
                all.size(),
                EntryNumbers.of(all),
                EntryLine.of(first),
                Rounded.tenths(EntryTime.seconds(before.at(), first.at())),
                before.number());
    }

    private Logged before(Logged logged) {
        return fold.entries().subList(0, logged.number() - 1).stream()
                .filter(one -> !fold.isVoid(one.number()))
                .reduce((earlier, later) -> later)
                .orElseThrow();
    }

    /** Entries whose time is before that of the entry before them, or that were typed while the clock stood earlier. */
    private List<Logged> back() {
        List<Logged> entries = counting();
        List<Logged> back = new ArrayList<>();
        for (int i = 1; i < entries.size(); i++) {
            Logged before = entries.get(i - 1);
            if (entries.get(i).at().isBefore(before.at()) || EntryTime.clockRanBack(before, entries.get(i))) {
                back.add(entries.get(i));
            }
        }
        return back;
    }

    private Fact backTold(Logged first, List<Logged> all) {
        Logged before = before(first);
        return EntryTime.clockRanBack(before, first)
                ? new TimeProblem.ClockRanBack(
                        EntryNumbers.of(all),
                        EntryLine.of(first),
                        EntryTime.told(first.written().orElseThrow()),
                        EntryTime.told(before.written().orElseThrow()))
                : new TimeProblem.RunsBack(
                        EntryNumbers.of(all),
                        EntryLine.of(first),
                        EntryTime.told(first.at()),
                        EntryTime.told(before.at()),
                        Optional.of(first).filter(this::isLongAfter).map(OpenTimes::later));
    }

    private List<Logged> toCome() {
        return counting().stream()
                .filter(logged -> logged.written()
                        .filter(written -> EntryTime.isToCome(logged.at(), written))
                        .isPresent())
                .toList();
    }

    private static Fact toComeTold(Logged first, List<Logged> all) {
        return new TimeProblem.ToCome(
                all.size(),
                EntryNumbers.of(all),
                EntryLine.of(first),
                EntryTime.told(first.at()),
                EntryTime.told(first.written().orElseThrow()));
    }

    private boolean isLongAfter(Logged logged) {
        return logged.written()
                .filter(written -> EntryTime.isLongAfter(logged.at(), written))
                .isPresent();
    }

    /** A record made from paper says so; single entries that were typed long after ask for a word. */
    private List<OpenItem> longAfter(Several several) {
        List<Logged> back = back();
        List<Logged> late = counting().stream()
                .filter(logged -> isLongAfter(logged) && !back.contains(logged))
                .toList();
        if (late.isEmpty()) {
            return List.of();
        }
        boolean all = counting().stream().allMatch(this::isLongAfter);
        return all
                ? List.of(OpenItem.told(
                        Kind.TIME,
                        Optional.of(late.get(0)),
                        new TimeProblem.AllLongAfter(longAfterTold(late.get(0), late)),
                        Optional.empty()))
                : several.items(Kind.TIME, late, ToDo.Advice.SAY_WHEN, OpenTimes::longAfterTold);
    }

    private static TimeProblem.LongAfter longAfterTold(Logged first, List<Logged> all) {
        return new TimeProblem.LongAfter(
                all.size(),
                EntryNumbers.of(all),
                EntryLine.of(first),
                later(first),
                EntryTime.told(first.written().orElseThrow()));
    }

    private static Later later(Logged logged) {
        Duration later = Duration.between(logged.at(), logged.written().orElseThrow());
        return later.toDays() > 1
                ? new Later(later.toDays(), TimeProblem.Unit.DAYS)
                : new Later(later.toHours(), TimeProblem.Unit.HOURS);
    }

    /** Old records, and examples, keep only one time. */
    private List<OpenItem> oneTimeOnly() {
        List<Logged> undated = fold.entries().stream()
                .filter(logged -> !logged.live() && logged.written().isEmpty())
                .toList();
        return undated.isEmpty()
                ? List.of()
                : List.of(OpenItem.told(
                        Kind.TIME,
                        Optional.of(undated.get(0)),
                        new TimeProblem.OneTimeOnly(EntryNumbers.of(undated)),
                        Optional.empty()));
    }

    /** Watching without a time, where the job asks for a least time in view. */
    private List<Logged> untimed() {
        if (coverage.settings().leastView().isEmpty()) {
            return List.of();
        }
        Set<Integer> untimed = new HashSet<>();
        fold.situation()
                .legs()
                .values()
                .forEach(legs -> legs.stream()
                        .filter(leg -> leg.seconds().isEmpty())
                        .map(Leg::entry)
                        .forEach(untimed::add));
        return fold.entries().stream()
                .filter(logged -> untimed.contains(logged.number()))
                .toList();
    }
}
