package everyblade.session.around;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WaitingTest {

    private static final String LINE = "opening the job: 2 s; Ctrl+C stops it";

    private final Onlooker onlooker = new Onlooker();

    @Test
    void aPersonIsToldAfterHalfASecondWhatIsDoneAndForHowLongInALineThatGoesInTheEnd() {
        Waiting waiting = new Waiting(onlooker.around(true), "wait.open");
        onlooker.now = 499;
        waiting.tell();
        assertThat(onlooker.told()).isEmpty();
        onlooker.now = 500;
        waiting.tell();
        assertThat(onlooker.told()).endsWith("\ropening the job: 1 s; Ctrl+C stops it");
        onlooker.now = 2_100;
        waiting.tell();
        assertThat(onlooker.told()).endsWith("\r" + LINE);
        int length = onlooker.told().length();
        onlooker.now = 2_900;
        waiting.tell();
        assertThat(onlooker.told()).as("the same once more").hasSize(length);
        waiting.close();
        assertThat(onlooker.told()).endsWith(LINE + "\r" + " ".repeat(LINE.length()) + "\r");
        onlooker.now = 9_000;
        waiting.tell();
        assertThat(onlooker.told()).endsWith(LINE + "\r" + " ".repeat(LINE.length()) + "\r");
    }

    @Test
    void nobodyIsToldOfWhatIsOverBefore() {
        Waiting waiting = new Waiting(onlooker.around(true), "wait.open");
        onlooker.now = 400;
        waiting.tell();
        waiting.close();
        assertThat(onlooker.told()).isEmpty();
    }

    @Test
    void whereNobodySitsWorkIsDoneAndNothingTold() {
        String done = Waiting.during(onlooker.around(false), "wait.open", () -> {
            onlooker.now = 60_000;
            return "done";
        });
        assertThat(done).isEqualTo("done");
        assertThat(onlooker.told()).isEmpty();
    }
}
