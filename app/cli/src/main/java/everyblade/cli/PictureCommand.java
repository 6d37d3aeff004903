package everyblade.cli;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Criteria;
import everyblade.core.surface.UnusableShape;
import everyblade.picture.scene.Theme;
import everyblade.picture.sight.TipPicture;
import everyblade.picture.sight.UnrolledScene;
import everyblade.picture.sight.Vantage;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Shelf;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws what a view shows: one airfoil unrolled, or the scope tip's own picture. */
@Command(name = "picture", description = "${bundle:help.picture}")
final class PictureCommand implements Callable<Integer> {

    private static final String UNROLLED = "unrolled";
    private static final String TIP = "tip";

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "M", description = "${bundle:help.model}")
    private String model;

    @Option(names = "--view", required = true, paramLabel = "ID", description = "${bundle:help.picture.view}")
    private String view;

    @Option(names = "--station", paramLabel = "S", description = "${bundle:help.station}")
    private String station;

    @Option(names = "--kind", paramLabel = "KIND", defaultValue = UNROLLED, description = "${bundle:help.picture.kind}")
    private String kind;

    @Option(names = "--at", paramLabel = "CLOCK", description = "${bundle:help.picture.at}")
    private String at;

    @Option(names = "--detail", paramLabel = "MM", description = "${bundle:help.detail}")
    private String detail;

    @Option(names = "--dark", description = "${bundle:help.picture.dark}")
    private boolean dark;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "F",
            completionCandidates = OutputFormat.Drawings.class,
            description = "${bundle:help.out}: ${COMPLETION-CANDIDATES}")
    private Path out;

    PictureCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        OutputFormat format = format();
        NewFile file = NewFile.at(around, "--out", out);
        Shelf.Chosen chosen = everyblade.shelf().choose(model);
        View seen = view(chosen.model());
        try {
            Vantage vantage = vantage(chosen, seen);
            file.write(
                    kind.equals(TIP)
                            ? tip(vantage, seen)
                            : format.draw(UnrolledScene.of(vantage, around.words()), theme()));
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.noSurface", model, unusable.told());
        }
        return Commands.FINE;
    }

    /** In what it is drawn, if that goes with the kind of picture. */
    private OutputFormat format() {
        if (!kind.equals(UNROLLED) && !kind.equals(TIP)) {
            throw Failure.of("stopped.picture.thereNoSuchPictureSay", kind);
        }
        if (kind.equals(UNROLLED) && at != null) {
            throw Failure.of("stopped.picture.unrolledAirfoilShowsWholeTurn", at);
        }
        OutputFormat format = OutputFormat.ofDrawing("--out", out);
        if (kind.equals(TIP) && format != OutputFormat.PNG) {
            throw Failure.of("stopped.picture.whatScopeTipSeesDrawn", out);
        }
        return format;
    }

    private Vantage vantage(Shelf.Chosen chosen, View seen) throws UnusableShape {
        Row row = chosen.model().row(seen.row()).orElseThrow();
        Station from = station(seen);
        if (row.shape().isEmpty()) {
            throw MeshCommand.noShape(row);
        }
        if (seen.scopeTip().isEmpty()) {
            throw Failure.of("stopped.picture.viewNamesNoScopeTip", view);
        }
        return Vantage.of(chosen.scene(), seen, from, criteria());
    }

    private Criteria criteria() {
        if (detail == null) {
            return Criteria.USUAL;
        }
        double millimetres = Given.number("--detail", detail, "mm").doubleValue();
        if (!(millimetres > 0)) {
            throw Failure.of("stopped.picture.detailHasSizeWriteLike", detail);
        }
        return Criteria.USUAL.withDetail(millimetres);
    }

    private byte[] tip(Vantage vantage, View seen) throws UnusableShape {
        Turn first = at == null ? Turn.ofDegrees(seen.reference()) : Turn.ofDegrees(Given.number("--at", at, "deg"));
        return TipPicture.of(vantage, first, around.words()).png(theme());
    }

    private Theme theme() {
        return dark ? Theme.DARK : Theme.LIGHT;
    }

    private View view(EngineModel engine) {
        return engine.view(view)
                .orElseThrow(() -> Failure.of(
                        "stopped.picture.engineHasNoSuchView",
                        view,
                        engine.views().stream().map(View::id).collect(Collectors.joining(", "))));
    }

    private Station station(View seen) {
        if (seen.stations().isEmpty()) {
            throw Failure.of("stopped.picture.viewHasNoStationOnly", view);
        }
        return seen.stations().stream()
                .filter(one -> station == null || one.id().equals(station))
                .findFirst()
                .orElseThrow(() -> Failure.of(
                        "stopped.picture.viewHas",
                        station,
                        view,
                        seen.stations().stream().map(Station::id).collect(Collectors.joining(", "))));
    }
}
