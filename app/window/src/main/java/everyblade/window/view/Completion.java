package everyblade.window.view;

import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Kind;
import everyblade.core.entry.Slot;
import everyblade.core.entry.Unit;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.Situation;
import everyblade.spi.EngineModel;
import everyblade.spi.Pad;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Words that may come next in the entry line: verbs, then the ids, parts and words that the verb takes.
 *
 * @param typed the text before the word that is being completed, a space at its end unless empty
 * @param words what may stand there, in the order of use
 */
public record Completion(String typed, List<String> words) {

    /** What is said most. */
    private static final List<String> FIRST =
            List.of("view", "turn", "look", "watch", "here", "round", "datum", "skip", "heat");

    /** Before a row that stands still, the moves of the scope tip stand where those of a shaft do otherwise. */
    private static final Map<String, String> AT_REST =
            Map.of("turn", "draw", "draw", "turn", "skip", "feed", "feed", "skip");

    public Completion {
        words = List.copyOf(words);
    }

    /** What may come next at the end of this text. */
    public static Completion of(Situation now, String text) {
        int from = text.lastIndexOf(' ') + 1;
        String before = text.substring(0, from);
        String begun = text.substring(from).toLowerCase(Locale.ROOT);
        List<String> said = Arrays.stream(before.strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        List<String> fitting = candidates(now, said).stream()
                .distinct()
                .filter(word -> word.toLowerCase(Locale.ROOT).startsWith(begun))
                .filter(word -> !word.equals(text.substring(from)))
                .toList();
        return new Completion(before, fitting);
    }

    /** The whole text with the longest beginning that all words share; with the first of them if that adds nothing. */
    public String accepted(String text) {
        if (words.isEmpty()) {
            return text;
        }
        String shared = words.get(0);
        for (String word : words) {
            while (!word.startsWith(shared)) {
                shared = shared.substring(0, shared.length() - 1);
            }
        }
        boolean adds = (typed + shared).length() > text.length();
        return adds && words.size() > 1 ? typed + shared : typed + words.get(0) + " ";
    }

    private static List<String> candidates(Situation now, List<String> said) {
        if (said.isEmpty()) {
            return verbs(now);
        }
        String verb = said.get(0).toLowerCase(Locale.ROOT);
        int place = said.size();
        return isKind(verb)
                ? at(now, EntryKind.of("find").orElseThrow(), place + 1, said)
                : EntryKind.of(verb).map(kind -> at(now, kind, place, said)).orElse(List.of());
    }

    private static List<String> verbs(Situation now) {
        boolean stands =
                now.seat().filter(seat -> seat.row().kind() != RowKind.ROTOR).isPresent();
        Stream<String> verbs = Stream.concat(
                        FIRST.stream(), EntryKind.all().stream().map(EntryKind::verb))
                .distinct()
                .map(verb -> stands ? AT_REST.getOrDefault(verb, verb) : verb);
        return Stream.concat(verbs, kinds().stream()).toList();
    }

    /** What may stand at a place of a line of this kind. */
    private static List<String> at(Situation now, EntryKind kind, int place, List<String> said) {
        Slot slot = kind.at(place);
        return slot instanceof Slot.Words words ? words.words() : named(now, (Slot.Named) slot, said);
    }

    private static List<String> named(Situation now, Slot.Named slot, List<String> said) {
        return switch (slot) {
            case UNTOLD -> List.of();
            case VIEW -> views(now);
            case SCOPE_TIP -> scopeTips(now);
            case STATION -> stations(now);
            case PART -> parts(now);
            case ZONE -> zones(now);
            case ROW -> rows(now);
            case PAD -> pads(now);
            case TURNING -> move(now, said, true);
            case DRAWING -> move(now, said, false);
            case KIND_OF_FINDING -> kinds();
            case THING -> things(now);
            case THING_OPEN -> quoted(now.ledger().openings().keySet());
            case TOOL -> tools(now, said);
            case QUESTION -> questions(now);
        };
    }

    private static List<String> tools(Situation now, List<String> said) {
        return said.get(1).equals("in")
                ? Stream.concat(now.ledger().toolsOut().keySet().stream(), now.ledger().missing().stream())
                        .toList()
                : List.of();
    }

    private static List<String> questions(Situation now) {
        return now.ledger().questions().keySet().stream().map(String::valueOf).toList();
    }

    private static List<String> move(Situation now, List<String> said, boolean turned) {
        String last = said.get(said.size() - 1);
        if (said.size() == 1) {
            return List.of("on", "back", "to");
        }
        if (Map.of("on", 1, "back", 1).containsKey(last)) {
            return List.of("to");
        }
        boolean number = last.matches("[+-]?[0-9]+([.,][0-9]+)?");
        if (number && !said.contains("to")) {
            Stream<String> units = Arrays.stream(Unit.values())
                    .filter(unit -> turned || unit.ofDrawing())
                    .map(Unit::word);
            return turned ? Stream.concat(units, Stream.of("\u00b1")).toList() : units.toList();
        }
        return last.equals("through") ? stations(now) : List.of();
    }

    private static boolean isKind(String word) {
        return Arrays.stream(Kind.values()).anyMatch(kind -> kind.word().equals(word));
    }

    private static List<String> kinds() {
        return Arrays.stream(Kind.values()).map(Kind::word).toList();
    }

    private static EngineModel model(Situation now) {
        return now.engine().model();
    }

    private static List<String> views(Situation now) {
        return model(now).views().stream().map(View::id).toList();
    }

    private static List<String> scopeTips(Situation now) {
        return model(now).scopeTips().stream().map(ScopeTip::id).toList();
    }

    private static List<String> stations(Situation now) {
        return now.seat().stream()
                .flatMap(seat -> seat.view().stations().stream())
                .map(Station::id)
                .toList();
    }

    private static List<String> rows(Situation now) {
        return model(now).rows().stream().map(Row::id).toList();
    }

    private static List<String> pads(Situation now) {
        return model(now).spools().stream()
                .flatMap(spool -> spool.pads().stream())
                .map(Pad::id)
                .toList();
    }

    private static List<String> things(Situation now) {
        return Stream.concat(model(now).ports().stream().map(Port::id), pads(now).stream())
                .toList();
    }

    private static List<String> quoted(Set<String> names) {
        return names.stream().map(EntryText::name).toList();
    }

    private static List<String> parts(Situation now) {
        if (now.seat().isEmpty()) {
            return List.of("all");
        }
        Zoning zoning = now.engine().zonings().get(now.seat().get().row().id());
        List<String> parts = new ArrayList<>(List.of("all"));
        parts.addAll(zoning.spans());
        parts.addAll(zoning.sides());
        parts.addAll(zoning.chords());
        return parts;
    }

    private static List<String> zones(Situation now) {
        if (now.seat().isEmpty()) {
            return List.of("all");
        }
        Set<String> zones = new TreeSet<>(parts(now));
        zones.addAll(now.engine().zonings().get(now.seat().get().row().id()).names());
        return List.copyOf(zones);
    }
}
