package everyblade.session;

import everyblade.core.doubt.Doubt;
import everyblade.core.entry.Refusal;
import everyblade.session.job.DoubtText;
import everyblade.session.job.Speech;
import everyblade.words.Words;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What would come of the text in the entry line; nothing is written. */
public sealed interface Preview {

    /** Nothing is typed. */
    record Empty() implements Preview {}

    /**
     * It would be kept.
     *
     * @param line the entry that would be said
     * @param effects what it would do
     * @param warnings what it would give rise to say
     * @param doubts why it will be questioned first
     */
    record Will(String line, List<String> effects, List<String> warnings, List<String> doubts) implements Preview {

        public Will {
            effects = List.copyOf(effects);
            warnings = List.copyOf(warnings);
            doubts = List.copyOf(doubts);
        }
    }

    /**
     * It would be refused, as an unfinished line is.
     *
     * @param column where, from 1
     * @param message what is expected
     */
    record Not(int column, String message) implements Preview {}

    /** What it does, and what there is to tell of it. */
    private static List<String> effects(JobState state, Speech.Said said, Words words) {
        List<String> effects = new ArrayList<>();
        said.doubts().stream()
                .filter(doubt -> !doubt.asks())
                .map(doubt -> DoubtText.of(words, doubt))
                .forEach(effects::add);
        List<String> does = Effect.of(
                words,
                state.situation(),
                said.after().fold().situation(),
                said.addition().means());
        if (effects.isEmpty()) {
            effects.addAll(does);
        }
        return effects;
    }

    /** What a person is asked about an entry before it is kept, a sentence each. */
    static List<String> asked(Speech.Said said, Words words) {
        return said.doubts().stream()
                .filter(Doubt::asks)
                .map(doubt -> DoubtText.of(words, doubt))
                .toList();
    }

    /**
     * What would come of this text.
     *
     * @param at the time now
     */
    static Preview of(JobState state, String typed, Instant at, Words words) {
        String line = EntryLine.expand(state, typed.strip());
        if (line.isEmpty()) {
            return new Empty();
        }
        if (state.keeping() instanceof Keeping.ReadOnly readOnly) {
            return new Not(1, readOnly.reason());
        }
        try {
            Speech.Said said = state.speech().with(line, at, Optional.empty(), true, state::coverage);
            return new Will(line, effects(state, said, words), words.say(said.warnings()), asked(said, words));
        } catch (Refusal refusal) {
            return new Not(refusal.column(), words.say(refusal.why()));
        }
    }
}
