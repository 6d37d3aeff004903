package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Cells are counted by what is known of them, and a reason counts only of what is not seen. */
class TallyTest {

    private static Tally of(State state, Why why) {
        return Tally.of(state, Optional.ofNullable(why), false, false, false);
    }

    @Test
    void eachStateIsCountedByItself() {
        assertThat(of(State.SEEN, null)).isEqualTo(new Tally(1, 0, 0, 0, 0, 0, 0, 0, 0, 0));
        assertThat(of(State.PART, null)).isEqualTo(new Tally(0, 1, 0, 0, 0, 0, 0, 0, 0, 0));
        assertThat(of(State.MAYBE, Why.PLAY)).isEqualTo(new Tally(0, 0, 1, 0, 0, 0, 0, 0, 0, 0));
        assertThat(of(State.UNSEEN, Why.SKIPPED)).isEqualTo(new Tally(0, 0, 0, 1, 0, 0, 0, 0, 0, 0));
    }

    @Test
    void whatViewsCannotShowAndWhatPassedTooFastIsToldApart() {
        assertThat(of(State.UNSEEN, Why.NO_ACCESS)).isEqualTo(new Tally(0, 0, 0, 1, 1, 0, 0, 0, 0, 0));
        assertThat(of(State.UNSEEN, Why.COARSE)).isEqualTo(new Tally(0, 0, 0, 1, 0, 1, 0, 0, 0, 0));
        assertThat(of(State.UNSEEN, Why.FAST)).isEqualTo(new Tally(0, 0, 0, 1, 0, 0, 1, 0, 0, 0));
    }

    @ParameterizedTest
    @EnumSource(
            value = State.class,
            names = {"SEEN", "PART", "MAYBE"})
    void aReasonOrAPictureCountsOnlyOfWhatIsNotSeen(State state) {
        for (Why why : new Why[] {Why.NO_ACCESS, Why.COARSE, Why.FAST}) {
            Tally tally = Tally.of(state, Optional.of(why), true, true, true);
            assertThat(tally.noAccess() + tally.coarse() + tally.fast() + tally.stated())
                    .isZero();
            assertThat(tally.damaged()).isEqualTo(1);
            assertThat(tally.glimpsed()).isEqualTo(1);
        }
        assertThat(Tally.of(State.UNSEEN, Optional.of(Why.SKIPPED), true, false, false)
                        .stated())
                .isEqualTo(1);
    }

    @Test
    void whatIsLeftIsWhatViewsCanShowAndNobodySaw() {
        Tally tally = new Tally(10, 4, 3, 8, 2, 1, 1, 1, 5, 2);
        assertThat(tally.cells()).isEqualTo(25);
        assertThat(tally.within()).isEqualTo(22);
        assertThat(tally.left()).isEqualTo(8);
        assertThat(tally.seenShare()).isEqualTo(0.4);
        assertThat(tally.share(5)).isEqualTo(0.2);
        assertThat(Tally.NONE.share(0)).isZero();
        assertThat(tally.plus(tally)).isEqualTo(new Tally(20, 8, 6, 16, 4, 2, 2, 2, 10, 4));
        assertThat(tally.plus(Tally.NONE)).isEqualTo(tally);
    }

    @Test
    void theShareThatIsLeftIsOfWhatViewsCanShow() {
        assertThat(new Headline(3, 12, 0, 0).leftShare()).isEqualTo(0.25);
        assertThat(new Headline(0, 0, 0, 1).leftShare()).isZero();
    }
}
