package everyblade.core.finding.closing;

import everyblade.core.Engines;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.time.Duration;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Records that are whole but for one thing that was taken away, or only said: what, of which kind it is told, the record, words it is told with. */
final class PlantedFaults {

    private static final Duration SECOND = Duration.ofSeconds(1);
    static final Duration DAYS = Duration.ofDays(3);

    /** A rotor of 12 blades, 30° each, behind a port, of which a view shows the tips alone; roots are shown by none. */
    static Engine engine() {
        return new Engines()
                .row("c1", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                .port("p1")
                .viewThrough("p1", "v", "c1")
                .port("p2")
                .viewThrough("p2", "w", "c1")
                .view("edge", "c1", 0, 3, "tip")
                .built();
    }

    /** All is seen and shut, and nothing is open. */
    private static ToldRecord whole(UnaryOperator<ToldRecord> before) {
        ToldRecord record = new ToldRecord(engine());
        record.enter("fact hours 10", "fact cycles 4", "fact position left", "fact manual Invented", "fact revision 1");
        return before.apply(record)
                .enter("open p1", "view v", "datum c1 1", "round 1 in 60s", "out", "shut p1 torqued");
    }

    static ToldRecord whole() {
        return whole(record -> record);
    }

    private static Arguments fault(String what, Kind kind, ToldRecord record, String... words) {
        return Arguments.of(what, kind, record, words);
    }

    private static Arguments more(String what, Kind kind, String lines, String... words) {
        return fault(what, kind, whole().enter(lines.split("; ")), words);
    }

    /** Acceptances where nothing was looked at. */
    private static Arguments unseen(String what, String lines, String... words) {
        ToldRecord record = new ToldRecord(engine());
        record.enter(
                "note a", "note b", "note c", "note d", "note e", "open p1", "view v", "datum c1 1", "out", "shut p1");
        return fault(what, Kind.ACCEPTED, record.enter("note f").enter(lines.split("; ")), words);
    }

    static Stream<Arguments> taken() {
        return Stream.of(
                more("a finding", Kind.VOIDED, "nick 3 tip 1; void 12 because mistaken", "a finding", "nick 3"),
                more(
                        "a crack for a nick elsewhere",
                        Kind.VOIDED,
                        "crack 3 tip 4; void 12 because typo; nick 9 tip 1;" + " settle 14 because within table 2",
                        "a finding",
                        "crack 3"),
                more(
                        "an identification",
                        Kind.VOIDED,
                        "view edge; here 1; void 13 because mistaken; out",
                        "an identification",
                        "here 1"),
                more("a slip", Kind.VOIDED, "slip; void 12 because it did not slip", "a slip"),
                more("an opening", Kind.VOIDED, "open cover; void 12 because mistaken", "something opened", "cover"),
                more("a tool", Kind.VOIDED, "tool out lamp; void 12 because mistaken", "a tool", "lamp"),
                more("a thing lost", Kind.VOIDED, "lost nut; void 12 because mistaken", "a thing that was lost", "nut"),
                more("a recheck", Kind.VOIDED, "recheck 3 tip; void 12 because not needed", "a question", "recheck 3"),
                more("a question", Kind.VOIDED, "refer is it in; void 12 because not needed", "a question", "refer"),
                more(
                        "what showed a lost count",
                        Kind.VOIDED,
                        "open p1; view v; here 1; turn on 60; here 5;"
                                + " void 16 because misread; here 11; out; shut p1",
                        "showed a lost count",
                        "6 blades",
                        "here 5"),
                more(
                        "a move that a lost count came of",
                        Kind.VOIDED,
                        "open p1; view v; here 1; turn on 60; here 1; void 15 because not turned; out; shut p1",
                        "a lost count"),
                more(
                        "a void answered by ok",
                        Kind.VOIDED,
                        "lost nut; void 12 because mistaken; settle 13 because ok",
                        "a thing that was lost",
                        "answered in entry 14",
                        "ok"),
                more(
                        "part of the task",
                        Kind.NARROWED,
                        "ask c1 tip",
                        "only for tip",
                        "no longer for root",
                        "as Test said 2026-03-01T08:12:00Z"),
                more(
                        "part of the task, answered by fine",
                        Kind.NARROWED,
                        "ask c1 tip; settle 12 because fine",
                        "only for tip",
                        "fine"));
    }

    static Stream<Arguments> onlySaid() {
        return Stream.of(
                more(
                        "a finding settled by ok",
                        Kind.FINDING,
                        "nick 3 tip 1; settle 12 because ok",
                        "settled without",
                        "because ok"),
                more(
                        "a recheck settled by OK.",
                        Kind.RECHECK,
                        "recheck 3 tip; settle 12 because OK.",
                        "without a word"),
                more(
                        "a question settled by a dash",
                        Kind.QUESTION,
                        "refer is it in; settle 12 because --",
                        "refer is it"),
                more("a thing lost settled by n/a", Kind.LOST, "lost nut; settle 12 because n/a", "lost nut"),
                more(
                        "a repeat settled by passt",
                        Kind.REPEAT,
                        "again in 5 cycles; settle 12 because passt",
                        "again in 5"),
                unseen("accepted because ok", "noaccess root 3 because ok", "no reason in words", "1 cell"),
                unseen("accepted because of a dot", "noaccess all because .", "no reason in words"),
                unseen(
                        "accepted as shown by no view",
                        "noaccess tip all because no view shows it",
                        "12 cells, 12 of these can be seen through v, w, edge"),
                unseen("accepted as out of reach", "noaccess tip 2-4 because not accessible", "3 of these"),
                unseen("accepted as hidden", "noaccess everything because hidden by the struts", "24 cells"),
                unseen(
                        "accepted as not to be seen, in German",
                        "noaccess tip 5 because kein Blick zeigt es",
                        "which is not so"),
                unseen(
                        "accepted as hidden, answered by fine",
                        "noaccess tip 5 because cannot be seen; settle 12 because fine",
                        "answered in entry 13"),
                more("a port that nobody opened", Kind.PORT, "view w; out", "never said to be open", "entry 12"),
                more("a port that was shut", Kind.PORT, "open p1; view v; shut p1; look; out", "after it was shut"),
                more(
                        "a turn to half a blade and more",
                        Kind.COUNT,
                        "open p1; view v; turn on 30 ± 16; here 12; out;" + " shut p1",
                        "± wider than half",
                        "entry 14",
                        "30.0°"),
                more(
                        "a skip",
                        Kind.COUNT,
                        "open p1; view v; skip on 60 ± 20; here 11; out; shut p1",
                        "± wider than half"),
                more("an identification ± 20", Kind.COUNT, "open p1; view v; here 1 ± 20; out; shut p1", "here 1 ± 20"),
                more("a datum ± 20", Kind.COUNT, "open p1; view v; datum c1 1 ± 20; out; shut p1", "datum c1 1 ± 20"),
                more("a round ± 16", Kind.COUNT, "open p1; view v; round 1 ± 16; out; shut p1", "round 1 ± 16"),
                more(
                        "a lost count shared out",
                        Kind.COUNT,
                        "open p1; view v; here 1; turn on 36 ± 14; turn on 36 ± 14; turn on 36 ± 14; turn on 36 ± 14; turn on 36 ± 14; here 8; out; shut p1",
                        "shared out as if nothing was lost",
                        "1 blade"),
                fault(
                        "views without a time",
                        Kind.TIME,
                        new ToldRecord(engine())
                                .leastView("1")
                                .typed(Duration.ZERO)
                                .enter("open p1", "view v", "datum c1 1", "round 1", "out", "shut p1"),
                        "without a time",
                        "1 s",
                        "entry 4"),
                fault(
                        "a round in no time",
                        Kind.TIME,
                        whole().enter("open p1", "view v")
                                .after(SECOND)
                                .at("round 1")
                                .enter("out", "shut p1"),
                        "sooner than what is said can be done",
                        "entry 14",
                        "1 s after entry 13"),
                fault(
                        "a round in less time than it says",
                        Kind.TIME,
                        whole().enter("open p1", "view v")
                                .after(Duration.ofSeconds(20))
                                .at("round 1 in 60s")
                                .enter("out", "shut p1"),
                        "can be done",
                        "20 s"),
                fault(
                        "a skip in no time, times told",
                        Kind.TIME,
                        whole().typed(Duration.ofHours(1))
                                .enter("open p1", "view v")
                                .after(SECOND)
                                .at("skip on 355")
                                .enter("here 1 ± 5", "out", "shut p1"),
                        "can be done",
                        "skip on 355"),
                fault(
                        "time that runs back",
                        Kind.TIME,
                        whole().after(Duration.ofHours(-2)).at("note back"),
                        "time runs back at entry 12",
                        "note back"),
                fault(
                        "a clock set back",
                        Kind.TIME,
                        whole().typed(Duration.ofHours(2))
                                .enter("note a")
                                .typed(Duration.ofHours(1))
                                .enter("note b"),
                        "the machine's clock said",
                        "entry 13"),
                fault(
                        "a time to come",
                        Kind.TIME,
                        whole().typed(Duration.ofHours(-3))
                                .enter("note soon")
                                .live()
                                .after(Duration.ofHours(3))
                                .enter("note now"),
                        "typed before the time",
                        "note soon"),
                fault(
                        "one entry typed long after",
                        Kind.TIME,
                        whole().typed(DAYS).enter("nick 3 tip 1", "settle 12 because within table 2"),
                        "2 entries were typed long after",
                        "entry 13, settle 12",
                        "3 days later"),
                fault(
                        "typed long after, answered by ok",
                        Kind.TIME,
                        whole().typed(DAYS).enter("note a").after(DAYS).live().enter("settle 12 because ok"),
                        "typed long after",
                        "answered in entry 13"),
                fault(
                        "a picture of last year",
                        Kind.PHOTO,
                        whole().enter("photo a.jpg of 3").taken("2025-03-01T08:12:00"),
                        "a.jpg",
                        "another day",
                        "before this record begins"),
                fault(
                        "a picture of the week after",
                        Kind.PHOTO,
                        whole().enter("photo a.jpg").taken("2026-03-08T08:12:00"),
                        "another day",
                        "after the entry"),
                fault(
                        "a stated picture of another day",
                        Kind.PHOTO,
                        whole().enter("saw tip 3 photo b.jpg").taken("2026-02-01T10:00:00"),
                        "b.jpg",
                        "another day"),
                fault(
                        "a picture of another blade",
                        Kind.PHOTO,
                        atBladeOne("photo a.jpg of 7"),
                        "entered as of blade 7",
                        "about blade 1"),
                fault(
                        "a stated picture of other blades",
                        Kind.PHOTO,
                        atBladeOne("saw tip 5-8 photo a.jpg"),
                        "entered as of blade 5–8",
                        "about blade 1"),
                fault(
                        "a finding of the last record that nobody looked at again",
                        Kind.FINDING,
                        notSeen(""),
                        "the crack of the last record",
                        "its entry 12 of 2026-03-01",
                        "was not looked at again",
                        "blade 5, root"),
                fault(
                        "one at a place that is accepted for a reason that does not hold",
                        Kind.ACCEPTED,
                        notSeen("; noaccess root all because hidden"),
                        "which is not so"));
    }

    /** The last record has a crack at the root of blade 5; this one looked at the tips alone. */
    private static ToldRecord notSeen(String more) {
        ToldRecord record = new ToldRecord(engine());
        record.enter(("view edge; datum c1 1; round 1 in 60s; out" + more).split("; "));
        return record.since(whole().enter("crack 5 root 2", "settle 12 because watched"));
    }

    /** A picture taken while blade 1 stands at the reference, half a minute after it was said to. */
    private static ToldRecord atBladeOne(String line) {
        return whole().enter("open p1", "view v", "here 1", line)
                .taken("2026-03-01T08:14:30")
                .enter("out", "shut p1");
    }

    private PlantedFaults() {}
}
