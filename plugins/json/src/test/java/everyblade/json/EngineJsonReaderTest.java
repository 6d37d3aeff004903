package everyblade.json;

import static everyblade.json.ModelText.HEAD;
import static everyblade.json.ModelText.assertProblems;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.Pad;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EngineJsonReaderTest {

    private static EngineModel model(String members) {
        Reading reading = ModelText.read("{" + HEAD + ", " + members + "}");
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).model();
    }

    @Nested
    class What_is_left_out {

        @Test
        void becomes_one_shaft_that_is_turned_directly_both_ways_without_errors() {
            EngineModel model = model("'rows': [{'id': 'c1', 'kind': 'rotor', 'count': 19}]".replace('\'', '"'));
            Pad pad = new Pad("pad", "pad", Ratio.ONE, Set.of(Direction.CW, Direction.CCW), 0, 0, 0);
            assertThat(model.spools()).containsExactly(new Spool("shaft", "shaft", Direction.CW, List.of(pad)));
            assertThat(model.rows().get(0).spool()).contains("shaft");
        }

        @Test
        void puts_a_rotor_on_the_first_spool_and_nothing_else_on_any() {
            EngineModel model = model("""
                    "spools": [{"id": "gas"}, {"id": "power"}],
                    "rows": [{"id": "r", "kind": "rotor", "count": 9}, {"id": "v", "kind": "stator", "count": 9},
                             {"id": "l", "kind": "liner", "count": 9}]""");
            assertThat(model.rows())
                    .extracting(Row::spool)
                    .containsExactly(Optional.of("gas"), Optional.empty(), Optional.empty());
        }

        @Test
        void divides_a_row_without_a_shape_along_its_span_only() {
            Row row = model("\"rows\": [{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 9}]")
                    .rows()
                    .get(0);
            assertThat(row.spanBands()).isEqualTo(2);
            assertThat(row.sides()).isFalse();
            assertThat(row.chordBands()).isEmpty();
            assertThat(row.numbering()).isEqualTo(Direction.CW);
        }

        @Test
        void divides_a_row_with_a_shape_by_side_and_chord_too() {
            Row row = model("""
                            "rows": [{"id": "r", "kind": "rotor", "count": 9, "shape": {"type": "mesh", "file": "r.ply"}}]""").rows().get(0);
            assertThat(row.sides()).isTrue();
            assertThat(row.chordBands()).containsExactly(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING);
        }

        @Test
        void divides_a_liner_with_a_shape_into_forward_and_aft_and_never_by_side() {
            Row row = model("""
                            "rows": [{"id": "l", "kind": "liner", "count": 9, "shape": {"type": "mesh", "file": "l.ply"}}]""").rows().get(0);
            assertThat(row.sides()).isFalse();
            assertThat(row.chordBands()).containsExactly(ChordBand.FORWARD, ChordBand.AFT);
        }

        @Test
        void sets_the_second_row_of_a_ring_half_a_pitch_on() {
            EngineModel model = model("""
                    "rows": [{"id": "i", "kind": "rotor", "count": 9, "ring": "imp"},
                             {"id": "r", "kind": "rotor", "count": 9},
                             {"id": "j", "kind": "rotor", "count": 9, "ring": "imp"}]""");
            assertThat(model.rows()).extracting(Row::ringOffset).containsExactly(0.0, 0.0, 0.5);
        }

        @Test
        void names_things_by_their_ids() {
            EngineModel model = model("""
                    "rows": [{"id": "r", "kind": "rotor", "count": 9}], "ports": [{"id": "p1"}]""");
            assertThat(model.rows().get(0).name()).isEqualTo("r");
            assertThat(model.ports().get(0).name()).isEqualTo("p1");
        }
    }

    @Nested
    class A_ratio {

        @ParameterizedTest
        @CsvSource({
            "'\"29/77\"', 29, 77",
            "'\"-29/77\"', -29, 77",
            "'\"58/154\"', 29, 77",
            "'\"-3\"', -3, 1",
            "3, 3, 1",
            "0.1, 1, 10",
            "-2.50, -5, 2",
            "1.5e1, 15, 1",
            "'\"0.125\"', 1, 8",
            "'\"9223372036854775807/9223372036854775806\"', 9223372036854775807, 9223372036854775806"
        })
        void is_read_exactly(String written, long numerator, long denominator) {
            EngineModel model = model("\"spools\": [{\"pads\": [{\"ratio\": " + written
                    + "}]}], \"rows\": [{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 9}]");
            assertThat(model.spools().get(0).pads().get(0).ratio()).isEqualTo(new Ratio(numerator, denominator));
        }
    }

    @Nested
    class A_mistake {

        @Test
        void is_told_with_file_line_column_and_what_to_do() {
            assertProblems("""
                            {
                              "schema": "everyblade/engine-model/1", "id": "m", "name": "M",
                              "rows": [
                                { "id": "c1", "kind": "rotor", "count": 19 },
                                { "id": "c2", "kind": "rotor", "bladeCount": 28 }
                              ],
                              "views": [{ "id": "p1-c1", "row": "c3" }]
                            }
                            """)
                    .extracting(Problem::toString)
                    .startsWith(
                            "m/engine.json:5:36: unknown-key: the row c2 has the key \"bladeCount\","
                                    + " there is no such key here, did you mean \"count\"?",
                            "m/engine.json:7:37: unknown-row: \"row\" of the view p1-c1 is \"c3\","
                                    + " no row has that id, did you mean \"c1\"?",
                            "m/engine.json:4:5: no-landmark: the row c1 has no landmark,"
                                    + " a lost count can hardly be found again,"
                                    + " name an airfoil that can be told from the others");
        }

        @Test
        void has_a_json_pointer() {
            assertProblems("{" + HEAD
                            + ", \"rows\": [{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 0, \"a/b~c\": 1}]}")
                    .extracting(Problem::pointer)
                    .contains("/rows/0/count", "/rows/0/a~1b~0c");
        }

        @Test
        void of_a_second_id_names_the_line_of_the_first() {
            assertProblems("{" + HEAD + ",\n\"rows\": [{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 9},\n"
                            + "{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 9}]}")
                    .anySatisfy(problem -> {
                        assertThat(problem.code()).isEqualTo("duplicate-id");
                        assertThat(problem.line()).isEqualTo(3);
                        assertThat(problem.why()).contains("line 2");
                    });
        }

        @Test
        void that_hides_an_id_is_not_repeated_where_the_id_is_used() {
            assertProblems("{" + HEAD + ", \"rows\": [], \"views\": [{\"id\": \"v\", \"row\": \"r\"}]}")
                    .filteredOn(problem -> problem.severity() == Severity.ERROR)
                    .extracting(Problem::code)
                    .containsExactly("empty-list");
        }

        @Test
        void is_told_on_one_line_whatever_was_written() {
            assertProblems("{" + HEAD + ", \"rows\": [], \"a\\u0000\\n\\u2028\\ud800" + "x".repeat(500) + "\": 1}")
                    .allSatisfy(problem -> assertThat(problem.toString())
                            .doesNotContainPattern("[\\p{Cc}\\u2028\\ud800]")
                            .hasSizeLessThan(300));
        }

        @Test
        void comes_before_the_warnings_and_the_hundredth_ends_the_list_with_a_count() {
            String row = "{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 0},";
            String rows = row.repeat(150);
            assertProblems("{" + HEAD + ", \"rows\": [" + rows.substring(0, rows.length() - 1) + "]}")
                    .hasSize(Problem.MOST + 1)
                    .last()
                    .satisfies(last -> {
                        assertThat(last.code()).isEqualTo("more-problems");
                        // 150 counts out of range, 149 doubled ids; as many rows without a landmark and without a view.
                        assertThat(last.what()).isEqualTo((150 + 149 + 300 - 100) + " more problems are not listed");
                    });
        }
    }

    @Nested
    class A_list_of_problems {

        private static Problem problem(Severity severity, int line) {
            return new Problem("code-" + line, severity, "f", line, 1, "", "what", "why", "mend");
        }

        @Test
        void has_errors_before_warnings_each_in_order_of_place() {
            assertThat(ProblemList.of(List.of(
                            problem(Severity.WARNING, 1), problem(Severity.ERROR, 9), problem(Severity.ERROR, 3))))
                    .extracting(Problem::line)
                    .containsExactly(3, 9, 1);
        }

        @Test
        void counts_what_is_not_listed_even_if_it_is_made_of_a_list_that_counts_already() {
            List<Problem> warnings = new ArrayList<>();
            for (int line = 1; line <= 130; line++) {
                warnings.add(problem(Severity.WARNING, line));
            }
            List<Problem> more = new ArrayList<>(ProblemList.of(warnings));
            assertThat(more).hasSize(101);
            more.add(problem(Severity.ERROR, 500));

            List<Problem> list = ProblemList.of(more);

            assertThat(list).hasSize(101);
            assertThat(list.get(0).line()).isEqualTo(500);
            assertThat(list.get(100).what()).isEqualTo("31 more problems are not listed");
        }
    }

    @Nested
    class Another_version {

        @Test
        void that_is_newer_is_refused_with_the_advice_to_use_a_newer_program_and_nothing_else() {
            assertProblems("{\"schema\": \"everyblade/engine-model/2\", \"engines\": []}")
                    .singleElement()
                    .satisfies(problem -> {
                        assertThat(problem.code()).isEqualTo("newer-version");
                        assertThat(problem.mend()).isEqualTo("use a newer Everyblade");
                    });
        }

        @Test
        void that_is_none_of_ours_is_refused_with_the_one_that_is() {
            assertProblems("{\"schema\": \"somebody/else/1\"}").singleElement().satisfies(problem -> {
                assertThat(problem.code()).isEqualTo("unknown-version");
                assertThat(problem.mend()).contains("everyblade/engine-model/1");
            });
        }
    }
}
