package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.Figure;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Verdict;
import everyblade.core.move.Squarest;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.job.OpenedJob;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * From where a finding is looked at again: where it is seen most squarely, and where its other face is.
 *
 * @param faces the zones of the finding, then those behind them, if the row has two sides
 * @param judgement what the limits say of it, if there are limits
 */
record FindingLook(Finding finding, List<Face> faces, Optional<Judgement> judgement) {

    /** Zones, and from where they are seen best; empty if no view shows any of them. */
    record Face(ZoneSet zones, Optional<Squarest> from) {}

    static FindingLook of(OpenedJob job, Coverage coverage, int entry) {
        Finding finding = Findings.of(job.fold()).stream()
                .filter(one -> one.entry() == entry)
                .findFirst()
                .orElseThrow(() -> Failure.of("stopped.findingLook.entryNoFindingThatCounts", entry, entry));
        Zoning zoning = Zoning.of(finding.row());
        List<ZoneSet> faces = new ArrayList<>(List.of(finding.zones()));
        ZoneSet other = zoning.opposite(finding.zones());
        if (!other.isEmpty() && !other.equals(finding.zones())) {
            faces.add(other);
        }
        return new FindingLook(
                finding,
                faces.stream()
                        .map(zones -> new Face(
                                zones, Squarest.of(job.fold(), coverage, finding.row(), finding.airfoil(), zones)))
                        .toList(),
                job.judged(coverage).stream()
                        .filter(judged -> judged.finding().entry() == entry)
                        .findFirst());
    }

    List<String> text(Words words) {
        List<String> lines = new ArrayList<>();
        settles(words).ifPresent(settling -> lines.add("# " + OneLine.of(settling)));
        for (Face face : faces) {
            lines.add("# "
                    + OneLine.of(words.say(
                            "look.face",
                            words.airfoil(finding.row()),
                            finding.airfoil(),
                            finding.row().id(),
                            ZonePhrase.of(Zoning.of(finding.row()), face.zones()),
                            face.from().map(from -> told(from, words)).orElseGet(() -> words.say("look.unseen")))));
            face.from().ifPresent(from -> from.entries().forEach(said -> lines.add(EntryText.of(said))));
        }
        return lines;
    }

    private static String told(Squarest from, Words words) {
        return words.say(
                "look.from",
                from.view().id(),
                from.station(),
                from.clock(),
                from.slant(),
                Math.round(100 * from.share()),
                from.reading().isPresent());
    }

    /** The least further look that may settle what is too close to call. */
    private Optional<String> settles(Words words) {
        Optional<Judgement> open =
                judgement.filter(judged -> judged.verdict() == Verdict.CLOSE || judged.verdict() == Verdict.OTHER_FACE);
        return open.flatMap(Judgement::decisive)
                .flatMap(ruling -> ruling.figures().stream()
                        .filter(figure -> figure.verdict() == ruling.verdict())
                        .findFirst()
                        .map(figure -> settled(figure, words)));
    }

    private static String settled(Figure figure, Words words) {
        return figure.verdict() == Verdict.OTHER_FACE
                ? words.say("look.otherFace")
                : words.say("look.tooClose", figure.what(), figure.value(), figure.limit(), figure.margin());
    }

    ObjectNode json(Words words) {
        ObjectNode json = JsonText.object();
        json.put("finding", finding.entry());
        json.put("row", finding.row().id());
        json.put("airfoil", finding.airfoil());
        ArrayNode list = json.putArray("faces");
        List<String> names = Zoning.of(finding.row()).names();
        for (Face face : faces) {
            ObjectNode one = list.addObject();
            ArrayNode zones = one.putArray("zones");
            for (int zone = 0; zone < names.size(); zone++) {
                if (face.zones().contains(zone)) {
                    zones.add(names.get(zone));
                }
            }
            face.from().ifPresentOrElse(from -> one.set("from", json(from)), () -> one.putNull("from"));
        }
        settles(words).ifPresent(settling -> json.put("settles", settling));
        return json;
    }

    private static ObjectNode json(Squarest from) {
        ObjectNode json = JsonText.object();
        json.put("view", from.view().id());
        json.put("station", from.station().orElse(null));
        json.put("clock", from.clock());
        json.put("turnTo", from.reading().orElse(null));
        json.put(
                "slant",
                from.slant().isPresent() ? JsonText.degrees(from.slant().getAsDouble()) : null);
        json.put("share", PlanJson.thousandths(from.share()));
        ArrayNode entries = json.putArray("entries");
        from.entries().forEach(said -> entries.add(EntryText.of(said)));
        return json;
    }
}
