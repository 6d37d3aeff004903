package everyblade.picture.report;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Judging;
import everyblade.core.finding.closing.Beside;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.gap.Gap;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Situation;
import everyblade.fact.Fact;
import everyblade.picture.MapWords;
import everyblade.spi.EngineModel;
import everyblade.spi.View;
import everyblade.words.Words;
import java.util.List;
import java.util.Optional;

/**
 * A job as the report sees it.
 *
 * @param fold of all its entries
 * @param coverage of that fold's situation
 * @param gaps of that coverage
 * @param facts beside the entries
 * @param exhibits shown beside the entries
 * @param judged what the limits say of each finding; none without limits
 * @param closing what is open
 * @param words in which it is told
 */
record Reported(
        Fold fold,
        Coverage coverage,
        List<Gap> gaps,
        ReportFacts facts,
        Exhibits exhibits,
        List<Judgement> judged,
        ClosingList closing,
        Words words) {

    /**
     * An entry that counts, by what it says.
     *
     * @param logged the entry
     * @param entry what it says
     */
    record Told<E extends Entry>(Logged logged, E entry) {}

    static Reported of(Fold fold, Coverage coverage, ReportFacts facts, Exhibits exhibits, Words words) {
        List<Judgement> judged = exhibits.limits()
                .map(limits -> Judging.of(limits, fold, coverage))
                .orElse(List.of());
        return new Reported(
                fold,
                coverage,
                Gaps.of(coverage),
                facts,
                exhibits,
                judged,
                ClosingList.of(
                        fold,
                        coverage,
                        exhibits.limits(),
                        judged,
                        new Beside(PlacedPhoto.named(exhibits), exhibits.last().map(LastRecord::fold), facts.review())),
                words);
    }

    /** The report's text of a key with its places {0}, {1} … filled in. */
    String say(String key, Object... parts) {
        return words.say("report." + key, parts);
    }

    /** A fact in words. */
    String say(Fact fact) {
        return words.say(fact);
    }

    /** What maps and shares say. */
    MapWords map() {
        return MapWords.of(words);
    }

    /** What the limits say of the finding of entry K, if any were entered. */
    Optional<Judgement> judgement(int entry) {
        return judged.stream()
                .filter(judgement -> judgement.finding().entry() == entry)
                .findFirst();
    }

    Situation situation() {
        return fold.situation();
    }

    EngineModel model() {
        return situation().engine().model();
    }

    /** Entries that are not void. */
    List<Logged> counting() {
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .toList();
    }

    /** Entries of one kind that are not void. */
    <E extends Entry> List<Told<E>> told(Class<E> kind) {
        return counting().stream()
                .filter(logged -> kind.isInstance(logged.entry()))
                .map(logged -> new Told<>(logged, kind.cast(logged.entry())))
                .toList();
    }

    /** Entry K. */
    Logged entry(int number) {
        return fold.entries().get(number - 1);
    }

    /** The row that was in view when entry K was made. */
    Optional<String> rowInView(int number) {
        return told(LookEntry.View.class).stream()
                .filter(view -> view.logged().number() < number)
                .reduce((earlier, later) -> later)
                .flatMap(view -> model().view(view.entry().view().value()))
                .map(View::row);
    }

    /** The last value stated for a fact, whatever the case of its name. */
    Optional<String> fact(String name) {
        return told(RecordEntry.Fact.class).stream()
                .filter(fact -> fact.entry().name().value().strip().equalsIgnoreCase(name))
                .map(fact -> fact.entry().value().strip())
                .reduce((earlier, later) -> later);
    }

    /** The void entry that strikes entry K, if it does not count. */
    Optional<Told<RecordEntry.Void>> strikes(int number) {
        return told(RecordEntry.Void.class).stream()
                .filter(struck -> struck.entry().entry().value() == number)
                .findFirst();
    }
}
