package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.window.view.Framing.Room;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FramingTest {

    private static final Room ROOM = new Room(800, 500, 1600, 2000);

    @Test
    void showsTheWholePictureInTheMiddleFirst() {
        Framing whole = Framing.whole(ROOM);

        assertThat(whole.zoom()).isEqualTo(0.25);
        assertThat(whole.across(0)).isEqualTo(200);
        assertThat(whole.across(1600)).isEqualTo(600);
        assertThat(whole.down(0)).isZero();
        assertThat(whole.down(2000)).isEqualTo(500);
    }

    @Test
    void keepsThePlaceUnderTheMouseWhereItIsWhenItIsZoomed() {
        Framing near = Framing.whole(ROOM).zoomed(5, 430, 260);

        assertThat(near.zoom()).isEqualTo(1.25);
        assertThat(near.x(430)).isEqualTo(Framing.whole(ROOM).x(430), within(1e-9));
        assertThat(near.y(260)).isEqualTo(Framing.whole(ROOM).y(260), within(1e-9));
    }

    @Test
    void isNeverFartherOutThanTheWholeNorFartherInThanSixteenfold() {
        assertThat(Framing.whole(ROOM).zoomed(0.1)).isEqualTo(Framing.whole(ROOM));
        assertThat(Framing.whole(ROOM).zoomed(1000).zoom()).isEqualTo(16);
    }

    @Test
    void sendsEveryPlaceThereAndBackAndNeverLosesThePicture() {
        SplittableRandom random = new SplittableRandom(20260519);
        Framing framing = Framing.whole(ROOM);
        for (int i = 0; i < 2000; i++) {
            framing = random.nextBoolean()
                    ? framing.zoomed(Math.exp(random.nextDouble(-1, 1)), random.nextDouble(800), random.nextDouble(500))
                    : framing.moved(random.nextDouble(-900, 900), random.nextDouble(-900, 900));
            double x = random.nextDouble(1600);
            double y = random.nextDouble(2000);

            assertThat(framing.x(framing.across(x))).isEqualTo(x, within(1e-6));
            assertThat(framing.y(framing.down(y))).isEqualTo(y, within(1e-6));
            assertThat(framing.across(0)).isLessThan(800);
            assertThat(framing.across(1600)).isPositive();
            assertThat(framing.down(0)).isLessThan(500);
            assertThat(framing.down(2000)).isPositive();
        }
    }

    @Test
    void staysWholeWhenItsRoomGetsAnotherSize() {
        assertThat(Framing.whole(ROOM).in(300, 300)).isEqualTo(Framing.whole(new Room(300, 300, 1600, 2000)));
        Framing near = Framing.whole(ROOM).zoomed(8);
        assertThat(near.in(900, 500).zoom()).isEqualTo(near.zoom());
    }
}
