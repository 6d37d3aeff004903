package everyblade.desktop;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
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
                        "everyblade.words..",
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
                .resideInAnyPackage("everyblade.desktop.window..", "everyblade.desktop.map..")
                .and()
                .doNotHaveSimpleName("Texts")
                .should()
                .callCodeUnitWhere(speaks)
                .because("what others wrote must not hide anything, nor be anything but text")
                .check(desktop);
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
