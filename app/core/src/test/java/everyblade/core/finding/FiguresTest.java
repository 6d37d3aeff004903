package everyblade.core.finding;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Figure.Allowed;
import everyblade.core.finding.Figure.Counted;
import everyblade.core.finding.Figure.Margin;
import everyblade.core.finding.Figure.Value;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How what was found, what is allowed and how far apart the two are is told, figure by figure. */
class FiguresTest {

    private static final Counted IN_ROW = Counted.Whole.IN_ROW;

    private static Figures figures(Guard guard) {
        return new Figures(new Limits(
                "limits of a test",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LengthUnit.MM,
                guard,
                Optional.empty(),
                List.of(),
                List.of()));
    }

    private static Length mm(String mm) {
        return new Length(new BigDecimal(mm));
    }

    private static ShownLength shown(String mm) {
        return mm(mm).shown(LengthUnit.MM, 3);
    }

    private static Figure length(Guard guard, Bounds bounds, Measured measured) {
        return figures(guard).size(Dimension.LENGTH, bounds, Map.of(Dimension.LENGTH, measured));
    }

    private static Measured size(String value, String plusMinus) {
        return new Measured(mm(value), Optional.ofNullable(plusMinus).map(FiguresTest::mm));
    }

    @ParameterizedTest
    @CsvSource({"2, 2, WITHIN", "3, 3, WITHIN", "4, 4, BEYOND", "2, 4, CLOSE", "3, 4, CLOSE", "4, 5, BEYOND"})
    void aNumberIsHeldAgainstTheMostBothAsItSurelyIsAndAsItMayBe(int sure, int maybe, Verdict verdict) {
        Figure figure = Figures.count(IN_ROW, sure, maybe, 3);
        assertThat(figure.verdict()).isEqualTo(verdict);
        assertThat(figure.value()).isEqualTo(sure == maybe ? new Value.Number(sure) : new Value.Numbers(sure, maybe));
        assertThat(figure.limit()).isEqualTo(new Allowed.Most(3));
    }

    @ParameterizedTest
    @CsvSource({"5, 9, WITHIN", "4.9, 9, CLOSE", "1, 5, CLOSE", "1, 4.9, BEYOND"})
    void aDistanceMustReachTheLeast(String least, String most, Verdict verdict) {
        Figure figure = figures(Guard.CONFORMANCE).apart(new Distances.Span(mm(least), mm(most)), mm("5"));
        assertThat(figure.verdict()).isEqualTo(verdict);
        assertThat(figure.value()).isEqualTo(new Value.Distance(shown(least), shown(most)));
        assertThat(figure.limit()).isEqualTo(new Allowed.From(shown("5")));
        assertThat(figure.margin())
                .isEqualTo(
                        verdict == Verdict.CLOSE
                                ? Optional.of(Margin.ToDo.MEASURE_AS_ZONES_DO_NOT_TELL)
                                : Optional.empty());
    }

    @Test
    void aSizeOfUnknownUncertaintyIsToldBareAndItsUncertaintyAskedFor() {
        Figure figure = length(Guard.CONFORMANCE, Bounds.upTo(mm("1")), size("0.5", null));
        assertThat(figure.value()).isEqualTo(new Value.Bare(shown("0.5")));
        assertThat(figure.margin()).contains(Margin.ToDo.SAY_UNCERTAINTY);
        assertThat(figure.verdict()).isEqualTo(Verdict.NOT_MEASURED);
    }

    @Test
    void boundsAreToldByTheEndsThatTheyHave() {
        Measured size = size("2", "0.1");
        assertThat(length(Guard.EXPANDED, Bounds.upTo(mm("3")), size).limit()).isEqualTo(new Allowed.UpTo(shown("3")));
        assertThat(length(Guard.EXPANDED, new Bounds(Optional.of(mm("1")), Optional.empty()), size)
                        .limit())
                .isEqualTo(new Allowed.From(shown("1")));
        assertThat(length(Guard.EXPANDED, new Bounds(Optional.of(mm("1")), Optional.of(mm("3"))), size)
                        .limit())
                .isEqualTo(new Allowed.Between(shown("1"), shown("3")));
    }

    /** 1.645 standard uncertainties of 0.05 mm are 0.082 mm. */
    @ParameterizedTest
    @CsvSource({
        "EXPANDED, 0.7, 0.3, true, 0.1",
        "EXPANDED, 1, 0, true, 0.1",
        "EXPANDED, 1.25, 0.25, false, 0.1",
        "CONFORMANCE, 0.7, 0.3, true, 0.082"
    })
    void theMarginIsToldWithItsSideAndHowNearItMayCome(
            Guard guard, String value, String distance, boolean inside, String needed) {
        assertThat(length(guard, Bounds.upTo(mm("1")), size(value, "0.1")).margin())
                .contains(new Margin.Kept(shown(distance), inside, shown(needed)));
    }
}
