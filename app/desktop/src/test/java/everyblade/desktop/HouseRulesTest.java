package everyblade.desktop;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class HouseRulesTest {

    private final JavaClasses desktop = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("everyblade.desktop");

    @Test
    void theClassesAreSeenAtAll() {
        assertThat(desktop.size()).isGreaterThan(20);
    }

    @Test
    void thereIsOneMainClass() {
        methods()
                .that()
                .haveName("main")
                .should()
                .beDeclaredIn(Main.class)
                .because("everything starts in one place")
                .check(desktop);
    }

    @Test
    void commandsTakeTheWorldAsTheyAreGivenIt() {
        noClasses()
                .that()
                .resideInAPackage("everyblade.desktop.command..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .orShould()
                .callMethod(System.class, "getenv", String.class)
                .orShould()
                .callMethod(System.class, "getenv")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .because("a test hands in its own streams, clock and environment")
                .check(desktop);
    }

    @Test
    void whatTheWindowKnowsIsKnownWithoutAWindow() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "everyblade.desktop.view..",
                        "everyblade.desktop.author..",
                        "everyblade.desktop.words..",
                        "everyblade.desktop.command..",
                        "everyblade.desktop.photo..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.swing..", "com.formdev..", "net.miginfocom..", "everyblade.desktop.window..")
                .because("it is tested without a display")
                .check(desktop);
    }

    @Test
    void picturesAreMeasuredAlikeForTheWindowAndTheCommandLine() {
        noClasses()
                .that()
                .resideInAPackage("everyblade.desktop.photo..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("everyblade.desktop.command..", "everyblade.desktop.view..", "picocli..")
                .because("both use it, and it uses neither")
                .check(desktop);
    }

    @Test
    void panelsGiveWorkAwayAndStartNoThreads() {
        noClasses()
                .that()
                .resideInAPackage("everyblade.desktop.window..")
                .and()
                .doNotHaveSimpleName("Workers")
                .and()
                .doNotHaveSimpleName("ScreenOpening") // waits on the thread that started the program
                .should()
                .dependOnClassesThat()
                .areAssignableTo(java.util.concurrent.Executor.class)
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(Thread.class)
                .because("there is one door off the event thread")
                .check(desktop);
    }

    @Test
    void onlyTheSessionWritesWhatAWindowSays() {
        noClasses()
                .that()
                .resideInAPackage("everyblade.desktop.window..")
                .should()
                .dependOnClassesThat()
                .areAssignableTo(everyblade.record.JournalWriter.class)
                .because("what shows as kept must have come from one place")
                .check(desktop);
    }
}
