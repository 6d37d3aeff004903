package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Kind;
import everyblade.session.PseudoLanguage;
import everyblade.session.Workshop;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A drill, and what came of it, in a language of which every letter is marked: no plain word is shown. */
class EveryWordOfADrillTest extends WithADrill {

    private static final Set<String> KNOWN = known();

    /** What is typed, and what the drill's own engine and folder are called. */
    private static Set<String> known() {
        Set<String> words = new TreeSet<>(PseudoLanguage.words(
                Workshop.SHAPED,
                "view watch all ring direct datum turn look round here heat clear skip at rows find and call damage",
                PADS));
        Arrays.stream(Kind.values()).forEach(kind -> words.add(kind.word()));
        return words;
    }

    @Test
    void comesFromTheBundlesWhileItGoesOnAndAtItsEnd() {
        PseudoLanguage.addedFor(EveryWordOfADrillTest.class);
        speak(PseudoLanguage.LOCALE);
        PlainWordsShown shown = new PlainWordsShown(folder, KNOWN);
        enter("view p-r");
        hold("ADD", 500);
        shown.look(drilling.component());
        Offscreen.on(() -> {
            drilling.endNow(session.state());
            return null;
        });
        shown.look(drilling.component());

        assertThat(shown.plain()).isEmpty();
    }
}
