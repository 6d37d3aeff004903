package everyblade.picture;

import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Group;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * The airfoils of a row as drawn, a group each; those that look as before are the same groups as before.
 *
 * @param looks of the airfoils in the order of their numbers
 * @param groups in the same order
 */
record DrawnAirfoils(List<PictureLooks> looks, List<Group> groups) {

    /** None drawn yet. */
    static final DrawnAirfoils NONE = new DrawnAirfoils(List.of(), List.of());

    /**
     * The airfoils of a row.
     *
     * @param before a drawing in the same places, or none
     * @param drawing draws a row
     * @param stated cells that a picture is said to show
     * @param patch gives the place of an airfoil
     * @param fine mm below which a cell is too small for a pattern
     */
    static DrawnAirfoils of(
            DrawnAirfoils before, AirfoilDrawing drawing, Remarked stated, IntFunction<Patch> patch, double fine) {
        int count = drawing.coverage().row().count();
        List<PictureLooks> looks = new ArrayList<>(count);
        List<Group> groups = new ArrayList<>(count);
        for (int n = 1; n <= count; n++) {
            if (n <= before.looks.size() && before.looks.get(n - 1).holdFor(drawing.coverage(), stated, n)) {
                looks.add(before.looks.get(n - 1));
                groups.add(before.groups.get(n - 1));
            } else {
                PictureLooks now = PictureLooks.of(drawing.coverage(), stated, n);
                looks.add(now);
                groups.add(drawing.silent(n, now, patch.apply(n), fine));
            }
        }
        return new DrawnAirfoils(looks, groups);
    }
}
