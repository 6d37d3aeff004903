package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import everyblade.spi.EngineModel;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class EngineJsonWriterTest {

    private static final long SEED = 20_260_101;

    @Test
    void reading_back_what_was_written_gives_an_equal_model() {
        ModelGenerator generator = new ModelGenerator(new SplittableRandom(SEED));
        for (int i = 0; i < 1000; i++) {
            EngineModel model = generator.model();
            String text = EngineJsonWriter.write(model);
            assertThat(ModelText.read(text))
                    .as("model %d", i)
                    .isInstanceOfSatisfying(
                            Reading.Read.class, read -> assertThat(read.model()).isEqualTo(model));
        }
    }

    @Test
    void what_is_written_is_valid_by_the_schema() {
        Schema schema = ModelText.schema();
        ModelGenerator generator = new ModelGenerator(new SplittableRandom(SEED + 1));
        for (int i = 0; i < 200; i++) {
            String text = EngineJsonWriter.write(generator.model());
            assertThat(schema.validate(ModelText.parse(text))).as(text).isEmpty();
        }
    }

    @Test
    void writing_does_not_depend_on_the_locale() {
        EngineModel model = new ModelGenerator(new SplittableRandom(SEED + 2)).model();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ROOT);
            String plain = EngineJsonWriter.write(model);
            for (String tag : List.of("de", "tr", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(EngineJsonWriter.write(model)).as(tag).isEqualTo(plain);
                assertThat(ModelText.read(plain)).as(tag).isInstanceOf(Reading.Read.class);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void the_text_is_this_one_to_the_byte() {
        EngineModel model = ((Reading.Read) ModelText.read(ModelText.resource("least.json"))).model();
        String text = EngineJsonWriter.write(model);
        assertThat(text).isEqualTo(ModelText.resource("least-canonical.json"));
    }

    @Test
    void the_full_model_keeps_its_hash() throws GeneralSecurityException {
        EngineModel model = ((Reading.Read) ModelText.read(ModelText.resource("full.json"))).model();
        assertThat(hash(model)).isEqualTo("9c36367b30b2d6fbf6d8c290ee9536ebe693cb07fdd94b2473de2213ebb70f67");
    }

    @Test
    void a_model_without_task_cards_keeps_the_hash_that_it_had_before_there_were_any() throws GeneralSecurityException {
        EngineModel model = ((Reading.Read) ModelText.read(ModelText.resource("full.json"))).model();
        EngineModel without = new EngineModel(
                model.id(),
                model.name(),
                model.notice(),
                model.spools(),
                model.walls(),
                model.rows(),
                model.scopeTips(),
                model.ports(),
                model.views());
        assertThat(hash(without)).isEqualTo("e232f4dc8c136f58313a1110a9a8f7da309a3831ece2c3a4bff47e5cc7338a4a");
    }

    private static String hash(EngineModel model) throws GeneralSecurityException {
        byte[] bytes = EngineJsonWriter.write(model).getBytes(StandardCharsets.UTF_8);
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }

    @Test
    void numbers_are_the_shortest_that_read_back_the_same() {
        // The JDK itself wrote 2.0E23 with more digits than that until version 19 (JDK-4511638).
        assertThat(List.of(2.0, -0.0, 0.1, 1e21, 2e23, 2.2250738585072014e-308, 4.9e-324, 118.05))
                .extracting(CanonicalJson::shortest)
                .containsExactly("2", "-0", "0.1", "1.0E21", "2.0E23", "2.2250738585072014E-308", "4.9E-324", "118.05");
        SplittableRandom random = new SplittableRandom(SEED + 3);
        for (int i = 0; i < 100_000; i++) {
            double number = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(number)) {
                assertThat(Double.parseDouble(CanonicalJson.shortest(number))).isEqualTo(number);
            }
        }
    }
}
