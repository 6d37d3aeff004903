package everyblade.core.coverage;

import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Reach;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What computed cells answer of their states and surfaces, written down, so that it can be told again without what they were
 * computed from. Whatever else is asked is computed then.
 */
final class ToldCells implements Cells {

    private static final byte NONE = -1;

    /** Bytes of a cell. */
    private static final int CELL = 3 + 4 * Double.BYTES;

    /** By zone; what mostly keeps it out of sight. */
    private final List<Optional<Hindrance>> hindrances;
    /** Of each airfoil its cells by zone; airfoils of which the same is told have the same list. */
    private final List<List<Told>> airfoils;

    private final Once<ComputedCells> computed;

    /** What is told of one cell. */
    private record Told(State state, Optional<Why> why, boolean lacksEdgeAlone, CellSurface surface) {}

    private ToldCells(List<Optional<Hindrance>> hindrances, List<List<Told>> airfoils, Once<ComputedCells> computed) {
        this.hindrances = hindrances;
        this.airfoils = airfoils;
        this.computed = computed;
    }

    /** What cells of so many airfoils and zones tell, as bytes. */
    static byte[] written(ComputedCells cells, int count, int zones) {
        Map<List<Told>, Integer> groups = new LinkedHashMap<>();
        int[] of = new int[count];
        for (int n = 1; n <= count; n++) {
            int airfoil = n;
            List<Told> told = IntStream.range(0, zones)
                    .mapToObj(zone -> new Told(
                            cells.state(airfoil, zone),
                            cells.why(airfoil, zone),
                            cells.lacksEdgeAlone(airfoil, zone),
                            cells.surface(airfoil, zone)))
                    .toList();
            groups.putIfAbsent(told, groups.size());
            of[n - 1] = groups.get(told);
        }
        ByteBuffer to = ByteBuffer.allocate(zones + Integer.BYTES * (1 + count) + CELL * zones * groups.size());
        for (int zone = 0; zone < zones; zone++) {
            to.put(number(cells.hindrance(1, zone)));
        }
        to.putInt(groups.size());
        groups.keySet().forEach(told -> told.forEach(cell -> put(to, cell)));
        for (int group : of) {
            to.putInt(group);
        }
        return to.array();
    }

    private static void put(ByteBuffer to, Told cell) {
        CellSurface surface = cell.surface;
        to.put((byte) cell.state.ordinal()).put(number(cell.why)).put((byte) (cell.lacksEdgeAlone ? 1 : 0));
        to.putDouble(surface.own())
                .putDouble(surface.reach())
                .putDouble(surface.seen())
                .putDouble(surface.maybe());
    }

    private static byte number(Optional<? extends Enum<?>> constant) {
        return constant.map(one -> (byte) one.ordinal()).orElse(NONE);
    }

    /**
     * The cells that were written.
     *
     * @param computing what they were written of
     * @return empty if these bytes are something else
     */
    static Optional<ToldCells> read(byte[] content, int count, int zones, Once<ComputedCells> computing) {
        try {
            ByteBuffer from = ByteBuffer.wrap(content);
            List<Optional<Hindrance>> hindrances = new ArrayList<>();
            for (int zone = 0; zone < zones; zone++) {
                hindrances.add(constant(from.get(), Hindrance.values()));
            }
            List<List<Told>> groups = new ArrayList<>();
            for (int left = from.getInt(); left > 0; left--) {
                List<Told> told = new ArrayList<>();
                for (int zone = 0; zone < zones; zone++) {
                    told.add(told(from));
                }
                groups.add(List.copyOf(told));
            }
            List<List<Told>> airfoils = new ArrayList<>();
            for (int n = 1; n <= count; n++) {
                airfoils.add(groups.get(from.getInt()));
            }
            return from.hasRemaining()
                    ? Optional.empty()
                    : Optional.of(new ToldCells(List.copyOf(hindrances), List.copyOf(airfoils), computing));
        } catch (BufferUnderflowException | IndexOutOfBoundsException notOurs) {
            return Optional.empty();
        }
    }

    private static Told told(ByteBuffer from) {
        State state = State.values()[from.get()];
        Optional<Why> why = constant(from.get(), Why.values());
        boolean lacksEdgeAlone = from.get() != 0;
        return new Told(
                state,
                why,
                lacksEdgeAlone,
                new CellSurface(from.getDouble(), from.getDouble(), from.getDouble(), from.getDouble()));
    }

    private static <E> Optional<E> constant(byte number, E[] all) {
        return number == NONE ? Optional.empty() : Optional.of(all[number]);
    }

    private Told cell(int n, int zone) {
        return airfoils.get(n - 1).get(zone);
    }

    @Override
    public Basis basis() {
        return Basis.COMPUTED;
    }

    @Override
    public State state(int n, int zone) {
        return cell(n, zone).state;
    }

    @Override
    public Optional<Why> why(int n, int zone) {
        return cell(n, zone).why;
    }

    @Override
    public boolean lacksEdgeAlone(int n, int zone) {
        return cell(n, zone).lacksEdgeAlone;
    }

    @Override
    public Optional<Hindrance> hindrance(int n, int zone) {
        return hindrances.get(zone);
    }

    @Override
    public boolean doneBy(int n, int zone, BitSet parts, BitSet whole) {
        return computed.get().doneBy(n, zone, parts, whole);
    }

    @Override
    public BitSet surely(int n) {
        return computed.get().surely(n);
    }

    @Override
    public BitSet wholly(int n) {
        return computed.get().wholly(n);
    }

    @Override
    public Areas areas(int n, ZoneSet of) {
        return CellSurface.of(of, zone -> cell(n, zone).surface).shares();
    }

    @Override
    public double surface(ZoneSet of) {
        return CellSurface.of(of, zone -> cell(1, zone).surface).own();
    }

    @Override
    public Optional<Reach> reach() {
        return computed.get().reach();
    }
}
