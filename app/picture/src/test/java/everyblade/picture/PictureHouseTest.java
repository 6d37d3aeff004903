package everyblade.picture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class PictureHouseTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("everyblade.picture");

    @Test
    void classes_were_seen_at_all() {
        assertThat(CLASSES.size()).isGreaterThan(30);
    }

    @Test
    void a_scene_is_made_and_written_without_awt() {
        noClasses()
                .that()
                .resideInAnyPackage("everyblade.picture.scene", "everyblade.picture.svg")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.imageio..", "org.apache.pdfbox..", "everyblade.core..")
                .because("what the map shows is tested, written and asked without a display")
                .check(CLASSES);
    }

    @Test
    void interpreters_know_scenes_but_not_coverage() {
        noClasses()
                .that()
                .resideInAnyPackage("everyblade.picture.svg", "everyblade.picture.paint")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("everyblade.picture", "everyblade.core..")
                .because("a painter only interprets")
                .check(CLASSES);
    }

    @Test
    void a_map_knows_no_clock_and_no_file() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "everyblade.picture",
                        "everyblade.picture.scene",
                        "everyblade.picture.sight",
                        "everyblade.picture.svg",
                        "everyblade.picture.paint")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.time..", "java.nio.file..", "javax.swing..")
                .because("the same job gives the same bytes")
                .check(CLASSES);
    }
}
