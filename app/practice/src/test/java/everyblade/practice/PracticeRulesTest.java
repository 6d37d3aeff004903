package everyblade.practice;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class PracticeRulesTest {

    private static final JavaClasses PRACTICE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("everyblade.practice");

    @Test
    void practice_touches_no_files_no_clock_and_no_screen() {
        assertThat(PRACTICE.size()).isGreaterThan(10);
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "java.nio.file..", "java.io..", "com.fasterxml..")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.time.Clock")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.SplittableRandom")
                .because("a drill is the same on every machine, and is tested without one")
                .check(PRACTICE);
    }

    @Test
    void packages_do_not_depend_on_each_other_in_circles() {
        slices().matching("everyblade.practice.(*)..").should().beFreeOfCycles().check(PRACTICE);
    }
}
