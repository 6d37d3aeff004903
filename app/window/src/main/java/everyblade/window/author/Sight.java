package everyblade.window.author;

import everyblade.picture.scene.Scene;
import java.util.Optional;

/** How far it is known what the chosen station shows. */
public sealed interface Sight {

    /** There is nothing to compute, since nothing could be read yet or the model has no view. */
    record None() implements Sight {}

    /** It is being computed. */
    record Computing() implements Sight {}

    /** A person stopped the computation. */
    record Stopped() implements Sight {}

    /**
     * It cannot be computed.
     *
     * @param key of the text that says why
     */
    record Impossible(String key) implements Sight {}

    /**
     * It is known.
     *
     * @param unrolled one airfoil of the row, once it is drawn
     */
    record Known(SightShares shares, Optional<Scene> unrolled) implements Sight {}
}
