package everyblade.json;

import everyblade.spi.Row;
import everyblade.spi.TaskCard;
import everyblade.spi.TaskCard.Asked;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads task cards: what is asked for of each row. */
final class TaskCardReader {

    private TaskCardReader() {}

    static List<TaskCard> cards(Fields model, References<Located<Row>> rows) {
        Ids ids = new Ids("task card", Set.of());
        List<TaskCard> cards = new ArrayList<>();
        for (Fields fields : model.objects("taskCards", "task card", "id", "name", "asks")) {
            String id = ids.required(fields);
            cards.add(new TaskCard(id, fields.text("name", id), asks(fields, rows)));
        }
        return cards;
    }

    private static List<Asked> asks(Fields card, References<Located<Row>> rows) {
        List<Asked> asks = new ArrayList<>();
        Set<String> before = new HashSet<>();
        card.required("asks");
        for (Fields fields : card.objects("asks", "row asked for by " + card.subject(), "row", "parts")) {
            Optional<Located<Row>> row = rows.required(fields, "row");
            String id = row.map(there -> there.value().id()).orElse("");
            if (row.isPresent() && !before.add(id)) {
                fields.log()
                        .error(
                                "asked-twice",
                                fields.place("row"),
                                card.subject() + " asks for the row " + id + " twice",
                                "the second time would take the place of the first",
                                "put all its parts into one");
            }
            asks.add(new Asked(
                    id, PartWords.read(fields, "parts", row, "nothing would be asked for", "name what is asked for")));
        }
        card.refuseEmpty("asks", "it asks for nothing", "name the rows that it asks for");
        return asks;
    }
}
