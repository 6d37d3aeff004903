package everyblade.core.sight;

import everyblade.core.surface.Meridian;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Row;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The rings of an engine's rows and how finely these are judged, each made once for the positions at which vanes stand. The
 * same for every thread.
 *
 * <p>A shape that gives no surface is an IllegalStateException; models are checked for that before.
 */
final class Rings {

    private final Map<String, Optional<SightScene>> rings = new ConcurrentHashMap<>();
    private final Map<String, Grain> grains = new ConcurrentHashMap<>();
    private final Map<String, Optional<Swept>> airfoils = new ConcurrentHashMap<>();

    /** The scene of a row's ring in an engine. */
    SightScene scene(ViewScene engine, Row row) {
        return rings.computeIfAbsent(key(engine, row), key -> {
                    try {
                        return engine.ring(row);
                    } catch (UnusableShape unusable) {
                        throw unusable(unusable);
                    }
                })
                .orElseThrow(() -> shapeless(row));
    }

    /** One airfoil of a row and what it sweeps; empty if it has no shape. */
    private Optional<Swept> airfoil(ViewScene engine, Row row) {
        return airfoils.computeIfAbsent(key(engine, row), key -> {
            try {
                return engine.airfoil(row).map(Swept::of);
            } catch (UnusableShape unusable) {
                throw unusable(unusable);
            }
        });
    }

    /** The rows of other rings that reach between a row and a scope tip, or as far from it as it may be, mm. */
    List<Neighbour> between(ViewScene engine, Row row, Pose pose, double reach) {
        try {
            Meridian own =
                    airfoil(engine, row).orElseThrow(() -> shapeless(row)).meridian();
            return Neighbour.between(engine, other -> airfoil(engine, other), own, row, pose, reach);
        } catch (UnusableShape unusable) {
            throw unusable(unusable);
        }
    }

    /** A row as a scope tip of this radius sees it, mm. */
    Setting setting(ViewScene engine, Row row, Pose pose, double reach, double radius) {
        return Setting.of(between(engine, row, pose, reach), scene(engine, row), row, radius);
    }

    /** How finely the airfoils of a row are judged. */
    Grain grain(ViewScene engine, Row row) {
        return grains.computeIfAbsent(key(engine, row), key -> {
            try {
                return engine.grain(row).orElseThrow(() -> shapeless(row));
            } catch (UnusableShape unusable) {
                throw unusable(unusable);
            }
        });
    }

    private static String key(ViewScene engine, Row row) {
        return row.id() + " " + new TreeMap<>(engine.vanes());
    }

    private static IllegalStateException shapeless(Row row) {
        return new IllegalStateException("row " + row.id() + " has no shape");
    }

    private static IllegalStateException unusable(UnusableShape unusable) {
        return new IllegalStateException(unusable.getMessage(), unusable);
    }
}
