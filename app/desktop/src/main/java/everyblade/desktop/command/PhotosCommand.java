package everyblade.desktop.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.entry.Entry;
import everyblade.core.finding.photo.CameraClock;
import everyblade.core.finding.photo.PhotoPlace;
import everyblade.core.finding.photo.PhotoPlacing;
import everyblade.record.KeptPhoto;
import everyblade.record.Line;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the pictures of a job, each with where the rotor stood and which airfoil it likely shows. */
@Command(
        name = "photos",
        description =
                "The pictures that entries name: when each was taken, through which view, at which shaft angle, and"
                        + " the most likely airfoil.",
        footer = {
            "",
            "Times are those that the camera wrote, else those of the entries. Say how far the camera's clock is ahead of"
                    + " UTC by the entry: fact \"camera clock\" +02:00"
        })
final class PhotosCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "a job folder")
    private Path job;

    @Option(names = "--json", description = "prints JSON")
    private boolean json;

    PhotosCommand(Surroundings around) {
        this.around = around;
    }

    /** A picture with the time at which it was taken and where that was. */
    private record Placed(Line line, KeptPhoto photo, Instant taken, boolean byCamera, PhotoPlace place) {

        Optional<Integer> stated() {
            return line.means() instanceof Entry.Photo named
                    ? named.airfoil().map(airfoil -> airfoil.value())
                    : Optional.empty();
        }
    }

    @Override
    public Integer call() {
        List<Placed> photos = placed(OpenedJob.read(around, job));
        if (json) {
            around.out().println(JsonText.of(json(photos)));
        } else {
            photos.forEach(this::tell);
            around.out()
                    .println(
                            photos.isEmpty()
                                    ? "No pictures."
                                    : photos.size() == 1 ? "1 picture." : photos.size() + " pictures.");
        }
        return Commands.FINE;
    }

    private static List<Placed> placed(OpenedJob opened) {
        CameraClock clock = CameraClock.of(opened.fold());
        PhotoPlacing placing = PhotoPlacing.of(opened.fold());
        return opened.journal().lines().stream()
                .filter(line ->
                        line.entry().photo().isPresent() && !opened.fold().isVoid(line.k()))
                .map(line -> {
                    KeptPhoto photo = line.entry().photo().orElseThrow();
                    Optional<Instant> written = photo.facts().taken().flatMap(clock::taken);
                    Instant taken = written.orElse(line.at());
                    return new Placed(line, photo, taken, written.isPresent(), placing.at(taken));
                })
                .toList();
    }

    private void tell(Placed photo) {
        PhotoPlace place = photo.place();
        String where = place.view().map(view -> "view " + view.id()).orElse("no view");
        String angle = place.shaftAngle().isEmpty()
                ? ""
                : String.format(
                        Locale.ROOT,
                        ", shaft at %.1f° ± %.1f°%s",
                        place.shaftAngle().getAsDouble(),
                        place.plusMinus(),
                        place.moving() ? ", turning" : "");
        String said = photo.stated()
                .map(n -> "; entered as of " + n
                        + (!photo.byCamera() || place.agreesWith(n)
                                ? ""
                                : ", which does not agree; see which is right and void the other"))
                .orElse("");
        around.out()
                .println(OneLine.of(
                        "entry " + photo.line().k() + ": " + photo.photo().file() + ", " + photo.taken()
                                + (photo.byCamera() ? " (camera)" : " (of the entry)") + ", " + where + angle + ": "
                                + place.airfoilText() + said));
    }

    private static ObjectNode json(List<Placed> photos) {
        ObjectNode json = JsonText.object();
        ArrayNode list = json.putArray("photos");
        for (Placed photo : photos) {
            PhotoPlace place = photo.place();
            ObjectNode one = list.addObject();
            one.put("entry", photo.line().k());
            one.put("file", photo.photo().file());
            one.put("sha256", photo.photo().sha256());
            one.put("taken", photo.taken().toString());
            one.put("byCamera", photo.byCamera());
            one.put("view", place.view().map(view -> view.id()).orElse(null));
            one.put("row", place.row().map(row -> row.id()).orElse(null));
            place.shaftAngle()
                    .ifPresentOrElse(
                            angle -> one.put("shaftAngle", JsonText.position(angle)), () -> one.putNull("shaftAngle"));
            one.put("plusMinus", JsonText.degrees(place.plusMinus()));
            one.put("airfoil", place.airfoil().orElse(null));
            one.put("airfoilsOff", place.airfoilsOff());
            one.put("countLost", place.lost());
            one.put("stated", photo.stated().orElse(null));
        }
        return json;
    }
}
