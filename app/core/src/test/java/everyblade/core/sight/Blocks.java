package everyblade.core.sight;

import everyblade.core.surface.Mesh;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowBuilder;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Shape;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Engines whose airfoils are boxes, each of six facets that have 32 patches, looked at by a scope tip of 120° and 4 mm
 * diameter that sees as far as 100 mm.
 */
final class Blocks {

    /** The foremost facet of a box. */
    static final int FRONT = 0;

    private static final int[] CORNERS = {0, 4, 6, 2, 1, 3, 7, 5, 0, 1, 5, 4, 2, 6, 7, 3, 0, 2, 3, 1, 4, 5, 7, 6};

    private final List<Row> rows = new ArrayList<>();
    private final List<View> views = new ArrayList<>();
    private final Map<String, byte[]> files = new HashMap<>();
    private final Map<String, Place> places = new HashMap<>();

    /**
     * A box.
     *
     * @param side how far it goes to both sides of the plane at clock 0
     * @param low its least z
     * @param high its greatest z
     */
    static Mesh box(double front, double rear, double side, double low, double high) {
        double[] points = new double[24];
        for (int i = 0; i < 8; i++) {
            points[3 * i] = (i & 1) == 0 ? front : rear;
            points[3 * i + 1] = (i & 2) == 0 ? -side : side;
            points[3 * i + 2] = (i & 4) == 0 ? low : high;
        }
        return new Mesh(points, CORNERS, new int[] {0, 4, 8, 12, 16, 20, 24}, new int[6]);
    }

    /** A sheet of 4 by 4 facets that faces forward and is a little bulged, so that every point of it bends and none sharply. */
    static Mesh sheet() {
        double[] points = new double[75];
        int[] corners = new int[64];
        int[] start = new int[17];
        for (int i = 0; i < 25; i++) {
            double across = i / 5 - 2;
            double up = i % 5 - 2;
            points[3 * i] = 0.5 * (across * across + up * up);
            points[3 * i + 1] = 2 * across;
            points[3 * i + 2] = 25 + 3 * up;
        }
        for (int face = 0; face < 16; face++) {
            int a = face / 4 * 5 + face % 4;
            System.arraycopy(new int[] {a, a + 1, a + 6, a + 5}, 0, corners, 4 * face, 4);
            start[face + 1] = 4 * (face + 1);
        }
        return new Mesh(points, corners, start, new int[16]);
    }

    private static byte[] file(Mesh mesh) {
        StringBuilder ply = new StringBuilder("ply\nformat ascii 1.0\nelement vertex " + mesh.pointCount()
                + "\nproperty double x\nproperty double y\nproperty double z\nelement face " + mesh.faceCount()
                + "\nproperty list uchar int vertex_indices\nend_header\n");
        for (int i = 0; i < mesh.pointCount(); i++) {
            ply.append(mesh.x(i) + " " + mesh.y(i) + " " + mesh.z(i) + "\n");
        }
        for (int face = 0; face < mesh.faceCount(); face++) {
            ply.append(mesh.cornerCount(face));
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                ply.append(" ").append(mesh.corner(face, k));
            }
            ply.append("\n");
        }
        return ply.toString().getBytes(StandardCharsets.US_ASCII);
    }

    Blocks row(String id, RowKind kind, int count, double... box) {
        return row(id, kind, count, row -> row, box);
    }

    /** The same, and more of it. */
    Blocks row(String id, RowKind kind, int count, UnaryOperator<RowBuilder> more, double... box) {
        return row(id, kind, count, more, box(box[0], box[1], box[2], box[3], box[4]));
    }

    /** The same with airfoils that are no boxes. */
    Blocks row(String id, RowKind kind, int count, UnaryOperator<RowBuilder> more, Mesh airfoil) {
        files.put(id, file(airfoil));
        RowBuilder row = Row.of(id, kind, count)
                .spanBands(1)
                .chordBands(List.of())
                .sides(false)
                .shape(new Shape.Mesh(id));
        rows.add(more.apply(kind == RowKind.ROTOR ? row.spool("shaft") : row).build());
        return this;
    }

    /** A row of which only the count is known. */
    Blocks shapeless(String id, RowKind kind, int count) {
        rows.add(Row.of(id, kind, count).build());
        return this;
    }

    /** Where the journal says that the first airfoil of a row stands. */
    Blocks known(String row, Place place) {
        places.put(row, place);
        return this;
    }

    Blocks view(String id, String row, Station... stations) {
        return view(id, row, "tip", stations);
    }

    Blocks view(String id, String row, String tip, Station... stations) {
        return view(new View(
                id, Optional.empty(), row, Optional.of(tip), 0, 0, Optional.empty(), List.of(stations), false));
    }

    Blocks view(View view) {
        views.add(view);
        return this;
    }

    EngineModel model() {
        return EngineModel.of("blocks", "blocks")
                .rows(rows)
                .views(views)
                .scopeTips(List.of(
                        ScopeTip.forward("tip", 120, 0, 100, 800, 4), ScopeTip.forward("slim", 40, 0, 100, 50, 4)))
                .build();
    }

    ViewScene scene() {
        return new ViewScene(model(), files, Map.of(), places);
    }
}
