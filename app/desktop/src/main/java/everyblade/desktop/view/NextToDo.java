package everyblade.desktop.view;

import everyblade.core.turning.Situation;
import everyblade.desktop.words.CountWords;
import everyblade.desktop.words.Words;
import everyblade.spi.Landmark;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import java.util.List;
import java.util.Optional;

/**
 * What a technician does next: what a rule demands first, then what is left, most useful first, then closing up.
 *
 * @param words in words
 * @param entry what to enter, or how the entry begins; empty if nothing is entered for it
 */
record NextToDo(String words, Optional<String> entry) {

    /** What is next.
     *
     * @param left what is left, most useful first
     */
    static NextToDo of(JobState state, List<Left> left, Words words) {
        Situation now = state.situation();
        if (now.among()) {
            return new NextToDo(words.say("next.clear"), Optional.of("clear"));
        }
        if (now.seat().isEmpty()) {
            return seating(now, words);
        }
        Row row = now.seat().get().row();
        boolean counted =
                now.placing(row).at(row.id(), row.rock(), now.stop(row)).place().isPresent();
        if (!counted) {
            return counting(now, row, words);
        }
        Optional<Left> reachable =
                left.stream().filter(one -> !one.entries().isEmpty()).findFirst();
        if (reachable.isPresent()) {
            return new NextToDo(
                    reachable.get().how(), reachable.get().entries().stream().findFirst());
        }
        Optional<String> untouched = left.stream()
                .filter(one -> !one.gap().why().outOfReach())
                .flatMap(one -> now.engine().model().views().stream()
                        .filter(view -> view.row().equals(one.gap().row().id())))
                .map(view -> view.id())
                .findFirst();
        if (untouched.isPresent()) {
            return new NextToDo(words.say("next.view", untouched.get()), Optional.of("view " + untouched.get()));
        }
        return closing(now, left, words);
    }

    private static NextToDo seating(Situation now, Words words) {
        boolean needsHeat = now.engine().model().scopeTips().stream()
                        .map(ScopeTip::hottest)
                        .anyMatch(java.util.OptionalDouble::isPresent)
                && now.celsius().isEmpty();
        if (needsHeat) {
            return new NextToDo(words.say("next.heat"), Optional.of("heat "));
        }
        return now.engine().model().views().stream()
                .findFirst()
                .map(view -> new NextToDo(words.say("next.view", view.id()), Optional.of("view " + view.id())))
                .orElseGet(() -> new NextToDo(words.say("next.noViews"), Optional.empty()));
    }

    private static NextToDo counting(Situation now, Row row, Words words) {
        String verb = now.counting(row) ? "here " : "datum " + row.id() + " ";
        Optional<Landmark> landmark = row.landmarks().stream().findFirst();
        String what = landmark.map(
                        one -> CountWords.airfoil(words, row) + " " + one.airfoil() + " (" + one.what() + ")")
                .orElseGet(() -> words.say("next.anyAirfoil", CountWords.airfoil(words, row)));
        return new NextToDo(words.say("next.count", what, row.id()), Optional.of(verb));
    }

    private static NextToDo closing(Situation now, List<Left> left, Words words) {
        Optional<String> tool = now.ledger().toolsOut().keySet().stream().findFirst();
        if (tool.isPresent()) {
            return new NextToDo(words.say("next.tool", tool.get()), Optional.of("tool in " + tool.get()));
        }
        Optional<String> open = now.ledger().openings().keySet().stream().findFirst();
        if (open.isPresent()) {
            return new NextToDo(
                    words.say("next.shut", open.get()), Optional.of("shut " + EntryWords.quoted(open.get()) + " "));
        }
        if (!left.isEmpty()) {
            return new NextToDo(words.say("next.accept", left.get(0).what()), Optional.of("noaccess "));
        }
        return new NextToDo(words.say("next.report"), Optional.empty());
    }
}
