package everyblade.core.finding;

import java.util.Optional;

/**
 * A measured length with its expanded uncertainty, which is twice the standard uncertainty (about 95 %).
 *
 * @param value what was measured
 * @param plusMinus expanded uncertainty, not negative; empty if nobody said it
 */
public record Measured(Length value, Optional<Length> plusMinus) {

    private static final double COVERAGE_FACTOR = 2;

    /** With this uncertainty if none was said. */
    Measured orElse(Optional<Length> assumed) {
        return new Measured(value, plusMinus.or(() -> assumed));
    }

    /** Standard uncertainty, mm; zero if none was said. */
    public double standardUncertainty() {
        return plusMinus.map(Length::millimetres).orElse(0.0) / COVERAGE_FACTOR;
    }
}
