package everyblade.picture;

import everyblade.picture.scene.Theme;

/**
 * How the map is drawn.
 *
 * @param theme its colours
 * @param facing from where the engine is looked at
 */
public record MapStyle(Theme theme, Facing facing) {

    /** On white, seen from aft. */
    public static final MapStyle PLAIN = new MapStyle(Theme.LIGHT, Facing.AFT_LOOKING_FORWARD);
}
