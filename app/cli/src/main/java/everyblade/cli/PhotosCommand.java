package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.finding.photo.PhotoPlace;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import everyblade.session.photo.JobPhoto;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the pictures of a job, each with where the rotor stood and which airfoil it likely shows. */
@Command(
        name = "photos",
        description = "${bundle:help.photos}",
        footer = {"", "${bundle:help.photos.times}"})
final class PhotosCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    PhotosCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.read(around, job);
        List<JobPhoto> photos = JobPhoto.of(opened.fold(), opened.journal().lines());
        opened.doubts(around.words()).forEach((json ? around.err() : around.out())::println);
        if (json) {
            around.out().println(JsonText.of(json(photos)));
        } else {
            photos.forEach(this::tell);
            around.out().println(around.words().say("photos.count", photos.size()));
        }
        return Commands.FINE;
    }

    private void tell(JobPhoto photo) {
        PhotoPlace place = photo.place();
        around.out()
                .println(OneLine.of(around.words()
                        .say(
                                "photos.line",
                                photo.entry(),
                                photo.kept().file(),
                                photo.taken(),
                                photo.byCamera(),
                                place.view().map(View::id),
                                place.shaftAngle(),
                                place.plusMinus(),
                                place.moving(),
                                place.likely(),
                                photo.stated(),
                                photo.doubted())));
    }

    private static ObjectNode json(List<JobPhoto> photos) {
        ObjectNode json = JsonText.object();
        ArrayNode list = json.putArray("photos");
        for (JobPhoto photo : photos) {
            PhotoPlace place = photo.place();
            ObjectNode one = list.addObject();
            one.put("entry", photo.entry());
            one.put("file", photo.kept().file());
            one.put("sha256", photo.kept().sha256());
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
