package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class KeyHoldTest {

    private final KeyHold hold = new KeyHold();

    @Test
    void aKeyThatIsHeldDownIsStruckOnce() {
        assertThat(hold.struck("enter", 0)).isTrue();
        assertThat(hold.struck("enter", 500)).isFalse();
        assertThat(hold.struck("enter", 530)).isFalse();
    }

    @Test
    void aSystemThatRepeatsWithReleasesIsNotFooledEither() {
        assertThat(hold.struck("enter", 0)).isTrue();
        hold.released("enter", 500);
        assertThat(hold.struck("enter", 500)).isFalse();
        hold.released("enter", 530);
        assertThat(hold.struck("enter", 531)).isFalse();
    }

    @Test
    void twoStrokesOfAFingerAreTwo() {
        assertThat(hold.struck("enter", 0)).isTrue();
        hold.released("enter", 60);
        assertThat(hold.struck("enter", 140)).isTrue();
    }

    @Test
    void otherKeysDoNotMatter() {
        assertThat(hold.struck("enter", 0)).isTrue();
        assertThat(hold.struck("plus", 10)).isTrue();
    }

    @Test
    void nothingIsKnownAfterAnotherWindowWasInFront() {
        hold.struck("enter", 0);
        hold.forget();

        assertThat(hold.struck("enter", 3000)).isTrue();
    }
}
