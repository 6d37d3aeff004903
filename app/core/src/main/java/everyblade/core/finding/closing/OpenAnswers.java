package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.FindingEntry;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.util.List;
import java.util.Optional;

/**
 * Questions, rechecks, findings and things lost that were settled with a word that says nothing, such as "ok". What a
 * closing list asks about by itself tells its thin answers itself.
 *
 * @param fold of the journal
 */
record OpenAnswers(Fold fold) {

    List<OpenItem> items() {
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .filter(logged -> logged.entry() instanceof FindingEntry.Settle settle
                        && !new ReasonGiven(settle.reason()).says())
                .flatMap(logged -> item(logged).stream())
                .toList();
    }

    private Optional<OpenItem> item(Logged settle) {
        FindingEntry.Settle said = (FindingEntry.Settle) settle.entry();
        Logged about = fold.entries().get(said.entry().value() - 1);
        return kind(about.entry())
                .map(kind -> new OpenItem(
                        kind,
                        Optional.of(settle),
                        new AnswerProblem.SaysNothing(EntryLine.of(about), said.reason()),
                        Optional.empty(),
                        new ToDo.SettleAnew(about.number()),
                        "void " + settle.number() + " because "));
    }

    private static Optional<Kind> kind(Entry entry) {
        return EntryKind.of(entry).isFinding() ? Optional.of(Kind.FINDING) : OpenRecord.question(entry);
    }
}
