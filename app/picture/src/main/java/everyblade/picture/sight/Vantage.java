package everyblade.picture.sight;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.sight.Progress;
import everyblade.core.sight.Setting;
import everyblade.core.sight.SightScene;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.StationSight;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Stance;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import everyblade.words.Words;
import java.util.List;
import java.util.Optional;

/**
 * A scope tip standing exactly at a station of a view, with everything that its sight of the row is computed with.
 *
 * @param engine that it is in
 * @param row that it looks at, which has a shape
 * @param view of the row
 * @param station of the view
 * @param pose nominal, of the station
 * @param setting the row and what may hide it from there
 * @param criteria what counts as properly in sight
 */
public record Vantage(
        ViewScene engine, Row row, View view, Station station, Pose pose, Setting setting, Criteria criteria) {

    /**
     * The vantage of a station.
     *
     * @throws IllegalArgumentException if the view names no scope tip, or its row has no shape
     * @throws UnusableShape if a shape gives no surface
     */
    public static Vantage of(ViewScene engine, View view, Station station, Criteria criteria) throws UnusableShape {
        ScopeTip tip = view.scopeTip()
                .flatMap(engine.model()::scopeTip)
                .orElseThrow(() -> new IllegalArgumentException("view " + view.id() + " names no scope tip"));
        Row row = engine.model().row(view.row()).orElseThrow();
        Pose pose = Pose.of(station, tip);
        SightScene ring = engine.ring(row)
                .orElseThrow(() -> new IllegalArgumentException("row " + row.id() + " has no shape to be drawn"));
        Setting setting = Setting.of(engine, ring, row, pose, station.within().mm(), tip.diameter() / 2);
        return new Vantage(engine, row, view, station, pose, setting, criteria);
    }

    /** The row and what stands alike round every airfoil of it. */
    SightScene scene() {
        return setting.scene();
    }

    /** Where an airfoil stands, counted from 0 by its number, when the first stands at a clock angle. */
    Turn clock(int index, Turn first) {
        Turn further = Turn.ofFraction(index, row.count());
        return row.numbering() == Direction.CW ? first.plus(further) : first.minus(further);
    }

    /** What the station shows, for the nominal pose and for its whole tolerance. */
    StationSight sight() {
        Stance stance =
                new Stance(view.id(), List.of(station.id()), false, view.scopeTip(), engine.vanes(), Optional.empty());
        return new Sights(engine, engine.model().id(), criteria, SightStore.NONE, Progress.NONE)
                .of(stance, station.id())
                .orElseThrow(() -> new IllegalStateException("a vantage has a scope tip"));
    }

    /** Which view of which row, in a few words. */
    String told(Words words) {
        return words.say("vantage.words", row.name(), row.id(), view.id(), station.id());
    }

    /** What counts as properly in sight, in words that go on a sentence. */
    String criteriaTold(Words words) {
        return words.say(
                "vantage.criteria",
                SightWords.number(pose.near()),
                SightWords.number(pose.far()),
                SightWords.degrees(criteria.grazing()),
                !criteria.banded().isEmpty(),
                criteria.detail().isPresent()
                        ? SightWords.number(criteria.detail().getAsDouble())
                        : null);
    }
}
