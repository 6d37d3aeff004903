package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.jar.CodeJar;
import everyblade.picture.scene.Theme;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Before code runs, the form for a new job and its question tell a person all that is known of the jar. */
class CodeQuestionTest {

    private static final CodeJar JAR = new CodeJar(
            Path.of("shelf", "p.jar"),
            "0123456789abcdef".repeat(4),
            "p 1.0",
            Optional.of("CN=A. Author"),
            "",
            List.of());

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void namesTheJarItsHashItsSignerAndWhatItMayDo(String language) {
        Words words = Words.of(Locale.forLanguageTag(language));

        assertThat(texts(CodeQuestion.of(JAR, words).panel()))
                .contains(JAR.jar().toString(), JAR.sha256(), words.say("code.may"))
                .anySatisfy(text -> assertThat(text).contains("CN=A. Author"))
                .anySatisfy(text -> assertThat(text).contains("p 1.0"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void isAskedFromTheFormForANewJobWhichListsWhatHasNotRun(String language) {
        List<CodeJar> asked = new ArrayList<>();
        NewJobPanel form = new NewJobPanel(
                Words.of(Locale.forLanguageTag(language)),
                Theme.LIGHT,
                List.of(),
                List.of(JAR),
                asked::add,
                "job",
                "Ann",
                wanted -> {},
                () -> {});

        JButton button = (JButton) all(form.component())
                .filter(component -> "form.code".equals(component.getName()))
                .findFirst()
                .orElseThrow();
        assertThat(button.getText()).contains("p 1.0", "p.jar");
        button.doClick();

        assertThat(asked).containsExactly(JAR);
    }

    private static List<String> texts(Container panel) {
        return all(panel)
                .filter(JTextComponent.class::isInstance)
                .map(component -> ((JTextComponent) component).getText())
                .toList();
    }

    private static Stream<Component> all(Container container) {
        return Stream.of(container.getComponents())
                .flatMap(component -> Stream.concat(
                        Stream.of(component), component instanceof Container within ? all(within) : Stream.empty()));
    }
}
