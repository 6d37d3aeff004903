package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Settings;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.core.turning.WatchedCourse;
import everyblade.spi.Row;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Cells of a row that were kept with all that they rest on: the engine model, the settings, where it stood and what was known
 * of it while it was watched. While all of that is the same, so are they, whatever else was said.
 *
 * @param kept where
 */
record KnownCells(Situation situation, Settings settings, Sights sights, Row row, SightStore kept)
        implements RowCoverage.CellsFrom {

    /** To be raised whenever the same watching would give other cells. */
    private static final String VERSION = "cells 2";

    @Override
    public Cells cells(Grounds on, Supplier<ComputedCells> computing) {
        if (kept == SightStore.NONE) {
            return computing.get();
        }
        String key = key(on);
        int zones = situation.engine().zonings().get(row.id()).size();
        Once<ComputedCells> computed = new Once<>(computing);
        Optional<ToldCells> told =
                kept.find(key).flatMap(content -> ToldCells.read(content, row.count(), zones, computed));
        if (told.isPresent()) {
            return told.get();
        }
        kept.keep(key, ToldCells.written(computed.get(), row.count(), zones));
        return computed.get();
    }

    private String key(Grounds on) {
        return String.join(
                "\n",
                VERSION,
                sights.mark(),
                row.id(),
                settings.values().toString(),
                new TreeMap<>(on.vanes()).toString(),
                on.proof().toString(),
                on.first().map(KnownCells::exactly).orElse(""),
                places(),
                // each byte as the character of its number
                new String(WatchedCourse.of(situation, row), StandardCharsets.ISO_8859_1));
    }

    private String places() {
        return sights.placesFor(row).entrySet().stream()
                .map(known -> known.getKey() + " " + exactly(known.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String exactly(Place place) {
        return exactly(place.low()) + " " + exactly(place.high()) + " " + exactly(place.best());
    }

    private static String exactly(Turn angle) {
        return angle.floorTicks() + " " + angle.numerator() + "/" + angle.denominator();
    }
}
