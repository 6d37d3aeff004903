package everyblade.record.drill;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import everyblade.practice.drill.Drill;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Tip;
import everyblade.practice.drill.TipTrack.Sample;
import everyblade.practice.drill.TipTrack.TipLost;
import everyblade.practice.drill.TipTrack.ToldOf;
import everyblade.practice.drill.Truth;
import everyblade.practice.harm.Harm;
import everyblade.practice.harm.HarmKind;
import everyblade.practice.harm.Recipe;
import everyblade.practice.harm.Vector;
import everyblade.record.LocalDisk;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillFolderTest {

    private static final byte[] RANDOM = new byte[Sealed.RANDOM];
    private static final Harm NICK = new Harm(
            HarmKind.NICK,
            "c1",
            7,
            List.of("tip/pressure/leading", "tip/suction/leading"),
            12,
            1.25,
            new Vector(30.5, 1, 95),
            new Vector(0, 1, 0),
            new Vector(0, 0, 1),
            new Vector(1, 0, 0),
            -5);
    private static final Truth TRUTH = new Truth(
            42,
            new Recipe(List.of("c1"), List.of(HarmKind.NICK), 1, 0, 0.5, 2, 0.25),
            List.of(NICK),
            Map.of("c1", 12.5));
    private static final Drill DRILL =
            new Drill("Nicks", Drill.Mode.QUIET, "find them", List.of("p1-c1"), List.of(HarmKind.NICK), true);

    @TempDir
    Path temp;

    private DrillFolder folder() throws IOException {
        Files.createDirectories(temp.resolve("drill"));
        return new DrillFolder(new LocalDisk(), temp);
    }

    @Test
    void a_drill_and_its_truth_read_as_they_were_written() {
        Sealed sealed = Sealed.of(DrillFile.write(TRUTH), "three blue herons", RANDOM);

        DrillFile.Content content =
                DrillFile.read(DrillFile.write(DRILL, sealed)).orElseThrow();

        assertThat(content).isEqualTo(new DrillFile.Content(DRILL, sealed));
        assertThat(content.truth().open("three blue herons").flatMap(DrillFile::readTruth))
                .contains(TRUTH);
    }

    @Test
    void nothing_of_the_truth_can_be_read_without_the_examiners_words() {
        Sealed sealed = Sealed.of(DrillFile.write(TRUTH), "three blue herons", RANDOM);
        String file = new String(DrillFile.write(DRILL, sealed), StandardCharsets.UTF_8);

        assertThat(file).doesNotContain("tip/pressure").doesNotContain("\"seed\"");
        assertThat(sealed.open("")).isEmpty();
        assertThat(sealed.open("three blue heron")).isEmpty();
    }

    @Test
    void another_truth_is_not_taken_for_the_one_that_was_sealed() throws IOException {
        Sealed sealed = Sealed.of(DrillFile.write(TRUTH), "", RANDOM);
        Truth other = new Truth(42, TRUTH.recipe(), List.of(), TRUTH.standing());
        DrillFolder folder = folder();

        assertThat(folder.truth(sealed)).isEmpty();
        assertThat(folder.end(DrillFile.write(other))).isEmpty();

        assertThat(folder.ended()).isTrue();
        assertThat(folder.truth(sealed)).isEmpty();
        assertThat(folder.truth(Sealed.of(DrillFile.write(other), "", RANDOM))).contains(other);
    }

    @Test
    void the_track_goes_on_where_it_stopped_and_a_torn_line_ends_it() throws IOException {
        Moment moment = new Moment(new Tip("p1-c1", "low", 3, 10, -5, 90, 0), Map.of("gas", 12.25));
        Sample first = new Sample(0, moment, 1);
        Sample second = new Sample(
                250, new Moment(moment.tip().pushed(1), Map.of("gas", 13.0)), 2, Optional.empty(), Map.of("gas", 12.5));
        Sample lost = new Sample(300, second.moment(), 2, Optional.of(new TipLost("c1")));
        Sample told = new Sample(400, second.moment(), 3, Optional.of(new ToldOf(7)));
        DrillFolder folder = folder();

        assertThat(folder.track().samples()).isEmpty();
        assertThat(folder.add(List.of(first))).isEmpty();
        assertThat(folder.add(List.of(second, lost, told))).isEmpty();
        Files.writeString(temp.resolve("drill/track.jsonl"), "{\"t\":500,\"vi", StandardOpenOption.APPEND);

        assertThat(folder.track().samples()).containsExactly(first, second, lost, told);
        assertThat(folder.track().seconds(0)).isEqualTo(0.25);
    }

    @Test
    void what_is_no_drill_is_not_read_as_one() {
        assertThat(DrillFile.read("{}".getBytes(StandardCharsets.UTF_8))).isEmpty();
        assertThat(DrillFile.read(new byte[] {1, 2, 3})).isEmpty();
        assertThat(DrillFile.readTruth("{\"seed\":1}".getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @Test
    void the_schema_takes_what_is_written_and_refuses_what_gives_the_truth_away() throws IOException {
        ObjectNode file = (ObjectNode)
                new ObjectMapper().readTree(DrillFile.write(DRILL, Sealed.of(DrillFile.write(TRUTH), "", RANDOM)));

        assertThat(problems(file)).isEmpty();
        assertThat(problems(file.deepCopy().put("seed", 42))).hasSize(1);
        assertThat(problems(file.deepCopy().put("mode", "loud"))).hasSize(1);
        assertThat(problems(file.deepCopy().set("views", new ObjectMapper().createArrayNode())))
                .hasSize(1);
        ObjectNode open = file.deepCopy();
        ((ObjectNode) open.get("truth")).put("box", "{}");
        assertThat(problems(open)).hasSize(1);
    }

    @Test
    void the_schema_knows_every_kind_of_damage() throws IOException {
        Sealed sealed = Sealed.of(DrillFile.write(TRUTH), "", RANDOM);
        for (HarmKind kind : HarmKind.values()) {
            Drill drill = new Drill("a", Drill.Mode.BURST, "b", List.of("v"), List.of(kind), false);
            byte[] file = DrillFile.write(drill, sealed);

            assertThat(problems(new ObjectMapper().readTree(file)).isEmpty())
                    .as(kind.toString())
                    .isEqualTo(kind.isDamage());
        }
    }

    private static List<?> problems(JsonNode file) throws IOException {
        try (InputStream in = DrillFile.class.getResourceAsStream("drill-1.schema.json")) {
            return List.copyOf(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON)
                    .validate(file));
        }
    }
}
