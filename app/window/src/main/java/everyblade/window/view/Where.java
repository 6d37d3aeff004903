package everyblade.window.view;

import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.session.Effect;
import everyblade.session.JobState;
import everyblade.session.Keeping;
import everyblade.session.ZoneText;
import everyblade.spi.Pad;
import everyblade.spi.Spool;
import everyblade.words.Words;
import java.time.ZoneId;

/**
 * Where the tip and the rotor are, and what was kept last.
 *
 * @param place the view in use and how it looks
 * @param tip the same, and what is watched
 * @param rotor which airfoil is at the reference, and the shaft angle
 * @param pad how the shaft is turned; blank if nothing turns
 * @param padName where it is turned; blank if nothing turns
 * @param last the last entry
 */
public record Where(String place, String tip, String rotor, String pad, String padName, String last) {

    /** Where everything is now. */
    static Where of(JobState state, Words words, ZoneId zone) {
        Situation now = state.situation();
        return new Where(
                now.seat().map(seat -> place(seat, words)).orElseGet(() -> words.say("where.noView")),
                now.seat().map(seat -> tip(now, seat, words)).orElseGet(() -> words.say("where.noView")),
                now.seat().map(seat -> rotor(now, seat, words)).orElse(""),
                now.seat()
                        .flatMap(seat -> now.engine().spool(seat.row()))
                        .map(spool -> pad(now, spool, words))
                        .orElse(""),
                now.seat()
                        .flatMap(seat -> now.engine().spool(seat.row()))
                        .map(spool -> now.padOf(spool).name())
                        .orElse(""),
                state.last()
                        .map(last -> last(state, last, words, zone))
                        .orElseGet(() -> words.say("where.nothingKept")));
    }

    private static String place(Seat seat, Words words) {
        return words.say("where.place", view(seat), words.number(seat.view().reference(), 1));
    }

    private static String tip(Situation now, Seat seat, Words words) {
        String watched = ZoneText.of(now, seat.row(), seat.watching(), words);
        return words.say("where.tip", view(seat), words.number(seat.view().reference(), 1), watched);
    }

    private static String view(Seat seat) {
        return seat.view().id() + seat.station().map(at -> " @ " + at.id()).orElse("");
    }

    private static String rotor(Situation now, Seat seat, Words words) {
        String standing = Effect.standing(words, now, seat);
        String reading = words.number(now.reading(seat.row()).degrees(), 1);
        return now.engine().spool(seat.row()).isPresent()
                ? words.say("where.shaft", standing, reading)
                : words.say("where.static", standing);
    }

    private static String pad(Situation now, Spool spool, Words words) {
        Pad pad = now.padOf(spool);
        boolean one = pad.directions().size() == 1;
        return words.say(
                one ? "where.padOneWay" : "where.pad",
                words.number(pad.play(), 2),
                words.say("way." + spool.normal().word()));
    }

    private static String last(JobState state, Logged last, Words words, ZoneId zone) {
        return words.say(
                state.keeping() instanceof Keeping.InMemory ? "where.lastUnsafe" : "where.last",
                last.number(),
                last.text(),
                words.time(last.at(), zone),
                last.by());
    }
}
