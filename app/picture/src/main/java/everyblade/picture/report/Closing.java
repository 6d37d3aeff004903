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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The closing list: what is still open, told in short and in full. */
final class Closing {

    private Closing() {}

    /** Such as {@code 3 gaps; 1 tool; 2 findings}, what can do most harm first. */
    static String counts(ClosingList list) {
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        list.items().forEach(item -> counts.merge(item.kind(), 1, Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((kind, count) -> words.add(count(kind, count)));
        return String.join("; ", words);
    }

    private static String count(Kind kind, int count) {
        return switch (kind) {
            case TIP -> "the scope tip is still inside";
            case TOOL -> Telling.count(count, "tool") + " out";
            case LOST -> Telling.count(count, "thing") + " lost";
            case OPENING -> Telling.count(count, "opening");
            case PORT -> Telling.count(count, "port") + " looked through and not said to be open";
            case FINDING -> Telling.count(count, "finding") + " without an outcome";
            case COUNT -> Telling.count(count, "doubt") + " about the count";
            case SENT_BACK -> Telling.count(count, "question") + " of a reviewer";
            case GAP -> Telling.count(count, "gap");
            case RECHECK -> Telling.count(count, "recheck");
            case QUESTION -> Telling.count(count, "question");
            case INTERVAL -> Telling.count(count, "repeat") + " asked for and not entered";
            case REPEAT -> Telling.count(count, "repeat") + " due";
            case HANDOVER -> "a hand-over that nobody accepted";
            case FACT -> Telling.count(count, "fact") + " missing";
            case VOIDED -> (count == 1 ? "1 entry" : count + " entries") + " taken out";
            case NARROWED -> Telling.count(count, "row") + " asked for in part only";
            case ACCEPTED -> Telling.count(count, "acceptance") + " whose reason does not hold";
            case TIME -> Telling.count(count, "doubt") + " about times";
            case PHOTO -> Telling.count(count, "picture") + " that does not fit";
        };
    }

    /** What was taken away, accepted or only said, open or not: of all this whoever signs has to judge. */
    static List<String> onlySaid(ClosingList list) {
        List<String> lines = new ArrayList<>();
        list.items().stream()
                .filter(item -> item.kind().onlySaid())
                .map(OpenItem::line)
                .forEach(lines::add);
        list.told().stream().map(OpenItem::line).forEach(lines::add);
        list.accepted().forEach(accepted -> lines.add("accepted as not seen: " + accepted.line()));
        return lines;
    }

    /** One line for each thing that is open but the gaps, which are counted, and what is only said. */
    static List<String> lines(ClosingList list) {
        List<String> lines = new ArrayList<>();
        list.items().stream()
                .filter(item -> item.kind() != Kind.GAP
                        && item.kind() != Kind.FACT
                        && !item.kind().onlySaid())
                .map(OpenItem::line)
                .forEach(lines::add);
        List<OpenItem> facts = list.of(Kind.FACT);
        if (!facts.isEmpty()) {
            lines.add(facts.get(0).line()
                    + facts.stream()
                            .skip(1)
                            .map(fact ->
                                    ", " + fact.what().substring(fact.what().indexOf(": ") + 2))
                            .collect(Collectors.joining()));
        }
        int gaps = list.of(Kind.GAP).size();
        if (gaps > 0) {
            lines.add(Telling.count(gaps, "gap") + " in what was seen, see Gaps");
        }
        return lines;
    }

    /** The chapter. Gaps have one of their own. */
    static List<Block> of(ClosingList list) {
        Behind behind = list.behind();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Closing list"));
        if (list.any()) {
            blocks.addAll(open(list));
        } else {
            blocks.add(new Block.Paragraph(PageWords.of(
                    behind.any() ? "Nothing is open. Behind that stand: " + behind.told() + "." : "Nothing is open.")));
        }
        if (!list.told().isEmpty()) {
            blocks.add(new Block.Heading(2, "Not open, or no longer"));
            list.told().forEach(item -> blocks.add(new Block.Item(PageWords.of(item.line()))));
        }
        return blocks;
    }

    private static List<Block> open(ClosingList list) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(PageWords.of("Everything that is still open, what can do most harm first: "
                + counts(list) + ". As long as anything is here, every page of a report says INCOMPLETE.")));
        List<List<Cell>> rows = list.items().stream()
                .filter(item -> item.kind() != Kind.GAP)
                .map(Closing::row)
                .toList();
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(
                    List.of(
                            Column.of("", 1.1),
                            Column.of("what is open", 4.2),
                            Column.of("since", 1.9),
                            Column.of("what closes it", 3.4)),
                    rows));
        }
        return blocks;
    }

    private static List<Cell> row(OpenItem item) {
        boolean harmful = Set.of(Kind.TIP, Kind.TOOL, Kind.LOST, Kind.OPENING).contains(item.kind());
        Cell what = Cell.of(
                harmful ? PageWords.alert(item.what()) : PageWords.of(item.what()), PageWords.faint(item.where()));
        return List.of(
                Cell.of(PageWords.faint(item.kind().word())),
                item.where().isEmpty() ? Cell.of(what.lines().get(0)) : what,
                item.opened()
                        .map(entry -> Cell.of(
                                PageWords.of("entry " + entry.number() + ", " + entry.by()),
                                PageWords.faint(Telling.minute(entry.at()))))
                        .orElse(Cell.of("")),
                Cell.of(item.toDo()));
    }
}
