package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.spi.View;
import everyblade.spi.Window;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DeclaredWindowTest {

    private static final Zoning ZONING = new Zoning(List.of("root", "tip"), List.of(), List.of());

    private static View view(double reference, Optional<Window> window) {
        return new View("v", Optional.empty(), "r", Optional.empty(), reference, 0, window, List.of(), true);
    }

    private static DeclaredWindow window(double reference, double halfWidth, String... shows) {
        return DeclaredWindow.of(view(reference, Optional.of(new Window(halfWidth, List.of(shows)))), ZONING)
                .orElseThrow();
    }

    @Test
    void isNoneWhereAViewDeclaresNone() {
        assertThat(DeclaredWindow.of(view(0, Optional.empty()), ZONING)).isEmpty();
    }

    @Test
    void reachesAsFarOnBothSidesOfTheReferenceTheLastTickIncluded() {
        DeclaredWindow window = window(350, 20, "tip");

        assertThat(window.from()).isEqualTo(Turn.ofDegrees(330));
        assertThat(window.to()).isEqualTo(Turn.ofDegrees(370).plus(Turn.ofTicks(1)));
        assertThat(window.zones()).isEqualTo(ZONING.span(1));
    }

    @Test
    void isNeverMoreThanATurn() {
        assertThat(window(90, 180, "all").to()).isEqualTo(Turn.ofDegrees(270));
        assertThat(window(90, 180, "all").from()).isEqualTo(Turn.ofDegrees(-90));
        assertThat(window(0, 179, "all").to()).isEqualTo(Turn.ofDegrees(179).plus(Turn.ofTicks(1)));
    }

    @Test
    void isAFaultIfItShowsAPartThatTheRowDoesNotHave() {
        assertThatThrownBy(() -> window(0, 5, "hub"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("view v");
    }
}
