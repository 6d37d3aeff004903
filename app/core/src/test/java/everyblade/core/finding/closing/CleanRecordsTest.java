package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.entry.TurnEntry;
import everyblade.core.move.Move;
import everyblade.core.move.Plan;
import everyblade.core.move.PlanBuilder;
import everyblade.core.move.Prices;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whole records, made by following what is next and by the habits of those who work with care: no alarm without a cause. */
class CleanRecordsTest {

    private static final int SAMPLE = 12;
    private static final int CAMPAIGN = 100;
    private static final int MOST_ROUNDS = 6;

    /** Two or three rotors, some of whose roots no view shows, each behind a port of its own. */
    private static Engine engine(SplittableRandom random) {
        Engines engines = new Engines();
        int rows = random.nextInt(2, 4);
        for (int row = 1; row <= rows; row++) {
            String port = "p" + row;
            engines.row("r" + row, RowKind.ROTOR, random.nextInt(7, 24), Direction.CW, 2, List.of(), false, 0)
                    .port(port)
                    .viewThrough(port, "v" + row, "r" + row);
        }
        engines.row("back", RowKind.ROTOR, random.nextInt(5, 12), Direction.CW, 2, List.of(), false, 0)
                .view("vb", "back", 90, 20, "tip");
        return engines.pad("pad", new Ratio(29, 77), random.nextInt(3) * 0.4, 0, 0)
                .built();
    }

    private static Duration some(SplittableRandom random, int least, int most) {
        return Duration.ofSeconds(random.nextInt(least, most));
    }

    /** All that is next, at the pace of hands. */
    private static void follow(ToldRecord record, SplittableRandom random) {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Plan plan = PlanBuilder.of(record.fold(), record.coverage(), Prices.of(Settings.of(Map.of())));
            if (plan.moves().isEmpty()) {
                return;
            }
            for (Move move : plan.moves()) {
                for (Entry entry : move.entries()) {
                    boolean moves = entry instanceof TurnEntry.Turn
                            || entry instanceof TurnEntry.Round
                            || entry instanceof TurnEntry.Skip;
                    record.after(moves ? some(random, 12, 90) : some(random, 2, 40))
                            .at(EntryText.of(entry));
                }
                habit(record, random);
            }
        }
    }

    private static int next(ToldRecord record) {
        return record.fold().entries().size() + 1;
    }

    /** What people do between: look, note, mistype and mend at once, come back to something. */
    private static void habit(ToldRecord record, SplittableRandom random) {
        record.after(some(random, 5, 30));
        int k = next(record);
        int blade = random.nextInt(1, 5);
        switch (random.nextInt(9)) {
            case 0 -> record.enter("look in 5s");
            case 1 -> record.enter("tool out lamp", "tool in lamp");
            case 2 ->
                record.enter(
                        "nick " + blade + " tip 0.4",
                        "void " + k + " because it was taken back at once",
                        "nick " + (blade + 1) + " tip 0.4",
                        "settle " + (k + 2) + " because within table 4 of the manual");
            case 3 -> record.enter("recheck " + blade + " tip streak", "settle " + k + " because wiped, it was oil");
            case 4 -> record.enter("tool out lap", "void " + k + " because typo", "tool out lamp", "tool in lamp");
            case 5 ->
                record.typed(Duration.ZERO)
                        .enter("note a batch", "note typed", "note afterwards")
                        .live();
            case 6 ->
                record.typed(Duration.ofMinutes(40))
                        .enter("note said from the sheet")
                        .live()
                        .after(Duration.ofMinutes(45));
            case 7 -> record.enter("photo a" + k + ".jpg").taken("2026-03-01T17:00:00");
            default -> record.enter("condition oily", "note wiped");
        }
    }

    private static ToldRecord clean(SplittableRandom random) {
        ToldRecord record = new ToldRecord(engine(random));
        record.enter("fact hours 10", "fact cycles 4", "fact position left", "fact manual Invented", "fact revision 1");
        follow(record, random);
        record.enter("out");
        List.copyOf(record.fold().situation().ledger().openings().keySet())
                .forEach(port -> record.enter("shut " + port + " torqued and sealed"));
        return record.enter("noaccess unshown because no view of this engine model shows it");
    }

    @Test
    void raiseNoMoreThanOneAlarmEach() {
        SplittableRandom random = new SplittableRandom(20261130);
        int records = Boolean.getBoolean("everyblade.campaign") ? CAMPAIGN : SAMPLE;
        int alarms = 0;
        for (int i = 0; i < records; i++) {
            ToldRecord record = clean(random.split());
            List<OpenItem> items = record.closing().items();
            assertThat(items)
                    .as("record %d: %s", i, items.stream().map(OpenItem::line).toList())
                    .hasSizeLessThanOrEqualTo(1);
            alarms += items.size();
        }
        assertThat(alarms).isLessThanOrEqualTo(records / 10);
    }
}
