package everyblade.json;

import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Spool;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Judges what only shows when the parts of a model are seen together. What was read with a mistake holds stand-ins, so
 * that it is judged only where these cannot mislead.
 */
record ModelValidator(
        List<Located<Spool>> spools,
        List<Located<Wall>> walls,
        List<Located<Row>> rows,
        List<ScopeTip> scopeTips,
        List<Located<Port>> ports,
        List<Located<View>> views,
        ProblemLog log) {

    void judge() {
        new RingValidator(log).judge(soundRows());
        new WallValidator(this).judge();
        new RowValidator(this).judge();
        new SpoolValidator(this).judge();
        new ViewValidator(this).judge();
    }

    /** The rows that were read without a mistake. */
    List<Located<Row>> soundRows() {
        return rows.stream().filter(Located::sound).toList();
    }

    /** The wall of that id, if it was read without a mistake. */
    Optional<Located<Wall>> wall(String id) {
        return walls.stream()
                .filter(wall -> wall.sound() && wall.value().id().equals(id))
                .findFirst();
    }

    /** By id, of equal ids the first one. */
    static <T> Map<String, T> byId(List<T> list, Function<T, String> id) {
        Map<String, T> map = new HashMap<>();
        list.forEach(one -> map.putIfAbsent(id.apply(one), one));
        return map;
    }

    /** Half of the angle between two airfoils, degrees: an error of that much mistakes one for its neighbour. */
    static double halfPitch(Row row) {
        return 180.0 / row.count();
    }

    /** "the row c1", for messages. */
    static String named(Row row) {
        return "the row " + Wording.plain(row.id());
    }
}
