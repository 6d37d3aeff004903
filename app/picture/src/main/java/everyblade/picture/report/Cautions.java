package everyblade.picture.report;

import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;

/** The chapter of cautions: common practice, in plain words; the manual in force goes before all of it. */
final class Cautions {

    private record Caution(String when, List<String> lines) {}

    private static final List<Caution> ALL = List.of(
            new Caution(
                    "Before anything is opened",
                    List.of(
                            "The engine is made safe and locked out, so that nobody can motor or start it.",
                            "Igniters are switched off, and their energy is discharged; wait as long as the manual"
                                    + " says before touching them.",
                            "Fuel and vapour may stand behind nozzle ports: drained and aired, no flame, no sparks.",
                            "Movable vanes and doors are secured against moving, and wind cannot turn the rotor.")),
            new Caution(
                    "Heat",
                    List.of("The metal is at or below what the scope's maker allows before the tip goes in, measured"
                            + " on the metal itself and not read from a gas gauge.")),
            new Caution(
                    "Turning",
                    List.of(
                            "The scope tip is clear of what turns, and so are fingers, before each move.",
                            "The one who turns and the one who looks use agreed words, and turn only the allowed way.")),
            new Caution(
                    "The scope",
                    List.of(
                            "Its bending is unlocked and straight before it is pushed or pulled; it is never forced.",
                            "It is never left inside with nobody at it.")),
            new Caution(
                    "At the end",
                    List.of(
                            "Turning tool and adapter are out before anyone motors or starts the engine.",
                            "Ports, plugs, covers, tools and lights are counted out by name; a second person looks.")));

    private Cautions() {}

    static List<Block> of() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Cautions"));
        blocks.add(
                new Block.Paragraph(PageWords.of("Common practice, for those who go on from this report. The manual in"
                        + " force and the local rules go before it, and licensed people decide.")));
        for (Caution caution : ALL) {
            blocks.add(new Block.Paragraph(PageWords.strong(caution.when())));
            caution.lines().forEach(line -> blocks.add(new Block.Item(PageWords.of(line))));
        }
        return blocks;
    }
}
