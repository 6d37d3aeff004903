package everyblade.json;

import static everyblade.json.ModelText.HEAD;
import static everyblade.json.ModelText.assertProblems;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A model file made to break its reader, or to keep it busy. */
@Timeout(60)
class HostileModelFileTest {

    @Test
    void is_refused_over_64_MB() {
        byte[] bytes = new byte[(64 << 20) + 1];
        Arrays.fill(bytes, (byte) ' ');
        assertProblems(bytes).first().extracting(Problem::code).isEqualTo("too-large");
    }

    @Test
    void is_read_up_to_200_levels_of_nesting_and_refused_beyond() {
        assertProblems("[".repeat(200) + "]".repeat(200))
                .first()
                .extracting(Problem::code)
                .isEqualTo("wrong-type");
        assertProblems("[".repeat(201) + "]".repeat(201))
                .first()
                .extracting(Problem::code)
                .isEqualTo("too-deep");
        assertProblems("{\"a\":".repeat(5_000_000))
                .first()
                .extracting(Problem::code)
                .isEqualTo("too-deep");
    }

    @Test
    void is_refused_if_a_number_has_more_than_100_digits() {
        String hundred = "1".repeat(100);
        assertProblems("{\"a\": " + hundred + "}").extracting(Problem::code).doesNotContain("long-number");
        assertProblems("{\"a\": " + hundred + "1}").extracting(Problem::code).containsExactly("long-number");
        assertProblems("[" + "1".repeat(10_000_000) + "]")
                .extracting(Problem::code)
                .containsExactly("long-number");
    }

    @Test
    void is_refused_soon_if_an_exponent_is_huge() {
        assertProblems(
                        "{" + HEAD + ", \"rows\": [{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 1e999999999}],"
                                + "\"spools\": [{\"pads\": [{\"ratio\": 1e999999999}, {\"id\": \"b\", \"ratio\": 1e-999999999}]}]}")
                .filteredOn(problem -> problem.severity() == Severity.ERROR)
                .extracting(Problem::code)
                .containsExactly("out-of-range", "long-ratio", "long-ratio");
    }

    @Test
    void is_refused_if_it_holds_more_values_than_a_model_could() {
        assertProblems("[" + "[],".repeat(5_000_000) + "[]]")
                .first()
                .extracting(Problem::code)
                .isEqualTo("too-many-values");
    }

    @Test
    void is_refused_soon_if_all_of_its_keys_and_references_are_wrong() {
        StringBuilder text =
                new StringBuilder("{" + HEAD + ", \"rows\": [{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 9}");
        for (int i = 0; i < 100_000; i++) {
            text.append(",{\"id\": \"row-with-a-long-name-")
                    .append(i)
                    .append("\", \"kind\": \"rotor\", \"spool\": \"")
                    .append(i)
                    .append("\", \"unknown-key-")
                    .append(i)
                    .append("\": 0}");
        }
        text.append("], \"views\": [");
        for (int i = 0; i < 100_000; i++) {
            text.append("{\"id\": \"v")
                    .append(i)
                    .append("\", \"row\": \"missing")
                    .append(i)
                    .append("\"},");
        }
        assertProblems(text.append("{}]}").toString()).hasSize(Problem.MOST + 1);
    }
}
