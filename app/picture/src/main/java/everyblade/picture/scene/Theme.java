package everyblade.picture.scene;

import java.util.EnumMap;
import java.util.Map;

/**
 * Which colour each ink has.
 *
 * <p>Started from the hues that Okabe and Ito propose for colour-blind eyes, then moved apart by a search until the
 * marks differ by at least 28 (CIE 1976 ΔE) for usual eyes and for each kind of dichromat, and each by 3 : 1 in
 * contrast from the paper and from its own wash.
 */
public enum Theme {
    /** Dark ink on white, for paper and bright rooms. */
    LIGHT(colours(
            0xffffff, 0x17202a, 0x5a6672, 0xb00020, 0x0f3ec1, 0x009d61, 0xe0f5ec, 0x000c00, 0xa07c00, 0xfdf3d0,
            0x554056, 0xe9e5ea, 0x7f2002, 0xfae0d4, 0xd944ae, 0xfce6f5, 0xdce9fa, 0xa9c9f2, 0x6fa3e6, 0x2f66c8,
            0x0c2f86)),
    /** Light ink on a dark ground, for the hangar at night. */
    DARK(colours(
            0x10161d, 0xe9eef3, 0x9aa7b4, 0xff8a80, 0x217ffd, 0x58ff90, 0x12382a, 0xc0f0d8, 0xffcd0a, 0x3a3008,
            0x8f977a, 0x262b26, 0xea4d21, 0x3d1a10, 0xc061ad, 0x351a30, 0x17324f, 0x1f4c82, 0x2a68b4, 0x69a8f5,
            0xc4dfff));

    private final Map<Ink, Colour> colours;

    Theme(Map<Ink, Colour> colours) {
        this.colours = colours;
    }

    private static Map<Ink, Colour> colours(int... inOrder) {
        Map<Ink, Colour> result = new EnumMap<>(Ink.class);
        for (Ink ink : Ink.values()) {
            result.put(ink, Colour.of(inOrder[ink.ordinal()]));
        }
        return result;
    }

    /** The colour of an ink. */
    public Colour colour(Ink ink) {
        return colours.get(ink);
    }
}
