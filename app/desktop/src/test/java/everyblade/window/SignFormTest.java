package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Commands;
import everyblade.record.signing.SignatureFile;
import everyblade.record.signing.SignedAs;
import everyblade.record.signing.Signer;
import everyblade.record.signing.SigningKey;
import everyblade.record.signing.Statement;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Consent;
import everyblade.session.model.Shelf;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Signing from the window, while the job is open there. */
class SignFormTest {

    @TempDir
    Path folder;

    private Workshop workshop;

    @BeforeEach
    void aKey() throws Exception {
        workshop = Workshop.in(folder);
        SigningKey key = SigningKey.make(new Signer("Ann", Optional.of("Part-66 B1"), Optional.of("1")));
        Files.write(folder.resolve("ann.p12"), key.kept("correct horse".toCharArray(), Workshop.NOW));
    }

    private static Stream<Component> all(Component component) {
        return component instanceof Container container
                ? Stream.concat(
                        Stream.of(component),
                        Arrays.stream(container.getComponents()).flatMap(SignFormTest::all))
                : Stream.of(component);
    }

    private static <C> C named(SignForm form, Class<C> kind, String name) {
        return all(form.component())
                .filter(component -> name.equals(component.getName()))
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    private SignForm.Filled filled(int as, String passphrase) {
        SignForm form = new SignForm(Words.of(Locale.ENGLISH));
        named(form, JComboBox.class, "sign.as").setSelectedIndex(as);
        named(form, JTextField.class, "sign.key")
                .setText(folder.resolve("ann.p12").toString());
        named(form, JTextField.class, "sign.passphrase").setText(passphrase);
        named(form, JTextField.class, "sign.because").setText("-9 was not seen");
        SignForm.Filled filled = form.filled();
        assertThat(form.filled().passphrase())
                .as("what is left of it in the form")
                .isEmpty();
        return filled;
    }

    private Optional<String> sign(SignForm.Filled filled) {
        Surroundings around = workshop.around();
        Map<String, String> environment = Map.of("HOME", folder.toString(), "EVERYBLADE_PASSPHRASE", "another one");
        Surroundings with = new Surroundings(
                around.in(),
                around.out(),
                around.err(),
                around.clock(),
                environment,
                around.folder(),
                around.home(),
                around.disk());
        return new JobStarting(with, new Shelf(with, List.of(), new Consent(with, Set.of())), Commands::run)
                .sign(workshop.job(), filled);
    }

    @Test
    void aSignatureCoversEveryEntryThatIsSafe() throws Exception {
        try (Session session = workshop.counting("look")) {
            assertThat(sign(filled(2, "correct horse"))).isEmpty();

            Statement says = SignatureFile.read(
                            Files.readAllBytes(workshop.job().resolve("signatures/1.json")))
                    .statement();
            assertThat(says.as()).isEqualTo(SignedAs.RETURNED);
            assertThat(says.because()).contains("-9 was not seen");
            assertThat(says.head()).isEqualTo(session.state().head());
            assertThat(says.entries()).isEqualTo(4);
        }
    }

    @Test
    void aWrongPassphraseIsToldAndSignsNothing() {
        try (Session session = workshop.counting()) {
            assertThat(sign(filled(0, "wrong horse")))
                    .hasValueSatisfying(told -> assertThat(told).endsWith("the passphrase does not open it"));
            assertThat(session.state().folder().resolve("signatures")).doesNotExist();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyMeaningIsOffered(String language) {
        Words words = Words.of(Locale.forLanguageTag(language));
        JComboBox<?> as = named(new SignForm(words), JComboBox.class, "sign.as");
        assertThat(as.getItemCount()).isEqualTo(SignedAs.values().length);
        assertThat(as.getItemAt(0)).isEqualTo(words.say("sign.inspected"));
    }
}
