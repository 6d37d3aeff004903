package everyblade.session.model;

import everyblade.core.check.CheckedPart;
import everyblade.core.check.Flaw;
import everyblade.core.check.ModelCheck;
import everyblade.core.check.SightCheck;
import everyblade.core.sight.Progress;
import everyblade.json.Found;
import everyblade.json.Problem;
import everyblade.json.Severity;
import everyblade.json.TextPlaces;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What only the surfaces of a model show to be wrong, told by line and column of its file. */
public final class SurfaceProblems {

    private SurfaceProblems() {}

    /** @param sight whether to compute what its views see, too */
    public static List<Problem> of(Found.Loaded loaded, boolean sight, Words words) {
        ModelFiles files = ModelFiles.of(loaded);
        Map<String, byte[]> meshes = files.meshes(loaded.model());
        List<Flaw> flaws = new ArrayList<>(ModelCheck.of(loaded.model(), meshes));
        if (sight) {
            flaws.addAll(SightCheck.of(loaded.model(), meshes, Progress.NONE));
        }
        return of(flaws, files, words);
    }

    /** Flaws at their places in the file that the model was read from. */
    public static List<Problem> of(List<Flaw> flaws, ModelFiles files, Words words) {
        if (flaws.isEmpty()) {
            return List.of();
        }
        TextPlaces places = TextPlaces.of(files.text());
        return flaws.stream()
                .map(flaw -> places.problem(
                        flaw.kind().code(),
                        flaw.kind().refuses() ? Severity.ERROR : Severity.WARNING,
                        files.name(),
                        pointer(flaw.part()),
                        words.say(flaw.what()),
                        words.say(flaw.why()),
                        words.say(flaw.mend())))
                .toList();
    }

    private static String pointer(CheckedPart part) {
        if (part instanceof CheckedPart.ShapeOf shape) {
            return "/rows/" + shape.row() + "/shape";
        } else if (part instanceof CheckedPart.PositionOf position) {
            return "/rows/" + position.row() + "/positions/" + position.position();
        } else if (part instanceof CheckedPart.ViewAt view) {
            return "/views/" + view.view();
        } else if (part instanceof CheckedPart.AimOf aim) {
            return "/views/" + aim.view() + "/aim";
        } else {
            CheckedPart.StationAt station = (CheckedPart.StationAt) part;
            return "/views/" + station.view() + "/stations/" + station.station();
        }
    }
}
