package everyblade.window.author;

import everyblade.core.sight.Criteria;
import everyblade.core.surface.UnusableShape;
import everyblade.picture.scene.Scene;
import everyblade.picture.sight.UnrolledScene;
import everyblade.picture.sight.Vantage;
import everyblade.words.Words;
import java.util.Optional;

/** Draws one airfoil unrolled as a station shows it, by the usual criteria. */
public final class UnrolledAirfoil {

    private UnrolledAirfoil() {}

    /** The picture; empty if the row's shape gives no surface. */
    public static Optional<Scene> of(ReadModel read, Standpoint from, Words words) {
        try {
            return Optional.of(UnrolledScene.of(
                    Vantage.of(read.scene(), from.view(read.model()), from.station(read.model()), Criteria.USUAL),
                    words));
        } catch (UnusableShape toldByTheCheck) {
            return Optional.empty();
        }
    }
}
