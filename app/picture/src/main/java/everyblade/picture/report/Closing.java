package everyblade.picture.report;

import everyblade.core.finding.closing.Behind;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.OpenItem;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The closing list: what is still open, told in short and in full. */
final class Closing {

    /** Left in the engine, or the engine left open. */
    private static final Set<Kind> HARMFUL = EnumSet.of(Kind.TIP, Kind.TOOL, Kind.LOST, Kind.OPENING);

    /** Of these there are many, told elsewhere. */
    private static final Set<Kind> COUNTED = EnumSet.of(Kind.GAP, Kind.FACT);

    private Closing() {}

    /** Such as {@code 3 gaps; 1 tool; 2 findings}, what can do most harm first. */
    static String counts(Reported job) {
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        job.closing().items().forEach(item -> counts.merge(item.kind(), 1, Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((kind, count) -> words.add(job.say("closing.count." + kind.name(), count)));
        return String.join("; ", words);
    }

    /**
     * All that is open, kind by kind with its count, what can do most harm first: each thing named as long as there is room,
     * of the rest the entries that opened it.
     *
     * @param most so many things are named, and so many entries of a kind
     */
    static List<PageWords> byKind(Reported job, int most) {
        List<PageWords> lines = new ArrayList<>();
        int room = most;
        for (Kind kind : Kind.values()) {
            List<OpenItem> items = job.closing().of(kind);
            if (items.isEmpty()) {
                continue;
            }
            boolean harmful = HARMFUL.contains(kind);
            boolean named = !COUNTED.contains(kind) && !kind.onlySaid() && (harmful || items.size() <= room);
            List<String> each = named
                    ? items.stream().map(item -> job.say(item.line())).toList()
                    : items.stream()
                            .flatMap(item -> item.opened().stream())
                            .map(entry -> Integer.toString(entry.number()))
                            .distinct()
                            .toList();
            room -= named ? items.size() : 0;
            String line = counted(job, kind, items.size(), named, each, most);
            lines.add(harmful ? PageWords.alert(line) : PageWords.of(line));
        }
        return lines;
    }

    private static String counted(Reported job, Kind kind, int items, boolean named, List<String> each, int most) {
        String count = job.say("closing.count." + kind.name(), items);
        if (each.isEmpty()) {
            return count;
        }
        String first = String.join(named ? "; " : ", ", each.subList(0, Math.min(most, each.size())));
        return job.say(named ? "first.named" : "first.byEntry", count, first, Math.max(0, each.size() - most));
    }

    /** What was taken away, accepted or only said, open or not: of all this whoever signs has to judge. */
    static List<String> onlySaid(Reported job) {
        ClosingList list = job.closing();
        List<String> lines = new ArrayList<>();
        list.items().stream()
                .filter(item -> item.kind().onlySaid())
                .map(item -> job.say(item.line()))
                .forEach(lines::add);
        list.told().stream().map(item -> job.say(item.line())).forEach(lines::add);
        list.accepted().forEach(accepted -> lines.add(job.say("closing.accepted", accepted.line())));
        return lines;
    }

    /** The chapter. Gaps have one of their own. */
    static List<Block> of(Reported job) {
        ClosingList list = job.closing();
        Behind behind = list.behind();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("closing")));
        if (list.any()) {
            blocks.addAll(open(job));
        } else {
            blocks.add(new Block.Paragraph(
                    PageWords.of(behind.any() ? job.say("closing.behind", behind) : job.say("closing.nothing"))));
        }
        if (!list.told().isEmpty()) {
            blocks.add(new Block.Heading(2, job.say("closing.told")));
            list.told().forEach(item -> blocks.add(new Block.Item(PageWords.of(job.say(item.line())))));
        }
        return blocks;
    }

    private static List<Block> open(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(PageWords.of(job.say("closing.all", counts(job), job.say("incomplete")))));
        List<List<Cell>> rows = job.closing().items().stream()
                .filter(item -> item.kind() != Kind.GAP)
                .map(item -> row(job, item))
                .toList();
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(
                    List.of(
                            Column.of("", 1.1),
                            Column.of(job.say("closing.what"), 4.2),
                            Column.of(job.say("closing.since"), 1.9),
                            Column.of(job.say("closing.toDo"), 3.4)),
                    rows));
        }
        return blocks;
    }

    private static List<Cell> row(Reported job, OpenItem item) {
        boolean harmful = HARMFUL.contains(item.kind());
        Cell what = Cell.of(
                harmful ? PageWords.alert(job.say(item.what())) : PageWords.of(job.say(item.what())),
                PageWords.faint(item.where().map(job::say).orElse("")));
        return List.of(
                Cell.of(PageWords.faint(job.say(item.kind()))),
                item.where().isEmpty() ? Cell.of(what.lines().get(0)) : what,
                item.opened()
                        .map(entry -> Cell.of(
                                PageWords.of(job.say("byEntry", entry.number(), entry.by())),
                                PageWords.faint(Telling.minute(entry.at()))))
                        .orElse(Cell.of("")),
                Cell.of(item.toDo().map(job::say).orElse("")));
    }
}
