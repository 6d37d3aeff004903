package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Job;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Settings;
import everyblade.core.entry.TurnEntry;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a planned move says of its turning and of its minutes is what its entries do to whoever enters them. */
class ToldMovesTest {

    private static final Prices PRICES = Prices.of(Settings.USUAL);
    private static final int DECLARED = 120;
    private static final int COMPUTED = 3;

    /** What was done with some entries; angles in degrees, as of the record's readings, so but for whole turns. */
    private static final class Done {

        private double unwatched;
        private double watched;
        private OptionalDouble from = OptionalDouble.empty();
        private double minutes;
        /** Whether an airfoil was told, which sets the reading of the shaft anew. */
        private boolean told;

        static Done of(Job job, Move move) {
            Done done = new Done();
            move.entries().forEach(entry -> done.enter(job, entry, move));
            return done;
        }

        private void enter(Job job, Entry entry, Move move) {
            Situation before = job.fold().situation();
            job.enter(EntryText.of(entry));
            Situation after = job.fold().situation();
            boolean skips = entry instanceof TurnEntry.Skip || entry instanceof TurnEntry.Feed;
            boolean watches = entry instanceof TurnEntry.Turn
                    || entry instanceof TurnEntry.Round
                    || entry instanceof TurnEntry.Draw
                    || entry instanceof LookEntry.Look;
            if (skips) {
                unwatched += turned(before, after, before.seat().orElseThrow().row());
            }
            if (watches && from.isEmpty()) {
                double reading = before.reading(move.row()).degrees();
                from = OptionalDouble.of(move.drawn() ? move.view().reference() - reading : reading);
            }
            watched += watches ? turned(before, after, move.row()) : 0;
            told |= entry instanceof TurnEntry.Slip || entry instanceof TurnEntry.Round;
            minutes += entry instanceof RecordEntry.Open ? PRICES.port() : 0;
            minutes += entry instanceof LookEntry.View ? PRICES.view() : 0;
            minutes += entry instanceof LookEntry.At ? PRICES.station() : 0;
            minutes += EntryKind.of(entry).identifies() ? PRICES.identification() : 0;
        }

        private static double turned(Situation before, Situation after, Row row) {
            return after.reading(row).minus(before.reading(row)).degrees();
        }
    }

    private static List<Job> jobs() throws Exception {
        List<Job> jobs = new ArrayList<>();
        for (int play = 0; play <= 1; play++) {
            Job fresh = AnyJob.computed(play);
            for (int seed = 0; seed < COMPUTED; seed++) {
                jobs.add(AnyJob.computed(fresh, seed));
            }
        }
        for (int seed : AnyJob.numbers(DECLARED)) {
            jobs.add(AnyJob.declared(seed));
        }
        jobs.add(MidJob.fresh("tansy-a1", "t").enter("heat 20 C"));
        return jobs;
    }

    @Test
    void isWhatIsDone() throws Exception {
        int whole = 0;
        int known = 0;
        for (Job job : jobs()) {
            Plan plan = PlanBuilder.of(job.fold(), job.coverage(), PRICES);
            job.enter("heat 0 C");
            for (Move move : plan.moves()) {
                String which = move.entries().stream().map(EntryText::of).toList() + " of "
                        + job.fold().entries();
                Done done = Done.of(job, move);
                if (!done.told) {
                    assertSame(which, done.watched, move.sweep().doubleValue());
                    assertThat(List.of(-1, 1))
                            .as(which)
                            .anyMatch(sign -> off(done.unwatched
                                            - move.way().doubleValue()
                                            - sign * move.closing().doubleValue())
                                    < 1e-3);
                }
                move.from()
                        .map(BigDecimal::doubleValue)
                        .ifPresent(from -> assertSame(which, done.from.orElseThrow(), from));
                known += move.from().isPresent() ? 1 : 0;
                whole += move.sweep().abs().doubleValue() >= 360 ? 1 : 0;
                assertThat(move.minutes()).as(which).isCloseTo(minutes(done, move), within(1e-4));
            }
        }
        assertThat(whole).isGreaterThan(50);
        assertThat(known).isGreaterThan(50);
    }

    private static double minutes(Done done, Move move) {
        boolean searches = move.identifies().isPresent() && (move.from().isEmpty() || !move.round());
        return done.minutes
                + (searches ? PRICES.searching() : 0)
                + turning(move.closing())
                + turning(move.way())
                + PRICES.move()
                + 4 * move.sweep().abs().doubleValue() / 360;
    }

    private static double turning(BigDecimal degrees) {
        return degrees.signum() == 0 ? 0 : PRICES.move() + degrees.abs().doubleValue() / 360;
    }

    private static void assertSame(String which, double degrees, double told) {
        assertThat(off(degrees - told))
                .as("%s: %s°, told %s°", which, degrees, told)
                .isLessThan(1e-3);
    }

    private static double off(double degrees) {
        return Math.abs(degrees - 360 * Math.rint(degrees / 360));
    }
}
