package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.spi.Row;
import org.junit.jupiter.api.Test;

/** Which journals say the same of what was watched of row c1. */
class WatchedCourseTest {

    private static byte[] course(String... lines) {
        Situation now = new Job(new Engines()
                        .rotor("c1", 36)
                        .rotor("c2", 20)
                        .view("v", "c1", 0, 2)
                        .view("w", "c1", 0, 2)
                        .view("u", "c2", 0, 2)
                        .built())
                .enter(lines)
                .fold()
                .situation();
        Row row = now.engine().rows().get("c1");
        return WatchedCourse.of(now, row);
    }

    @Test
    void thoseThatDifferInWordsAndInWhatIsSaidOfCellsDo() {
        byte[] plain = course("view v", "datum c1 1", "turn on 10");
        assertThat(course("note as ordered", "view v", "datum c1 1", "recheck 4", "turn 10"))
                .isEqualTo(plain);
    }

    @Test
    void thoseDoNotThatDifferInWhereItWasWatchedAndFromWhere() {
        byte[] plain = course("view v", "datum c1 1", "turn on 10");
        assertThat(course("view v", "datum c1 1", "turn on 11")).isNotEqualTo(plain);
        assertThat(course("view v", "datum c1 2", "turn on 10")).isNotEqualTo(plain);
        assertThat(course("view w", "datum c1 1", "turn on 10")).isNotEqualTo(plain);
        assertThat(course("view v", "datum c1 1", "turn on 10", "look")).isNotEqualTo(plain);
        assertThat(course("view v", "datum c1 1")).isNotEqualTo(plain);
    }

    @Test
    void thoseDoNotThatDifferInHowSureItIs() {
        assertThat(course("view v", "datum c1 1", "turn on 10"))
                .isNotEqualTo(course("view v", "datum c1 1 ±1", "turn on 10"));
    }
}
