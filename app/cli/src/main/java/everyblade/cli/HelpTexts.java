package everyblade.cli;

import everyblade.words.Words;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Help in the language of whoever asks: annotations name the texts, which are looked up only when help is shown. */
final class HelpTexts extends ResourceBundle {

    private static final String OURS = "help.";
    private static final String LANGUAGE = "help.everyblade.lang";

    private final Supplier<Words> words;

    private HelpTexts(Supplier<Words> words) {
        this.words = words;
    }

    /** Has a command and all below it speak so. */
    static void speak(CommandLine line, Supplier<Words> words) {
        line.setResourceBundle(new HelpTexts(words));
        line.getSubcommands().values().forEach(command -> speak(command, words));
        UsageMessageSpec usage = line.getCommandSpec().usageMessage();
        usage.synopsisHeading("${bundle:help.usage} ").commandListHeading("${bundle:help.commands}%n");
    }

    @Override
    protected Object handleGetObject(String key) {
        if (key.equals(LANGUAGE)) {
            return words.get()
                    .say(
                            key,
                            Words.languages().stream().map(Locale::getLanguage).toList());
        }
        return key.startsWith(OURS) ? words.get().say(key) : null;
    }

    @Override
    public boolean containsKey(String key) {
        return key.startsWith(OURS);
    }

    /** None that picocli looks for of its own accord. */
    @Override
    public Enumeration<String> getKeys() {
        return Collections.emptyEnumeration();
    }

    @Override
    protected Set<String> handleKeySet() {
        return Set.of();
    }
}
