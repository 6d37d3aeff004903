package everyblade.core.doubt;

import everyblade.core.doubt.Doubt.Kind;
import everyblade.core.entry.Entry;
import everyblade.core.entry.FindingEntry;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** What is doubtful about a finding: its size, and on which airfoil it is. */
final class FindingDoubts {

    /** No airfoil of a small gas turbine is as long, mm; where a row's shape is not known. */
    private static final double LONGEST = 300;

    private final Fold fold;
    private final Situation now;
    private final FindingEntry.Find find;

    FindingDoubts(Fold fold, FindingEntry.Find find) {
        this.fold = fold;
        this.now = fold.situation();
        this.find = find;
    }

    List<Doubt> all() {
        List<Doubt> doubts = new ArrayList<>();
        length(find).flatMap(this::offByTen).ifPresent(doubts::add);
        row().flatMap(this::longer).ifPresent(doubts::add);
        notInView().ifPresent(doubts::add);
        return doubts;
    }

    private static Optional<BigDecimal> length(Entry entry) {
        return entry instanceof FindingEntry.Find found && found.size().unit() == Entry.LengthUnit.MM
                ? found.size().length()
                : Optional.empty();
    }

    private Optional<Doubt> offByTen(BigDecimal length) {
        return Usual.of(fold, FindingDoubts::length).unlike(length).map(usual -> new Doubt(Kind.SIZE, length, usual));
    }

    private Optional<Row> row() {
        return find.row().isPresent()
                ? Optional.of(now.engine().rows().get(find.row().get().value()))
                : now.lastSeat().map(Seat::row);
    }

    private Optional<Doubt> longer(Row row) {
        OptionalDouble greatest = Findings.sizes(find.size()).values().stream()
                .map(Measured::value)
                .mapToDouble(Length::millimetres)
                .max();
        double most = surface(row).map(FindingDoubts::extent).orElse(LONGEST);
        return greatest.isPresent() && greatest.getAsDouble() > most
                ? Optional.of(new Doubt(Kind.LONGER, row, greatest.getAsDouble(), most))
                : Optional.empty();
    }

    private Optional<Mesh> surface(Row row) {
        try {
            return Surfaces.of(now.engine().model(), row, Optional.empty());
        } catch (UnusableShape notKnownHere) {
            return Optional.empty();
        }
    }

    /** The diagonal of the box round an airfoil, mm: nothing on it is longer. */
    private static double extent(Mesh mesh) {
        return Math.sqrt(square(mesh, mesh::x) + square(mesh, mesh::y) + square(mesh, mesh::z));
    }

    private static double square(Mesh mesh, IntToDoubleFunction place) {
        DoubleSummaryStatistics places =
                IntStream.range(0, mesh.pointCount()).mapToDouble(place).summaryStatistics();
        double length = places.getMax() - places.getMin();
        return length * length;
    }

    private Optional<Doubt> notInView() {
        Optional<Seat> seat =
                now.lastSeat().filter(last -> row().filter(last.row()::equals).isPresent());
        if (seat.isEmpty() || find.row().isPresent() && now.seat().isEmpty()) {
            return Optional.empty();
        }
        int airfoil = find.airfoil().value();
        Optional<Integer> there = now.airfoilAtReference(seat.get());
        return there.isPresent() && new Field(now, seat.get()).missed(airfoil)
                ? Optional.of(new Doubt(Kind.NOT_IN_VIEW, seat.get().row(), airfoil, there.get()))
                : Optional.empty();
    }
}
