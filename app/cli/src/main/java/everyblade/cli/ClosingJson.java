package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.OpenItem;
import everyblade.core.finding.closing.Risk;
import everyblade.words.Words;
import java.util.List;
import java.util.stream.Stream;

/** The closing list as JSON, in any order. */
final class ClosingJson {

    private ClosingJson() {}

    /** The list, in its order. */
    static ObjectNode of(ClosingList list, Words words) {
        return of(
                list, Stream.concat(list.items().stream(), list.told().stream()).toList(), false, words);
    }

    /** The list with what each thing puts at risk, the worst first. */
    static ObjectNode worstFirst(ClosingList list, Words words) {
        return of(list, Risk.worstFirst(list), true, words);
    }

    private static ObjectNode of(ClosingList list, List<OpenItem> items, boolean risk, Words words) {
        ObjectNode json = JsonText.object();
        ArrayNode open = json.putArray("open");
        for (OpenItem item : items) {
            ObjectNode one = open.addObject();
            one.put("kind", item.kind().word());
            one.put("what", words.say(item.what()));
            one.put("where", item.where().map(words::say).orElse(""));
            item.opened()
                    .ifPresentOrElse(
                            entry -> one.put("entry", entry.number())
                                    .put("by", entry.by())
                                    .put("at", entry.at().toString()),
                            () -> one.putNull("entry"));
            one.put("toDo", item.toDo().map(words::say).orElse(""));
            if (risk) {
                one.put("risk", Risk.of(item.kind()).number());
            }
        }
        for (ClosingList.Accepted accepted : list.accepted()) {
            ObjectNode one = open.addObject()
                    .put("kind", OpenItem.Kind.ACCEPTED.word())
                    .put("what", words.say(accepted.what()))
                    .put("where", "")
                    .put("entry", accepted.entry())
                    .put("by", accepted.by())
                    .put("because", accepted.reason())
                    .put("cells", accepted.against().cells())
                    .put("canBeSeen", accepted.against().canBeSeen())
                    .put("toDo", "");
            if (risk) {
                one.put("risk", Risk.RECORD.number());
            }
        }
        ArrayNode accepted = json.putArray("accepted");
        list.accepted()
                .forEach(each -> accepted.addObject()
                        .put("entry", each.entry())
                        .put("what", words.say(each.what()))
                        .put("because", each.reason())
                        .put("by", each.by()));
        return json;
    }
}
