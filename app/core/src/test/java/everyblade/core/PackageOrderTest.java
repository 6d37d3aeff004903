package everyblade.core;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PackageOrderTest {

    private static final String ROOT = "everyblade.core.";

    /** In the order in which data flows; a package may use those before it. */
    private static final List<String> ORDER = List.of(
            "angle", "entry", "turning", "surface", "sight", "check", "coverage", "gap", "move", "finding", "doubt");

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("everyblade.core");

    static List<String> packages() {
        return ORDER;
    }

    @Test
    void theClassesOfCoreAreSeenAtAll() {
        assertThat(CORE.containPackage(ROOT + "angle")).isTrue();
        assertThat(CORE.size()).isGreaterThan(50);
    }

    @Test
    void everyPackageHasItsPlaceInTheOrder() {
        assertThat(CORE.stream().map(c -> c.getPackageName().substring(ROOT.length() - 1)))
                .allSatisfy(name -> assertThat(ORDER).contains(name.substring(1).split("\\.")[0]));
    }

    @ParameterizedTest
    @MethodSource("packages")
    void aPackageUsesOnlyThoseBeforeIt(String name) {
        String[] after = ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size()).stream()
                .map(later -> ROOT + later + "..")
                .toArray(String[]::new);
        if (after.length > 0) {
            noClasses()
                    .that()
                    .resideInAPackage(ROOT + name + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(after)
                    .allowEmptyShould(true)
                    .because("the packages of core tell the story in the order in which data flows")
                    .check(CORE);
        }
    }

    @Test
    void packagesDoNotDependOnEachOtherInCircles() {
        slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CORE);
    }

    @Test
    void coreTouchesNoFilesNoClockAndNoScreen() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.awt..", "javax.swing..", "java.nio.file..", "com.fasterxml..", "java.util.prefs..")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.time.Clock")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.File")
                .because("files, clock and window belong to the rim")
                .check(CORE);
    }

    @Test
    void coreReadsAndWritesNothing() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.io..")
                .because("what core is told comes as values")
                .check(CORE.that(com.tngtech.archunit.base.DescribedPredicate.describe(
                        "no exceptions",
                        c -> !c.isAssignableTo(Exception.class)
                                && !c.isAssignableTo(java.util.AbstractList.class)
                                && !c.isEnum()
                                && !c.getName().contains("$SwitchMap"))));
    }

    @Test
    void nothingKeepsStateInStaticFields() {
        ArchRuleDefinition.fields()
                .that()
                .areStatic()
                .should()
                .haveModifier(JavaModifier.FINAL)
                .because("everything is computed from what is passed in")
                .check(CORE);
    }

    @Test
    void noClassIsCalledAfterWhatItDoesNotSay() {
        classes()
                .should()
                .haveSimpleNameNotEndingWith("Utils")
                .andShould()
                .haveSimpleNameNotEndingWith("Util")
                .andShould()
                .haveSimpleNameNotEndingWith("Manager")
                .andShould()
                .haveSimpleNameNotEndingWith("Helper")
                .check(CORE);
    }
}
