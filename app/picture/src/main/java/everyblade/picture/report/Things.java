package everyblade.picture.report;

import everyblade.core.entry.Entry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.turning.Logged;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import everyblade.spi.Port;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The chapter on openings and tools: what was opened or taken out, and whether it is shut or back. */
final class Things {

    private Things() {}

    static List<Block> of(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("things")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("things.told"))));
        blocks.addAll(table(job, "things.openings", passages(job, true)));
        blocks.addAll(table(job, "things.tools", passages(job, false)));
        List<Reported.Told<RecordEntry.Lost>> lost = job.told(RecordEntry.Lost.class);
        for (Reported.Told<RecordEntry.Lost> each : lost) {
            int number = each.logged().number();
            boolean open = job.situation().ledger().questions().containsKey(number);
            String words = job.say("things.lost", each.entry().tool().value(), number, open);
            blocks.add(new Block.Item(open ? PageWords.alert(words) : PageWords.of(words)));
        }
        return blocks;
    }

    /** A port of the model with its name, or the thing as it was said. */
    static String name(Reported job, String thing) {
        return job.model()
                .port(thing)
                .map(Port::name)
                .map(name -> name + " (" + thing + ")")
                .orElse(thing);
    }

    /** One opening and, if it came to that, its shutting; of a tool, leaving and coming back. */
    private record Passage(String thing, Logged from, Logged to, String text) {}

    private static List<Passage> passages(Reported job, boolean openings) {
        List<Passage> passages = new ArrayList<>();
        Map<String, Integer> open = new LinkedHashMap<>();
        for (Logged logged : job.counting()) {
            Entry entry = logged.entry();
            if (openings && entry instanceof RecordEntry.Open opened) {
                open.put(opened.thing().value(), passages.size());
                passages.add(new Passage(opened.thing().value(), logged, null, ""));
            } else if (openings && entry instanceof RecordEntry.Shut shut) {
                close(passages, open.remove(shut.thing().value()), logged, shut.text());
            } else if (!openings && entry instanceof RecordEntry.ToolOut out) {
                open.put(out.tool().value(), passages.size());
                passages.add(new Passage(out.tool().value(), logged, null, ""));
            } else if (!openings && entry instanceof RecordEntry.ToolIn in) {
                close(passages, open.remove(in.tool().value()), logged, "");
            }
        }
        return passages;
    }

    private static void close(List<Passage> passages, Integer index, Logged logged, String text) {
        if (index != null) {
            Passage passage = passages.get(index);
            passages.set(index, new Passage(passage.thing(), passage.from(), logged, text));
        }
    }

    private static List<Block> table(Reported job, String key, List<Passage> passages) {
        if (passages.isEmpty()) {
            return List.of(
                    new Block.Heading(2, job.say(key)), new Block.Paragraph(PageWords.of(job.say(key + ".none"))));
        }
        List<List<Cell>> rows = passages.stream()
                .map(passage -> List.of(
                        Cell.of(name(job, passage.thing())),
                        Cell.of(Telling.when(job, passage.from())),
                        passage.to() == null
                                ? Cell.of(PageWords.alert(job.say(key + ".not")))
                                : Cell.of(Telling.when(job, passage.to())),
                        Cell.of(passage.text())))
                .toList();
        return List.of(
                new Block.Heading(2, job.say(key)),
                new Block.Table(
                        List.of(
                                Column.of(job.say("column.what"), 3),
                                Column.of(job.say(key + ".from"), 3),
                                Column.of(job.say(key + ".to"), 3),
                                Column.of(job.say("things.remark"), 3)),
                        rows));
    }
}
