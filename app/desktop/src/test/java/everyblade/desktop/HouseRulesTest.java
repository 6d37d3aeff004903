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
}
