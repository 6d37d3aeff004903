package everyblade.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Progress;
import everyblade.json.ProblemCode;
import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import everyblade.spi.Row;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class RuleBookTest {

    private static ModelRule rule(String number) {
        return RuleBook.rules().stream()
                .filter(rule -> rule.number().equals(number))
                .findFirst()
                .orElseThrow();
    }

    private static RuleVerdict verdict(Evidence evidence, String number) {
        return RuleBook.judge(evidence, Progress.NONE).stream()
                .filter(judged -> judged.rule().equals(rule(number)))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private static List<String> broken(Evidence evidence) {
        return RuleBook.judge(evidence, Progress.NONE).stream()
                .filter(judged -> judged.verdict() instanceof RuleVerdict.Broken)
                .map(judged -> judged.rule().number())
                .toList();
    }

    /** A source that hands over what this makes of the number of the asking. */
    private static Evidence handedOver(IntFunction<List<EngineModel>> models) throws IOException {
        AtomicInteger asked = new AtomicInteger();
        return Evidence.of(new EngineModelSource() {
                    @Override
                    public String id() {
                        return "wrong";
                    }

                    @Override
                    public List<EngineModel> models() {
                        return models.apply(asked.incrementAndGet());
                    }
                })
                .get(0);
    }

    /** What views see breaks no required rule. */
    private static Evidence withoutSight(Evidence of) {
        return new Evidence(of.told(), of.model(), of.handed(), of.files(), false);
    }

    @Nested
    class The_rules {

        @Test
        void are_numbered_in_order_and_say_one_thing_each() {
            List<ModelRule> rules = RuleBook.rules();
            assertThat(rules)
                    .extracting(ModelRule::number)
                    .doesNotHaveDuplicates()
                    .isSorted();
            assertThat(rules).allSatisfy(rule -> {
                assertThat(rule.number()).matches("[1-5]\\.[1-9]");
                assertThat(rule.sentence()).matches("[A-Z].*\\.");
            });
            assertThat(rules).extracting(ModelRule::force).contains(Force.values());
        }

        @Test
        void speak_of_each_code_once_and_of_all_that_only_surfaces_show() {
            List<String> codes = RuleBook.rules().stream()
                    .flatMap(rule -> RuleBook.codes(rule).stream())
                    .toList();
            assertThat(codes)
                    .doesNotHaveDuplicates()
                    .allSatisfy(
                            code -> assertThat(ProblemCode.of(code)).as(code).isPresent());
            assertThat(codes)
                    .containsAll(ProblemCode.all().stream()
                            .filter(code -> code.found().equals("checked"))
                            .map(ProblemCode::code)
                            .toList());
        }

        @Test
        void that_are_required_are_broken_by_every_error_and_by_no_warning() {
            Map<Force, Set<String>> severities = RuleBook.rules().stream()
                    .filter(rule -> !RuleBook.codes(rule).isEmpty())
                    .collect(Collectors.groupingBy(
                            ModelRule::force,
                            Collectors.flatMapping(
                                    rule -> RuleBook.codes(rule).stream()
                                            .map(code -> ProblemCode.of(code)
                                                    .orElseThrow()
                                                    .severity()),
                                    Collectors.toSet())));
            assertThat(severities)
                    .isEqualTo(Map.of(Force.REQUIRED, Set.of("error"), Force.OPTIONAL, Set.of("warning")));
        }
    }

    @TestFactory
    Stream<DynamicTest> the_bad_example_of_a_code_breaks_its_rule_and_the_good_one_keeps_it() {
        return RuleBook.rules().stream()
                .flatMap(rule -> RuleBook.codes(rule).stream()
                        .sorted()
                        .map(code -> DynamicTest.dynamicTest(rule.number() + " " + code, () -> {
                            assertThat(broken(Examples.bad(code))).contains(rule.number());
                            assertThat(verdict(Examples.good(code), rule.number()))
                                    .isEqualTo(new RuleVerdict.Kept());
                        })));
    }

    @Nested
    class A_sound_model {

        @Test
        void keeps_every_rule_and_leaves_the_rest_to_a_person() throws IOException {
            List<JudgedRule> judged = RuleBook.judge(handedOver(i -> List.of(Examples.ring())), Progress.NONE);

            assertThat(judged)
                    .allSatisfy(one -> assertThat(one.verdict())
                            .as(one.rule().number())
                            .isInstanceOf(
                                    one.rule().force() == Force.UNTESTED
                                            ? RuleVerdict.ByHand.class
                                            : RuleVerdict.Kept.class));
        }

        @TestFactory
        Stream<DynamicTest> that_is_shipped_keeps_all_that_is_required() {
            return Examples.shipped().stream()
                    .map(folder -> DynamicTest.dynamicTest(
                            folder.getFileName().toString(),
                            () -> assertThat(RuleBook.judge(withoutSight(Examples.of(folder)), Progress.NONE))
                                    .filteredOn(judged -> judged.rule().force() == Force.REQUIRED)
                                    .allSatisfy(judged ->
                                            assertThat(judged.verdict()).isEqualTo(new RuleVerdict.Kept()))));
        }
    }

    @Nested
    class What_was_not_computed {

        @Test
        void of_sight_is_not_asked_and_never_called_kept() throws IOException {
            Evidence blind = withoutSight(handedOver(i -> List.of(Examples.ring())));

            assertThat(List.of("3.3", "3.4", "3.5"))
                    .allSatisfy(number -> assertThat(verdict(blind, number))
                            .isEqualTo(new RuleVerdict.NotAsked("sight was not computed")));
        }

        @Test
        void of_surfaces_is_not_asked_where_a_shape_gives_none() {
            Evidence bare = Examples.bad("no-surface");

            assertThat(broken(bare)).as("what is wrong all the same").contains("2.1", "3.1");
            assertThat(List.of("2.2", "2.3", "3.5"))
                    .allSatisfy(number -> assertThat(verdict(bare, number))
                            .isEqualTo(new RuleVerdict.NotAsked("a shape gives no surface")));
        }
    }

    @Nested
    class A_wrong_model {

        @Test
        void that_is_refused_breaks_the_first_rule_and_is_asked_no_other() throws IOException {
            Evidence refused = handedOver(i -> List.of(withRow(0, Optional.of("shaft"))));

            assertThat(broken(refused)).containsExactly("1.1");
            assertThat(verdict(refused, "1.1").lines()).first().asString().contains("out-of-range");
            assertThat(RuleBook.judge(refused, Progress.NONE))
                    .filteredOn(judged -> judged.rule().force() != Force.UNTESTED)
                    .filteredOn(judged -> !judged.rule().number().equals("1.1"))
                    .allSatisfy(judged -> assertThat(judged.verdict()).isInstanceOf(RuleVerdict.NotAsked.class));
        }

        @Test
        void with_a_null_in_it_breaks_the_first_rule_too_and_says_so() throws IOException {
            Evidence gap = handedOver(i -> List.of(withNotice(null)));

            assertThat(broken(gap)).containsExactly("1.1");
            assertThat(verdict(gap, "1.1").lines()).singleElement().asString().contains("something in it is null");
        }

        @Test
        void that_a_file_would_say_otherwise_breaks_1_2() throws IOException {
            EngineModel still = withRow(12, Optional.empty());

            assertThat(broken(handedOver(i -> List.of(still)))).containsExactly("1.2");
        }

        @Test
        void that_changes_or_is_gone_the_second_time_breaks_1_3() throws IOException {
            assertThat(broken(handedOver(i -> List.of(withNotice(Optional.of("Asked " + i))))))
                    .containsExactly("1.3");
            assertThat(broken(handedOver(i -> i == 1 ? List.of(Examples.ring()) : List.of())))
                    .containsExactly("1.3");
        }

        @Test
        void without_a_notice_breaks_1_4() throws IOException {
            assertThat(broken(handedOver(i -> List.of(withNotice(Optional.empty())))))
                    .containsExactly("1.4");
        }

        @Test
        void of_which_any_other_warning_is_given_breaks_1_5() throws IOException {
            EngineModel wide = Examples.ring("\"halfWidth\": 50", "\"halfWidth\": 5");

            assertThat(broken(handedOver(i -> List.of(wide)))).containsExactly("1.5");
        }

        @Test
        void of_which_no_view_shows_a_zone_breaks_3_5_and_names_it() throws IOException {
            Evidence half = handedOver(i -> List.of(Examples.ring("[\"root\"]", "[\"root\", \"tip\"]")));

            assertThat(broken(half)).containsExactly("3.5");
            assertThat(verdict(half, "3.5").lines()).containsExactly("row r: no view shows tip");
        }

        @Test
        void whose_scope_tip_bears_no_cool_engine_breaks_4_1_and_says_what_was_refused() throws IOException {
            Evidence cold = handedOver(i -> List.of(Examples.ring("\"hottest\": 10", "\"hottest\": 75")));

            assertThat(broken(cold)).containsExactly("4.1");
            assertThat(verdict(cold, "4.1").lines())
                    .singleElement()
                    .asString()
                    .startsWith("view v: heat 20 C; view v; ");
        }

        private EngineModel withNotice(Optional<String> notice) {
            EngineModel ring = Examples.ring();
            return new EngineModel(
                    ring.id(),
                    ring.name(),
                    notice,
                    ring.spools(),
                    ring.walls(),
                    ring.rows(),
                    ring.scopeTips(),
                    ring.ports(),
                    ring.views());
        }

        private EngineModel withRow(int count, Optional<String> spool) {
            EngineModel ring = Examples.ring();
            Row row = ring.rows().get(0);
            Row wrong = new Row(
                    row.id(),
                    row.name(),
                    row.kind(),
                    spool,
                    count,
                    row.numbering(),
                    row.rock(),
                    row.spanBands(),
                    row.chordBands(),
                    row.sides(),
                    row.landmarks(),
                    row.ring(),
                    row.ringOffset(),
                    row.phase(),
                    row.shape(),
                    row.positions(),
                    row.source());
            return new EngineModel(
                    ring.id(),
                    ring.name(),
                    ring.notice(),
                    ring.spools(),
                    ring.walls(),
                    List.of(wrong),
                    ring.scopeTips(),
                    ring.ports(),
                    ring.views());
        }
    }
}
