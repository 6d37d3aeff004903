package everyblade.practice.drill;

import everyblade.core.angle.Turn;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.core.surface.Walls;
import everyblade.practice.eye.Finish;
import everyblade.practice.eye.PlacedMesh;
import everyblade.practice.eye.Solid;
import everyblade.practice.eye.Trace;
import everyblade.practice.harm.DamageLook;
import everyblade.practice.harm.DamageSite;
import everyblade.practice.harm.Harm;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An engine that stands on no floor: every row and wall with a shape, with what was invented on it. Never changes. */
public final class Mockup {

    /** How far a wall as drawn may stand off the true one, mm. */
    private static final double WALL_ERROR = 0.05;

    private final List<Ring> rings = new ArrayList<>();
    private final List<PlacedMesh> walls = new ArrayList<>();
    private final List<Owner> owners = new ArrayList<>();

    /**
     * What a number in a picture stands for.
     *
     * @param row id of the row, or of the wall
     * @param airfoil its number, 0 for a wall
     */
    public record Owner(String row, int airfoil) {}

    /**
     * A row.
     *
     * @param first clock angle of its airfoil 1 while its shaft reads zero, degrees
     * @param owner number of its airfoil 1; the others follow
     * @param traces on each airfoil in turn
     */
    private record Ring(Row row, Solid solid, double first, int owner, float grime, List<List<Trace>> traces) {

        PlacedMesh at(int index, double shaft) {
            double clock = first + shaft + row.numbering().sign() * 360.0 * index / row.count();
            return new PlacedMesh(solid, Math.toRadians(clock), owner + index, owner + index, grime, traces.get(index));
        }
    }

    /**
     * An engine with what is on its airfoils.
     *
     * @param standing clock angle of airfoil 1 of each row while shafts read zero, degrees; 0 where nothing is said
     * @param grime 0 washed to 1 dirty
     * @throws UnusableShape if a shape of the model gives no surface
     */
    public Mockup(ViewScene scene, List<Harm> harms, Map<String, Double> standing, double grime) throws UnusableShape {
        EngineModel model = scene.model();
        for (Row row : model.rows()) {
            Optional<Mesh> mesh = scene.airfoil(row);
            if (mesh.isPresent()) {
                List<List<Trace>> traces = new ArrayList<>();
                for (int airfoil = 1; airfoil <= row.count(); airfoil++) {
                    traces.add(traces(row, mesh.get(), airfoil, harms));
                }
                rings.add(new Ring(
                        row,
                        Solid.of(mesh.get(), finish(model, row)),
                        standing.getOrDefault(row.id(), 0.0),
                        owners.size(),
                        (float) grime,
                        traces));
                for (int airfoil = 1; airfoil <= row.count(); airfoil++) {
                    owners.add(new Owner(row.id(), airfoil));
                }
            }
        }
        for (Wall wall : model.walls()) {
            int owner = owners.size();
            owners.add(new Owner(wall.id(), 0));
            for (Solid part : Solid.parts(Walls.of(wall, WALL_ERROR), Finish.WALL)) {
                walls.add(new PlacedMesh(part, 0, owner, owner, (float) grime, List.of()));
            }
        }
    }

    private static List<Trace> traces(Row row, Mesh mesh, int airfoil, List<Harm> harms) {
        List<Trace> traces = new ArrayList<>();
        for (int place = 0; place < row.landmarks().size(); place++) {
            if (row.landmarks().get(place).airfoil() == airfoil && row.kind() != RowKind.LINER) {
                traces.add(new DamageSite(mesh, place));
            }
        }
        harms.stream()
                .filter(harm -> harm.row().equals(row.id()) && harm.airfoil() == airfoil)
                .map(DamageLook::of)
                .forEach(traces::add);
        return traces;
    }

    /** Rows behind a combustor are hot; a model without one is taken for a compressor. */
    private static Finish finish(EngineModel model, Row row) {
        if (row.kind() == RowKind.LINER) {
            return Finish.LINER;
        }
        List<Row> rows = model.rows();
        int combustor = rows.stream()
                .filter(each -> each.kind() == RowKind.LINER)
                .mapToInt(rows::indexOf)
                .min()
                .orElse(rows.size());
        return rows.indexOf(row) > combustor ? Finish.HOT : Finish.COLD;
    }

    /**
     * Everything as it stands now.
     *
     * @param shafts reading of each spool, degrees
     */
    public List<PlacedMesh> at(Map<String, Double> shafts) {
        List<PlacedMesh> stage = new ArrayList<>(walls);
        for (Ring ring : rings) {
            double shaft = ring.row().kind() == RowKind.ROTOR
                    ? shafts.getOrDefault(ring.row().spool().orElseThrow(), 0.0)
                    : 0;
            for (int index = 0; index < ring.row().count(); index++) {
                stage.add(ring.at(index, shaft));
            }
        }
        return stage;
    }

    /** What a number in a picture stands for. */
    public Owner owner(int number) {
        return owners.get(number);
    }

    /** Where an airfoil stands, at this reading of its shaft. */
    public Turn clock(String row, int airfoil, double shaft) {
        Ring ring = rings.stream()
                .filter(each -> each.row().id().equals(row))
                .findFirst()
                .orElseThrow();
        return Turn.ofDegrees(Math.toDegrees(ring.at(airfoil - 1, shaft).clock()));
    }
}
