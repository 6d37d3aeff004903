package everyblade.window.author;

import everyblade.picture.scene.Scene;
import everyblade.picture.section.ModelSheet;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.util.List;
import java.util.Optional;

/**
 * What the author's screen shows at one moment. The drawings are of the last text that could be read as a model, which need
 * not be the last one.
 *
 * @param folder that is watched
 * @param last the last time that it was read
 * @param drawn the model that is drawn
 * @param sheet of that model, with the chosen row
 * @param row the id of the row that is shown from aft
 * @param from where the row is looked at from
 * @param sight what is seen from there
 */
public record AuthorState(
        ModelFolder folder,
        Optional<Attempt> last,
        Optional<ReadModel> drawn,
        Optional<Scene> sheet,
        Optional<String> row,
        Optional<Standpoint> from,
        Sight sight) {

    /** Before the folder was read. */
    public static AuthorState first(ModelFolder folder) {
        return new AuthorState(
                folder,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Sight.None());
    }

    /** A sheet of the model that was read, with the row that is shown then. */
    public record Sheet(Scene scene, Optional<String> row) {}

    /** The sheet of a model with this row, or if it has none of this name with its first one that has a shape. */
    public static Sheet sheet(ReadModel read, Optional<String> wanted, Words words) {
        EngineModel model = read.model();
        Optional<String> row = wanted.filter(id -> model.row(id).isPresent())
                .or(() -> model.rows().stream()
                        .filter(one -> one.shape().isPresent())
                        .findFirst()
                        .or(() -> model.rows().stream().findFirst())
                        .map(Row::id));
        return new Sheet(ModelSheet.of(model, row, read.meshes(), words), row);
    }

    /** After the folder was read and nothing can be drawn: what is drawn stays. */
    public AuthorState broken(Attempt attempt) {
        return new AuthorState(folder, Optional.of(attempt), drawn, sheet, row, from, sight);
    }

    /** After the folder was read as a model; where it was looked from stays if it is still there. */
    public AuthorState read(Attempt attempt, Sheet drawing) {
        EngineModel model = attempt.model().orElseThrow().model();
        List<Standpoint> places = Standpoint.of(model);
        Optional<Standpoint> place = from.filter(places::contains)
                .or(() ->
                        places.stream().filter(one -> one.why(model).isEmpty()).findFirst())
                .or(() -> places.stream().findFirst());
        return new AuthorState(
                folder,
                Optional.of(attempt),
                attempt.model(),
                Optional.of(drawing.scene()),
                drawing.row(),
                place,
                new Sight.None());
    }

    /** With what else turned out to be wrong with the text that was read last. */
    public AuthorState told(Attempt attempt) {
        return new AuthorState(folder, Optional.of(attempt), drawn, sheet, row, from, sight);
    }

    /** With another row shown from aft. */
    public AuthorState with(Sheet drawing) {
        return new AuthorState(folder, last, drawn, Optional.of(drawing.scene()), drawing.row(), from, sight);
    }

    /** Looked at from elsewhere. */
    public AuthorState from(Standpoint place) {
        return new AuthorState(folder, last, drawn, sheet, row, Optional.of(place), new Sight.None());
    }

    /** With more, or less, known of what is seen. */
    public AuthorState with(Sight known) {
        return new AuthorState(folder, last, drawn, sheet, row, from, known);
    }

    /** Why nothing can be computed from where it is looked: the key of the text that says it. */
    public Optional<String> whyNoSight() {
        return drawn.flatMap(read -> from.flatMap(place -> place.why(read.model())));
    }
}
