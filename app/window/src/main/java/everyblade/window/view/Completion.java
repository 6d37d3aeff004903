package everyblade.window.view;

import static everyblade.core.entry.EntryKind.DRAW;
import static everyblade.core.entry.EntryKind.FEED;
import static everyblade.core.entry.EntryKind.SKIP;
import static everyblade.core.entry.EntryKind.TURN;

import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Kind;
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

    /** Before a row that stands still, the moves of the scope tip stand where those of a shaft do otherwise. */
    private static final Map<EntryKind, EntryKind> AT_REST = Map.of(TURN, DRAW, DRAW, TURN, SKIP, FEED, FEED, SKIP);

    private static final List<String> FACTS =
            List.of("hours", "cycles", "position", "manual", "revision", "\"scope serial\"", "\"eye test\"");

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
            boolean stands = now.seat()
                    .filter(seat -> seat.row().kind() != RowKind.ROTOR)
                    .isPresent();
            Stream<String> verbs = Arrays.stream(EntryKind.values())
                    .map(kind -> stands ? AT_REST.getOrDefault(kind, kind) : kind)
                    .map(EntryKind::verb);
            return Stream.concat(verbs, kinds().stream()).toList();
        }
        String verb = said.get(0).toLowerCase(Locale.ROOT);
        return isKind(verb)
                ? found(now, said.size())
                : EntryKind.of(verb).map(kind -> next(now, kind, said)).orElse(List.of());
    }

    /** Behind a kind of finding. */
    private static List<String> found(Situation now, int place) {
        return place == 2 ? zones(now) : place > 2 ? List.of("length", "depth", "width", "±", "mm") : List.of();
    }

    private static List<String> next(Situation now, EntryKind kind, List<String> said) {
        int place = said.size();
        return switch (kind) {
            case TURN, SKIP -> move(now, said, true);
            case DRAW, FEED -> move(now, said, false);
            case FIND -> place == 1 ? kinds() : place == 3 ? zones(now) : List.of();
            case VIEW -> place == 1 ? views(now) : place == 2 ? List.of("with") : scopeTips(now);
            case AT -> place == 1 ? stations(now) : List.of();
            case WATCH -> parts(now);
            case ASK -> place == 1 ? rows(now) : parts(now);
            case DATUM, VANES -> place == 1 ? rows(now) : List.of();
            case PAD -> place == 1 ? pads(now) : List.of();
            case RECHECK -> place == 2 ? zones(now) : List.of();
            case NO_ACCESS, SAW -> place == 1 ? zones(now) : place == 2 ? List.of("all") : List.of("because", "photo");
            case OPEN -> place == 1 ? things(now) : List.of();
            case SHUT -> place == 1 ? quoted(now.ledger().openings().keySet()) : List.of();
            case TOOL_OUT, TOOL_IN -> tool(now, said);
            case SETTLE -> place == 1 ? questions(now) : place == 2 ? List.of("because") : List.of();
            case VOID -> place == 2 ? List.of("because") : List.of();
            case FACT -> place == 1 ? FACTS : List.of();
            case AGAIN -> place == 1 ? List.of("in") : place == 3 ? List.of("cycles", "hours", "days") : List.of();
            case HEAT -> place == 2 ? List.of("C", "F") : List.of();
            case PAUSE -> place == 1 ? List.of("held") : List.of();
            case IN,
                    CLEAR,
                    OUT,
                    LOOK,
                    HERE,
                    ROUND,
                    SLIP,
                    PHOTO,
                    LOST,
                    PROOF,
                    CONDITION,
                    REFER,
                    HANDOVER,
                    TAKEOVER,
                    NOTE -> List.of();
        };
    }

    private static List<String> tool(Situation now, List<String> said) {
        if (said.size() == 1) {
            return List.of("out", "in");
        }
        return said.size() == 2 && said.get(1).equals("in")
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
        return number && !said.contains("to")
                ? turned ? List.of("deg", "blades", "rev", "tool", "tooldeg", "±") : List.of("deg", "blades")
                : last.equals("through") ? stations(now) : List.of();
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
