package everyblade.core.surface;

import everyblade.fact.Fact;

/** Which curve of a model in the plane through the axis. */
sealed interface CurveName extends Fact {

    /** By the wall's id. */
    record OfWall(String wall) implements CurveName {}

    /** Those of shapes. */
    enum OfShape implements CurveName {
        OUTER_LINER,
        INNER_LINER,
        BLADE_HUB,
        BLADE_SHROUD
    }
}
