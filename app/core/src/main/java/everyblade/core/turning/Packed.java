package everyblade.core.turning;

/**
 * How values of the computation stand in bytes: a tag, then what belongs to it. Records stand by the name of their type
 * and their components in order; words and stances, which come again and again, stand once, in a pool at the end; the
 * items of a trail lie behind a table of where each ends, so that one can be had without the others.
 */
final class Packed {

    static final byte TEXT = 1;
    static final byte INT = 2;
    static final byte LONG = 3;
    static final byte DOUBLE = 4;
    static final byte TRUE = 5;
    static final byte FALSE = 6;
    static final byte DECIMAL = 7;
    static final byte CONSTANT = 8;
    static final byte RECORD = 9;
    static final byte SOME = 10;
    static final byte NONE = 11;
    static final byte NUMBER = 12;
    static final byte NO_NUMBER = 13;
    static final byte LIST = 14;
    static final byte MAP = 15;
    static final byte BITS = 16;
    static final byte TURN = 17;
    static final byte DOUBLES = 18;
    static final byte ARRAY = 19;
    static final byte TRAIL = 20;
    static final byte ENGINE = 21;
    static final byte SET = 22;

    private Packed() {}
}
