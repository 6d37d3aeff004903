package everyblade.desktop;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import javax.swing.AbstractButton;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;

class HouseRulesTest {

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption(location -> !location.contains("-tests.jar"))
            .importPackages(
                    "everyblade.words",
                    "everyblade.session",
                    "everyblade.cli",
                    "everyblade.window",
                    "everyblade.desktop");

    @Test
    void theClassesAreSeenAtAll() {
        assertThat(PROGRAM.size()).isGreaterThan(300);
    }

    @Test
    void thereIsOneMainClass() {
        methods()
                .that()
                .haveName("main")
                .should()
                .beDeclaredIn(Main.class)
                .because("everything starts in one place")
                .check(PROGRAM);
    }

    @Test
    void commandsTakeTheWorldAsTheyAreGivenIt() {
        noClasses()
                .that()
                .resideInAnyPackage("everyblade.cli..", "everyblade.session..")
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
                .check(PROGRAM);
    }

    @Test
    void whatTheWindowKnowsIsKnownWithoutAWindow() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "everyblade.window.view..",
                        "everyblade.window.author..",
                        "everyblade.words..",
                        "everyblade.session..",
                        "everyblade.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.swing..", "com.formdev..", "net.miginfocom..", "everyblade.window")
                .because("it is tested without a display")
                .check(PROGRAM);
    }

    @Test
    void windowAndCommandLineAreSiblings() {
        noClasses()
                .that()
                .resideInAPackage("everyblade.window..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("everyblade.cli..", "picocli..")
                .because("the launcher hands it what it leaves to a command")
                .check(PROGRAM);
        noClasses()
                .that()
                .resideInAPackage("everyblade.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("everyblade.window..")
                .because("the launcher hands it what opens a window")
                .check(PROGRAM);
    }

    @Test
    void whatBothUseUsesNeitherOfThem() {
        noClasses()
                .that()
                .resideInAPackage("everyblade.session..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("everyblade.cli..", "everyblade.window..", "picocli..")
                .because("a job is the same to window and command line")
                .check(PROGRAM);
    }

    @Test
    void theSessionIsBuiltInLayers() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("around")
                .definedBy("everyblade.session.around")
                .layer("model")
                .definedBy("everyblade.session.model")
                .layer("photo")
                .definedBy("everyblade.session.photo")
                .layer("job")
                .definedBy("everyblade.session.job")
                .layer("drill")
                .definedBy("everyblade.session.drill")
                .layer("fleet")
                .definedBy("everyblade.session.fleet")
                .layer("session")
                .definedBy("everyblade.session")
                .whereLayer("session")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("fleet")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("drill")
                .mayOnlyBeAccessedByLayers("session")
                .whereLayer("job")
                .mayOnlyBeAccessedByLayers("drill", "fleet", "session")
                .whereLayer("photo")
                .mayOnlyBeAccessedByLayers("job", "drill", "session")
                .whereLayer("model")
                .mayOnlyBeAccessedByLayers("job", "drill", "session")
                .check(PROGRAM);
    }

    @Test
    void panelsGiveWorkAwayAndStartNoThreads() {
        noClasses()
                .that()
                .resideInAPackage("everyblade.window..")
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
                .check(PROGRAM);
    }

    @Test
    void labelsButtonsAndToolTipsSpeakThroughOneDoor() {
        DescribedPredicate<JavaCall<?>> speaks = DescribedPredicate.describe("sets a text that people read", call -> {
            JavaClass owner = call.getTargetOwner();
            boolean shows = owner.isAssignableTo(JLabel.class) || owner.isAssignableTo(AbstractButton.class);
            boolean text = call.getTarget().getRawParameterTypes().stream()
                    .anyMatch(type -> type.isEquivalentTo(String.class));
            boolean made = call.getName().equals("<init>") && text;
            return shows && (made || call.getName().equals("setText"))
                    || owner.isAssignableTo(JComponent.class) && call.getName().equals("setToolTipText");
        });
        noClasses()
                .that()
                .resideInAPackage("everyblade.window..")
                .and()
                .doNotHaveSimpleName("Texts")
                .should()
                .callCodeUnitWhere(speaks)
                .because("what others wrote must not hide anything, nor be anything but text")
                .check(PROGRAM);
    }

    @Test
    void listsShowTheirLinesWithNothingHidden() {
        classes()
                .that(DescribedPredicate.describe(
                        "are renderers from scratch",
                        type -> type.getRawSuperclass()
                                .filter(above -> above.isEquivalentTo(DefaultListCellRenderer.class))
                                .isPresent()))
                .should()
                .haveSimpleName("VisibleCells")
                .because("it is the renderer of lists that all others go on from")
                .check(PROGRAM);
    }

    @Test
    void onlyTheSessionWritesWhatAWindowSays() {
        noClasses()
                .that()
                .resideInAPackage("everyblade.window..")
                .should()
                .dependOnClassesThat()
                .areAssignableTo(everyblade.record.JournalWriter.class)
                .because("what shows as kept must have come from one place")
                .check(PROGRAM);
    }
}
