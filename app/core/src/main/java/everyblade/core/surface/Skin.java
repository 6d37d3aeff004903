package everyblade.core.surface;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Airfoil.Slice;

/**
 * The facets of an airfoil: four corners each, on the airfoil's surface, joined along common corners, open only at root
 * and tip. Facets follow the zones and grow smaller towards both edges.
 *
 * <p>They come from root to tip; of each ring of them first the pressure side, then the suction side; from leading to
 * trailing edge.
 */
final class Skin {

    private final Airfoil airfoil;
    private final Zoning zoning;
    private final double[] chords;
    private final double[] spans;
    private final MeshBuilder mesh = new MeshBuilder();

    private Skin(Airfoil airfoil, Zoning zoning, Fineness fineness, int split) {
        this.airfoil = airfoil;
        this.zoning = zoning;
        this.chords = Divisions.chord(fineness.chord(), split);
        this.spans = Divisions.span(Math.max(1, zoning.spans().size()), fineness.span(), split);
    }

    /** @param split into how many parts each facet is divided both ways */
    static Grid of(Airfoil airfoil, Zoning zoning, Fineness fineness, int split) throws UnusableShape {
        Skin skin = new Skin(airfoil, zoning, fineness, split);
        int side = skin.chords.length - 1;
        return new Grid(skin.built(), 2 * side, column -> column % side < split || column % side >= side - split);
    }

    private Mesh built() throws UnusableShape {
        for (double span : spans) {
            Slice slice = airfoil.slice(span);
            for (double chord : chords) {
                mesh.point(slice.at(1, chord));
            }
            for (int i = 1; i < chords.length - 1; i++) {
                mesh.point(slice.at(-1, chords[i]));
            }
        }
        for (int j = 0; j + 1 < spans.length; j++) {
            double middle = (spans[j] + spans[j + 1]) / 2;
            int suction = airfoil.slice(middle).suction();
            int band = Divisions.band(middle, Math.max(1, zoning.spans().size()));
            side(j, band, -suction, 0);
            side(j, band, suction, 1);
        }
        return mesh.built();
    }

    private void side(int j, int spanBand, int side, int sideOrder) {
        int sideCount = Math.max(1, zoning.sides().size());
        int chordCount = Math.max(1, zoning.chords().size());
        int first = (spanBand * sideCount + Math.min(sideOrder, sideCount - 1)) * chordCount;
        for (int i = 0; i + 1 < chords.length; i++) {
            int chordBand = chordCount == 1 ? 0 : Divisions.chordBand((chords[i] + chords[i + 1]) / 2);
            int[] around = {node(side, i, j), node(side, i, j + 1), node(side, i + 1, j + 1), node(side, i + 1, j)};
            mesh.face(first + chordBand, side > 0 == airfoil.rightHanded() ? around : MeshBuilder.reversed(around));
        }
    }

    private int node(int side, int i, int j) {
        int last = chords.length - 1;
        int ring = 2 * last;
        boolean shared = i == 0 || i == last;
        return j * ring + (side > 0 || shared ? i : last + i);
    }
}
