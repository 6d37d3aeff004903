package everyblade.record.drill;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.practice.drill.Drill;
import everyblade.practice.drill.Truth;
import everyblade.practice.harm.Harm;
import everyblade.practice.harm.HarmKind;
import everyblade.practice.harm.Recipe;
import everyblade.practice.harm.Vector;
import everyblade.record.drill.Node.Garbled;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a drill and its truth are written. */
public final class DrillFile {

    private static final String SCHEMA = "everyblade/drill/1";
    private static final String NOTICE =
            "DRILL. Practice on an invented engine state; nothing in it is true of any engine, and nobody is qualified by it.";

    private DrillFile() {}

    /** What {@code drill.json} says. */
    public record Content(Drill drill, Sealed truth) {}

    /** The file of a drill. */
    public static byte[] write(Drill drill, Sealed truth) {
        ObjectNode node = Node.empty().object();
        node.put("schema", SCHEMA);
        node.put("notice", NOTICE);
        node.put("title", drill.title());
        node.put("mode", word(drill.mode()));
        node.put("task", drill.task());
        drill.views().forEach(node.putArray("views")::add);
        drill.kinds().forEach(kind -> node.withArray("kinds").add(word(kind)));
        node.put("examined", drill.examined());
        ObjectNode seal = node.putObject("truth");
        seal.put("commitment", truth.commitment());
        seal.put("salt", truth.salt());
        seal.put("box", truth.box());
        return new Node(node).bytes();
    }

    /** A drill as its file says; empty if it does not say one. */
    public static Optional<Content> read(byte[] bytes) {
        try {
            Node node = Node.read(bytes);
            List<HarmKind> kinds = new ArrayList<>();
            for (String kind : node.texts("kinds")) {
                kinds.add(kind(kind));
            }
            Drill drill = new Drill(
                    node.text("title"),
                    Node.word(node.text("mode"), word -> Drill.Mode.valueOf(word.toUpperCase(Locale.ROOT))),
                    node.text("task"),
                    node.texts("views"),
                    kinds,
                    node.flag("examined"));
            Node seal = node.node("truth");
            Sealed truth = new Sealed(seal.text("commitment"), seal.text("salt"), seal.text("box"));
            return node.text("schema").equals(SCHEMA) ? Optional.of(new Content(drill, truth)) : Optional.empty();
        } catch (Garbled | IllegalArgumentException garbled) {
            return Optional.empty();
        }
    }

    /** The truth as bytes, the same for the same truth. */
    public static byte[] write(Truth truth) {
        ObjectNode node = Node.empty().object();
        node.put("seed", truth.seed());
        Recipe recipe = truth.recipe();
        ObjectNode made = node.putObject("recipe");
        recipe.rows().forEach(made.putArray("rows")::add);
        recipe.kinds().forEach(kind -> made.withArray("kinds").add(word(kind)));
        made.put("damage", recipe.damage());
        made.put("harmless", recipe.harmless());
        made.put("least", recipe.least());
        made.put("most", recipe.most());
        made.put("grime", recipe.grime());
        ObjectNode standing = node.putObject("standing");
        truth.standing().forEach(standing::put);
        ArrayNode harms = node.putArray("harms");
        truth.harms().forEach(harm -> write(harm, harms.addObject()));
        return new Node(node).bytes();
    }

    private static void write(Harm harm, ObjectNode node) {
        node.put("kind", word(harm.kind()));
        node.put("row", harm.row());
        node.put("airfoil", harm.airfoil());
        harm.zones().forEach(node.putArray("zones")::add);
        node.put("face", harm.face());
        node.put("size", harm.size());
        write(harm.at(), node.putObject("at"));
        write(harm.normal(), node.putObject("normal"));
        write(harm.along(), node.putObject("along"));
        write(harm.into(), node.putObject("into"));
        node.put("seed", harm.seed());
    }

    private static void write(Vector vector, ObjectNode node) {
        node.put("x", vector.x());
        node.put("y", vector.y());
        node.put("z", vector.z());
    }

    /** The truth that bytes say; empty if they do not. */
    public static Optional<Truth> readTruth(byte[] bytes) {
        try {
            Node node = Node.read(bytes);
            Node made = node.node("recipe");
            List<HarmKind> kinds = new ArrayList<>();
            for (String kind : made.texts("kinds")) {
                kinds.add(kind(kind));
            }
            Recipe recipe = new Recipe(
                    made.texts("rows"),
                    kinds,
                    (int) made.whole("damage"),
                    (int) made.whole("harmless"),
                    made.number("least"),
                    made.number("most"),
                    made.number("grime"));
            List<Harm> harms = new ArrayList<>();
            for (Node harm : node.nodes("harms")) {
                harms.add(harm(harm));
            }
            return Optional.of(new Truth(node.whole("seed"), recipe, harms, node.numbers("standing")));
        } catch (Garbled | IllegalArgumentException garbled) {
            return Optional.empty();
        }
    }

    private static Harm harm(Node node) throws Garbled {
        return new Harm(
                kind(node.text("kind")),
                node.text("row"),
                (int) node.whole("airfoil"),
                node.texts("zones"),
                (int) node.whole("face"),
                node.number("size"),
                vector(node.node("at")),
                vector(node.node("normal")),
                vector(node.node("along")),
                vector(node.node("into")),
                (int) node.whole("seed"));
    }

    private static Vector vector(Node node) throws Garbled {
        return new Vector(node.number("x"), node.number("y"), node.number("z"));
    }

    private static HarmKind kind(String word) throws Garbled {
        return Node.word(word, each -> HarmKind.valueOf(each.toUpperCase(Locale.ROOT)));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
