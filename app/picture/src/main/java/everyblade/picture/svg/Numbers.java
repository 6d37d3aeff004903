package everyblade.picture.svg;

/** Numbers as SVG has them: hundredths, no exponent, a point for the decimal mark, no needless zeros. */
final class Numbers {

    private Numbers() {}

    /** To the nearest hundredth. */
    static String of(double number) {
        long hundredths = Math.round(number * 100);
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        String digits = rest == 0
                ? Long.toString(whole)
                : whole + "." + rest / 10 + (rest % 10 == 0 ? "" : Long.toString(rest % 10));
        return hundredths < 0 ? "-" + digits : digits;
    }
}
