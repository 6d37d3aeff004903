package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewCommandTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aJob() {
        console = Console.in(folder);
        console.job(
                "view p-r",
                "datum r 1",
                "look",
                "turn 60",
                "nick 3 tip",
                "tool out mirror",
                "note all is well",
                "noaccess all 9-10 because behind the strut");
    }

    private Ran review(String... more) {
        String[] arguments = new String[more.length + 2];
        arguments[0] = "review";
        arguments[1] = "job";
        System.arraycopy(more, 0, arguments, 2, more.length);
        return console.run(arguments);
    }

    private Ran ask(String text) {
        return review("--by", "R. Viewer", "--question", text, "--where", "r 3-4 tip");
    }

    @Test
    void listsWhatIsOpenByWhatItPutsAtRiskAndWritesNothing() {
        SortedMap<String, String> before = console.everything();

        Ran listed = review();

        assertThat(listed.status()).isZero();
        assertThat(listed.outLines().get(2)).startsWith("risk 3  tool: ").contains("mirror", "entry 6 by Ann");
        assertThat(listed.outLines().stream().filter(line -> line.startsWith("risk")))
                .isSortedAccordingTo(java.util.Comparator.comparing((String line) -> line.substring(0, 6))
                        .reversed());
        assertThat(listed.out()).contains("risk 1  accepted as not seen", "Nobody has reviewed it.");
        review("--blind");
        review("--compare");
        review("--json");
        assertThat(console.everything()).isEqualTo(before);
    }

    @Test
    void toldAsJsonTheWorstComesFirstInTheShapeOfTheClosingList() {
        ask("what is the shadow");

        String json = review("--json").out();

        assertThat(json.indexOf("\"kind\" : \"tool\"")).isPositive().isLessThan(json.indexOf("\"kind\" : \"finding\""));
        assertThat(json).contains("\"risk\" : 3", "\"risk\" : 2", "\"risk\" : 1", "\"what\" : \"question\"");
        assertThat(json).contains("\"where\" : \"r 3-4 tip\"", "\"open\" : true");
    }

    @Test
    void blindShowsWhatWasDoneAndFoundAndNotWhatTheTechnicianMakesOfIt() {
        String blind = review("--blind").out();

        assertThat(blind).contains("turn 60", "nick 3 tip", "tool out mirror");
        assertThat(blind).doesNotContain("all is well", "behind the strut", "%", "risk");
    }

    @Test
    void whatWasWantedStandsBesideWhatTheRecordSays() {
        Ran wanted = review("--by", "R. Viewer", "--want", "the tips again", "--where", "r 3-10 tip");
        assertThat(wanted.out()).isEqualTo("kept review 1\n");

        Ran compared = review("--by", "R. Viewer", "--compare");

        assertThat(compared.outLines().get(0)).isEqualTo("kept review 2");
        assertThat(compared.out()).contains("the tips again (r 3-10 tip)", " of 8 cells seen", "2 of these accepted");
        assertThat(review().out()).contains("review 2 by R. Viewer, was shown what the technician says");
    }

    @Test
    void aQuestionStandsInTheClosingListUntilItIsAnswered() {
        assertThat(ask("what is the shadow").out()).isEqualTo("kept review 1\n");

        assertThat(console.run("close", "job").out())
                .contains("question: R. Viewer asks in review 1: what is the shadow (r 3-4 tip)", "note review 1: …");
        assertThat(review().out()).contains("OPEN; to answer it");

        console.run("log", "job", "note review 1: looked again, it is oil");

        assertThat(console.run("close", "job").out()).doesNotContain("what is the shadow");
        assertThat(review().out()).contains("answered in entry 9 by Ann: note review 1: looked again, it is oil");
        assertThat(console.run("verify", "job").status()).isZero();
    }

    @Test
    void takesBackOnlyOnesOwnQuestions() {
        ask("what is the shadow");

        assertThat(review("--by", "S. Body", "--withdraw", "1").err()).contains("review 1", "no question that S. Body");
        assertThat(review("--by", "R. Viewer", "--withdraw", "7").status()).isEqualTo(2);
        assertThat(review("--by", "R. Viewer", "--withdraw", "1").status()).isZero();
        assertThat(review().out()).contains("taken back in review 2");
        assertThat(console.run("close", "job").out()).doesNotContain("what is the shadow");
    }

    @Test
    void refusesInALineAndKeepsNothing() {
        SortedMap<String, String> before = console.everything();
        for (String[] wrong : new String[][] {
            {"--question", "who says so"},
            {"--by", " ", "--question", "who says so"},
            {"--by", "R. Viewer", "--question", ""},
            {"--by", "R. Viewer", "--question", "two\nlines"},
            {"--by", "R. Viewer", "--question", "where", "--where", "zz 3"},
            {"--by", "R. Viewer", "--question", "where", "--where", "r 13"},
            {"--by", "R. Viewer", "--question", "where", "--where", "r 3 hub"},
        }) {
            Ran refused = review(wrong);
            assertThat(refused.status()).isEqualTo(2);
            assertThat(refused.errLines()).hasSize(1);
        }
        assertThat(console.everything()).isEqualTo(before);
    }

    @Test
    void saysWhenSomebodyReviewsTheirOwnWork() {
        assertThat(review("--by", "ann", "--remark", "fine").err()).contains("no review by another person");
        assertThat(review("--by", "R. Viewer", "--remark", "fine").err()).isEmpty();
    }

    @Test
    void aReviewThatWasTamperedWithIsToldEverywhereAndNothingIsCalledClosed() {
        ask("what is the shadow");
        console.write("job/review.jsonl", console.read("job/review.jsonl").replace("shadow", "meadow"));

        assertThat(console.run("verify", "job").status()).isEqualTo(1);
        assertThat(console.run("verify", "job").out()).startsWith("Damaged line: review.jsonl line 2: ");
        assertThat(console.run("close", "job").status()).isEqualTo(2);
        assertThat(console.run("coverage", "job").out()).startsWith("Damaged line: review.jsonl line 2: ");
        assertThat(console.run("report", "job", "--out", "r.pdf").err())
                .contains("Damaged line: review.jsonl line 2: ");
        assertThat(console.run("log", "job", "look").status()).isZero();
    }

    @Test
    void twoRecordsAreComparedCellByCell() {
        console.run("start", "later", "--model", "ring", "--serial", "7", "--task", "again", "--by", "Bo");
        console.run("log", "later", "view p-r", "datum r 1", "look", "turn -60", "nick 3 tip 1.2", "dent 5 root");

        Ran compared = console.run("compare", "job", "later");

        assertThat(compared.status()).isZero();
        assertThat(compared.outLines())
                .anySatisfy(line ->
                        assertThat(line.split("\\s{2,}")).containsExactly("r", "Rotor", "24", "2", "4", "4", "14"));
        assertThat(compared.out()).contains("entry 6: not in the last record");
        assertThat(console.run("compare", "job", "later", "--json").out())
                .contains("\"both\" : 2", "\"first\" : 4", "\"second\" : 4", "\"none\" : 14");
    }

    @Test
    void recordsOfUnlikeEnginesAreNotCompared() {
        console.write(
                "other/engine.json",
                Console.RING
                        .replace("\"count\": 12", "\"count\": 13")
                        .replace("\"count\": 8", "\"count\": 9")
                        .replace("\"id\": \"ring\"", "\"id\": \"other\""));
        console.run("start", "unlike", "--model", "other", "--serial", "7", "--task", "again", "--by", "Bo");

        assertThat(console.run("compare", "job", "unlike").status()).isEqualTo(2);
    }
}
