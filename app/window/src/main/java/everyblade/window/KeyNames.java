package everyblade.window;

import everyblade.words.Words;
import java.util.Locale;

/** How a key is written for a person. */
final class KeyNames {

    private KeyNames() {}

    /** Of a key as the table of shortcuts has it. */
    static String of(String key, Words words) {
        if (key.startsWith("typed ")) {
            return key.substring("typed ".length());
        }
        String name = "keyname." + key.replace("ctrl ", "").toLowerCase(Locale.ROOT);
        String plain = key.replace("ctrl ", "");
        String told = words.has(name) ? words.say(name) : plain;
        return key.startsWith("ctrl ") ? words.say("keyname.ctrl") + "+" + told : told;
    }
}
