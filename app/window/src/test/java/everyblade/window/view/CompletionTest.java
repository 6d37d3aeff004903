package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.session.Session;
import everyblade.session.Workshop;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompletionTest {

    @TempDir
    Path folder;

    private Session session;

    @BeforeEach
    void open() {
        session = Workshop.in(folder)
                .counting("tool out hand lamp", "open p1", "recheck 3 tip scratch", "lost split pin");
    }

    @AfterEach
    void close() {
        session.close();
    }

    private Completion of(String text) {
        return Completion.of(session.state().situation(), text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'view ' | p-r,p-v",
                "'view p-r with ' | fwd",
                "'watch ' | all,root,tip",
                "'datum ' | r,v",
                "'pad ' | hand",
                "'turn ' | on,back,to",
                "'turn on 3 ' | deg,blades,rev,tool,tooldeg,±",
                "'draw 3 ' | deg,blades",
                "'dent 3 ' | all,root,tip",
                "'tool in ' | hand lamp,split pin",
                "'shut ' | p1",
                "'settle ' | 6,7",
                "'heat 20 ' | C,F",
                "'here ' | ''"
            })
    void offersWhatTheVerbTakes(String text, String words) {
        assertThat(of(text).words()).isEqualTo(words.isEmpty() ? List.of() : List.of(words.split(",")));
    }

    @Test
    void offersVerbsAndKindsOfFindingsAtFirst() {
        assertThat(of("").words()).startsWith("view", "turn", "look").contains("dent", "handover");
        assertThat(of("de").words()).containsExactly("dent", "deposit");
    }

    @Test
    void acceptsTheSharedBeginningFirstAndThenTheFirstWord() {
        assertThat(of("vi").accepted("vi")).isEqualTo("view ");
        assertThat(of("view ").accepted("view ")).isEqualTo("view p-");
        assertThat(of("view p-").accepted("view p-")).isEqualTo("view p-r ");
    }

    @Test
    void everyVerbItOffersIsOne() {
        for (String verb : of("").words()) {
            try {
                EntryParser.parse(verb);
            } catch (Refusal refusal) {
                assertThat(Workshop.ENGLISH.say(refusal.why())).as(verb).doesNotContain("is not an entry");
            }
        }
        assertThat(of("").words()).hasSizeGreaterThan(50);
    }
}
