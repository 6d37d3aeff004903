package everyblade.cli;

import everyblade.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which language a command was asked to speak. */
final class Spoken {

    private static final String OPTION = "--lang";

    private Spoken() {}

    /** The language of this tag, if there are words in it. */
    static Optional<Locale> of(String tag) {
        Locale spoken = Locale.forLanguageTag(tag.replace('_', '-'));
        return Optional.of(Words.of(spoken).locale())
                .filter(known -> known.getLanguage().equals(spoken.getLanguage()));
    }

    /** The one that the arguments name, before or behind the command; what stands in quotes of an entry names none. */
    static Optional<Locale> in(List<String> arguments) {
        for (int i = arguments.size() - 1; i >= 0; i--) {
            String argument = arguments.get(i);
            if (argument.startsWith(OPTION + "=")) {
                return of(argument.substring(OPTION.length() + 1));
            }
            if (argument.equals(OPTION) && i + 1 < arguments.size()) {
                return of(arguments.get(i + 1));
            }
        }
        return Optional.empty();
    }
}
