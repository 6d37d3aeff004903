package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Kind;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitsSayTest {

    private static final CellAt TIP_OF_5 = new CellAt("r", 5, 1);

    @TempDir
    Path folder;

    private Session session;

    @BeforeEach
    void open() {
        session = Workshop.limited(folder).counting("round 1");
    }

    @AfterEach
    void close() {
        session.close();
    }

    private LimitsSay said(Kind kind, String length, String plusMinus, LengthUnit unit) {
        FindingForm form = new FindingForm(
                session.state(), TIP_OF_5, kind, new FindingForm.Sizes(length, "", "", plusMinus, unit), "");
        return LimitsSay.of(form, Workshop.NOW, Workshop.ENGLISH);
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 0.2, MM, within the limits",
        "1.5, 0.2, MM, beyond the limits",
        "1.1, 0.2, MM, too close to call",
        "0.05, 0.004, IN, beyond the limits",
        "0.5, '', MM, not measured",
        "'', '', MM, not measured"
    })
    void isTheVerdictOfTheLimitsOnWhatIsTyped(String length, String plusMinus, LengthUnit unit, String verdict) {
        assertThat(said(Kind.NICK, length, plusMinus, unit).headline()).isEqualTo(verdict);
    }

    @Test
    void tellsTheRuleItsOutcomeTheFigureAndTheMargin() {
        assertThat(said(Kind.NICK, "1.5", "0.2", LengthUnit.MM).figures())
                .containsExactly(
                        "rule nicks: beyond the limits: replace the blade",
                        "  length: 1.5 ± 0.2 mm; at most 1 mm; 0.5 mm outside, guard 0.164 mm: beyond the limits");
    }

    @Test
    void saysWhenNoRuleIsAboutSuchAFinding() {
        assertThat(said(Kind.DENT, "1", "0.1", LengthUnit.MM).headline()).isEqualTo("no limit entered for this");
    }

    @Test
    void countsTheFindingsThatAreKeptAlreadyAndKeepsNothingItself() {
        int before = session.state().fold().entries().size();

        said(Kind.NICK, "0.5", "0.2", LengthUnit.MM);

        assertThat(session.state().fold().entries()).hasSize(before);
    }

    @Test
    void tellsWhyWhatIsTypedIsNoFindingYet() {
        LimitsSay said = said(Kind.NICK, "much", "", LengthUnit.MM);

        assertThat(said.refused()).isTrue();
        assertThat(said.headline()).startsWith("Not yet a finding: ");
    }

    @Test
    void isShownWithEachFindingInTheList() {
        session.say("nick 5 tip 1.5 ± 0.2 mm");
        session.say("nick 6 tip 1.1 ± 0.2 mm");
        session.say("recheck 7");

        assertThat(Notes.of(session.state(), Workshop.ENGLISH))
                .extracting(Notes::verdict)
                .containsExactly(
                        Optional.of("beyond the limits (nicks): replace the blade"),
                        Optional.of("too close to call (nicks): either \"may stay\" or \"replace the blade\""),
                        Optional.empty());
    }
}
