package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import everyblade.session.Workshop;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillCommandTest {

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void anEngineWithAShape() {
        console = Console.in(folder);
        console.write("ring/engine.json", Workshop.SHAPED);
    }

    private Ran made(String... more) {
        String[] all = new String[more.length + 8];
        System.arraycopy(new String[] {"drill", "new", "d", "--model", "ring", "--row", "r", "--by=Ann"}, 0, all, 0, 8);
        System.arraycopy(more, 0, all, 8, more.length);
        return console.run(all);
    }

    @Test
    void a_drill_is_made_entered_into_ended_and_told() {
        assertThat(made("--seed", "5", "--damage", "3", "--harmless", "2").status())
                .isZero();
        assertThat(console.read("d/journal.jsonl")).startsWith("{\"schema\":\"everyblade/drill/1\"");
        assertThat(console.read("d/drill/drill.json")).contains("DRILL").doesNotContain("\"seed\"");

        Ran logged = console.run("drill", "log", "d", "view p-r", "datum r 1", "nick 2 tip/pressure/leading");
        assertThat(logged.out()).isEqualTo("kept 1\nkept 2\nkept 3\n");
        assertThat(console.run("drill", "result", "d").err()).contains("nobody is told before it ends");

        Ran ended = console.run("drill", "end", "d");
        assertThat(ended.status()).isZero();
        assertThat(ended.outLines().get(1)).startsWith("3 pieces of damage");
        assertThat(ended.out()).contains("never in sight", "no qualification");
        assertThat(console.run("drill", "result", "d").out()).isEqualTo(ended.out());
        assertThat(console.run("drill", "log", "d", "look").err()).contains("the drill has ended");
        assertThat(console.run("drill", "progress", "d").out()).contains("None was in sight");
        assertThat(console.run("drill", "result", "d", "--json").out())
                .contains("\"fate\" : \"never in sight\"", "\"seed\" : 5");
    }

    @Test
    void the_same_seed_makes_the_same_drill() {
        made("--seed", "5");
        console.run("drill", "new", "e", "--model", "ring", "--row", "r", "--by", "Ben", "--seed", "5");

        console.run("drill", "end", "d");
        console.run("drill", "end", "e");

        assertThat(console.read("d/drill/truth.json")).isEqualTo(console.read("e/drill/truth.json"));
        assertThat(console.read("d/drill/drill.json")).isNotEqualTo(console.read("e/drill/drill.json"));
    }

    @Test
    void no_command_takes_a_drill_for_a_job_or_a_job_for_a_drill() {
        made();
        console.job("note really");

        assertThat(console.run("coverage", "d")).isEqualTo(refusal("A drill, not a job"));
        assertThat(console.run("log", "d", "look")).isEqualTo(refusal("A drill, not a job"));
        assertThat(console.run("report", "d", "--out", "r.pdf")).isEqualTo(refusal("A drill, not a job"));
        assertThat(console.run("verify", "d").status()).isEqualTo(1);
        for (String command : new String[] {"end", "result", "progress", "run"}) {
            Ran ran = console.run("drill", command, "job");
            assertThat(ran.status()).isEqualTo(2);
            assertThat(ran.errLines()).hasSize(1).first().asString().startsWith("A job, not a drill");
        }
    }

    private static Ran refusal(String begins) {
        return new Ran(
                2,
                "",
                begins
                        + ": journal.jsonl line 1: it was made for practice, and is the record of no engine; use everyblade"
                        + " drill with it\n");
    }

    @Test
    void every_page_of_a_drill_says_drill() {
        made();

        assertThat(console.run("drill", "map", "d", "--out", "d.svg").status()).isZero();

        assertThat(console.read("d.svg")).contains("DRILL");
    }

    @Test
    void the_map_of_truth_is_drawn_after_the_end_only_and_shows_where_the_damage_is() {
        made("--seed", "5", "--damage", "3", "--harmless", "2");
        console.run("drill", "log", "d", "view p-r", "datum r 1", "round 1");
        assertThat(console.run("drill", "map", "d", "--truth", "--out", "t.svg").err())
                .contains("nobody is told before it ends");
        assertThat(folder.resolve("t.svg")).doesNotExist();
        console.run("drill", "end", "d");

        assertThat(console.run("drill", "map", "d", "--row=r", "--out=said.svg").status())
                .isZero();
        assertThat(console.run("drill", "map", "d", "--row=r", "--truth", "--out=t.svg")
                        .status())
                .isZero();

        for (String told : List.of("DRILL", "Truly in the picture", ">F1<", ">F2<", ">F3<")) {
            assertThat(console.read("t.svg").contains(told)).as(told).isTrue();
        }
        assertThat(console.read("said.svg").contains(">F1<")).isFalse();
    }

    @Test
    void an_examiners_drill_ends_by_the_examiners_key_only() {
        console.write("key.txt", "three blue herons\n");
        console.write("other.txt", "four blue herons\n");
        made("--key", "key.txt");

        assertThat(console.run("drill", "end", "d").err()).contains("an examiner set this drill");
        assertThat(console.run("drill", "end", "d", "--key", "other.txt").err()).contains("does not open this drill");
        assertThat(console.run("drill", "end", "d", "--key", "key.txt").status())
                .isZero();
        assertThat(console.run("drill", "result", "d").status()).isZero();
    }

    @Test
    void a_truth_that_was_changed_after_the_end_is_not_told() {
        made("--seed", "5");
        console.run("drill", "end", "d");
        console.write("d/drill/truth.json", console.read("d/drill/truth.json").replace("\"seed\":5", "\"seed\":6"));

        Ran told = console.run("drill", "result", "d");

        assertThat(told.status()).isEqualTo(2);
        assertThat(told.errLines()).hasSize(1).first().asString().contains("not the truth that was sealed");
    }

    @Test
    void mistakes_are_told_in_a_line_before_anything_is_made() {
        assertMistake("has no such row", "--row", "x");
        assertMistake("no such damage is invented", "--kind", "glint");
        assertMistake("the least size not above the most", "--sizes", "5-2");
        assertMistake("the course has drills 1 to", "--course", "99");
        assertMistake("is no number", "--grime", "dirty");
        assertMistake("cannot be read", "--key", "nowhere");
    }

    private void assertMistake(String says, String option, String value) {
        Ran ran = option.equals("--course")
                ? console.run("drill", "new", "d", "--by", "Ann", option, value)
                : made(option, value);
        assertThat(ran.status()).as(option).isEqualTo(2);
        assertThat(ran.errLines()).hasSize(1).first().asString().contains(says);
        assertThat(folder.resolve("d")).doesNotExist();
    }
}
