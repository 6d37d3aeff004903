package everyblade.core.entry;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.English;
import everyblade.core.entry.Entry.Airfoils;
import everyblade.core.entry.Entry.Interval;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Entry.Size;
import everyblade.core.entry.Entry.Through;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What each verb says; where nothing else is said, {@code said(value, column)} is a value and where it stands. */
class EntryParserTest {

    private static final Airfoils ALL_AIRFOILS = new Airfoils(Optional.empty(), Optional.empty());

    @Nested
    class Seating_and_watching {

        @Test
        void view_names_a_view_and_may_name_a_scope_tip() throws Refusal {
            assertThat(parse("view p1-c1")).isEqualTo(new LookEntry.View(said("p1-c1", 6), none()));
            assertThat(parse("view p1-c1 with fwd60"))
                    .isEqualTo(new LookEntry.View(said("p1-c1", 6), some(said("fwd60", 17))));
        }

        @Test
        void at_names_a_station() throws Refusal {
            assertThat(parse("at mid")).isEqualTo(new LookEntry.At(said("mid", 4)));
        }

        @Test
        void watch_and_ask_name_parts() throws Refusal {
            assertThat(parse("watch tip pressure"))
                    .isEqualTo(new LookEntry.Watch(List.of(said("tip", 7), said("pressure", 11))));
            assertThat(parse("watch all")).isEqualTo(new LookEntry.Watch(List.of(said("all", 7))));
            assertThat(parse("ask c1 tip rpl"))
                    .isEqualTo(new FindingEntry.Ask(said("c1", 5), List.of(said("tip", 8), said("rpl", 12))));
        }

        @Test
        void in_clear_out_and_slip_stand_alone() throws Refusal {
            assertThat(parse("out")).isEqualTo(new LookEntry.Out());
            assertThat(parse("in")).isEqualTo(new LookEntry.In());
            assertThat(parse("clear")).isEqualTo(new LookEntry.Clear());
            assertThat(parse("slip")).isEqualTo(new TurnEntry.Slip());
        }
    }

    @Nested
    class Turning {

        @Test
        void turn_says_how_far_in_degrees_unless_a_unit_is_said() throws Refusal {
            assertThat(parse("turn 38")).isEqualTo(turn(by("38", Unit.DEG)));
            assertThat(parse("turn -38.5 deg")).isEqualTo(turn(by("-38.5", Unit.DEG)));
            assertThat(parse("turn +38,5°")).isEqualTo(turn(by("38.5", Unit.DEG)));
            assertThat(parse("turn 38deg")).isEqualTo(turn(by("38", Unit.DEG)));
            assertThat(parse("turn 2 tool")).isEqualTo(turn(by("2", Unit.TOOL)));
            assertThat(parse("turn 720 tooldeg")).isEqualTo(turn(by("720", Unit.TOOLDEG)));
            assertThat(parse("turn 3 blades")).isEqualTo(turn(by("3", Unit.BLADES)));
            assertThat(parse("turn 1 blade")).isEqualTo(turn(by("1", Unit.BLADES)));
            assertThat(parse("turn 0.25rev")).isEqualTo(turn(by("0.25", Unit.REV)));
        }

        /** Three digits behind a comma may be thousands; nothing else may. */
        @Test
        void a_comma_is_decimal_wherever_it_can_be_nothing_else() throws Refusal {
            assertThat(parse("turn 0,125")).isEqualTo(turn(by("0.125", Unit.DEG)));
            assertThat(parse("turn 1,25")).isEqualTo(turn(by("1.25", Unit.DEG)));
            assertThat(parse("turn 1,2500")).isEqualTo(turn(by("1.2500", Unit.DEG)));
            assertThat(parse("turn 1.250")).isEqualTo(turn(by("1.250", Unit.DEG)));
            assertThat(parse("turn 1250")).isEqualTo(turn(by("1250", Unit.DEG)));
        }

        @Test
        void on_and_back_give_the_sense() throws Refusal {
            assertThat(parse("turn on 38"))
                    .isEqualTo(turn(new Movement.By(some(Sense.ON), number("38"), Unit.DEG, none())));
            assertThat(parse("turn back 2 blades"))
                    .isEqualTo(turn(new Movement.By(some(Sense.BACK), number("2"), Unit.BLADES, none())));
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "turn 38 ±1.9",
                    "turn 38 ± 1.9",
                    "turn 38±1.9",
                    "turn 38± 1,9",
                    "turn 38 +-1,9",
                    "turn 38+-1.9",
                    "turn 38 +- 1.9",
                    "turn 38 deg±1.9",
                    "turn 38° ±1.9°",
                    "turn 38 ± 1.9 deg"
                })
        void an_error_may_be_typed_in_many_ways(String line) throws Refusal {
            Movement movement = new Movement.By(none(), number("38"), Unit.DEG, some(number("1.9")));
            assertThat(parse(line)).isEqualTo(turn(movement));
        }

        @Test
        void to_names_the_angle_to_reach() throws Refusal {
            assertThat(parse("turn to 210")).isEqualTo(turn(new Movement.To(none(), number("210"), none())));
            assertThat(parse("turn on to 210 ± 2"))
                    .isEqualTo(turn(new Movement.To(some(Sense.ON), number("210"), some(number("2")))));
            assertThat(parse("turn back to 210,5 deg"))
                    .isEqualTo(turn(new Movement.To(some(Sense.BACK), number("210.5"), none())));
        }

        @Test
        void time_and_stations_come_in_either_order() throws Refusal {
            Said<Movement> movement = said(by("38", Unit.DEG), 6);
            assertThat(parse("turn 38 in 45s through near far"))
                    .isEqualTo(new TurnEntry.Turn(
                            movement, some(number("45")), some(new Through(said("near", 24), said("far", 29)))));
            assertThat(parse("turn 38 through near far in 45 s"))
                    .isEqualTo(new TurnEntry.Turn(
                            movement, some(number("45")), some(new Through(said("near", 17), said("far", 22)))));
        }

        @Test
        void skip_draw_and_feed_move_alike() throws Refusal {
            Movement back = new Movement.To(some(Sense.BACK), number("90"), none());
            assertThat(parse("skip 38")).isEqualTo(new TurnEntry.Skip(said(by("38", Unit.DEG), 6)));
            assertThat(parse("skip back to 90")).isEqualTo(new TurnEntry.Skip(said(back, 6)));
            assertThat(parse("draw 30 in 20s"))
                    .isEqualTo(new TurnEntry.Draw(said(by("30", Unit.DEG), 6), some(number("20"))));
            assertThat(parse("draw back to 90")).isEqualTo(new TurnEntry.Draw(said(back, 6), none()));
            assertThat(parse("feed -2 blades")).isEqualTo(new TurnEntry.Feed(said(by("-2", Unit.BLADES), 6)));
            assertThat(parse("feed back to 90")).isEqualTo(new TurnEntry.Feed(said(back, 6)));
        }

        @Test
        void round_and_here_name_an_airfoil() throws Refusal {
            assertThat(parse("round 1 ± 0,5 in 60s"))
                    .isEqualTo(new TurnEntry.Round(said(1, 7), some(number("0.5")), some(number("60"))));
            assertThat(parse("round 1")).isEqualTo(new TurnEntry.Round(said(1, 7), none(), none()));
            assertThat(parse("here 14 +-0.5")).isEqualTo(new TurnEntry.Here(said(14, 6), some(number("0.5"))));
            assertThat(parse("here 14")).isEqualTo(new TurnEntry.Here(said(14, 6), none()));
        }

        @Test
        void look_may_take_time_and_go_through_stations() throws Refusal {
            assertThat(parse("look")).isEqualTo(new LookEntry.Look(none(), none()));
            assertThat(parse("look through a b in 5s"))
                    .isEqualTo(new LookEntry.Look(some(number("5")), some(new Through(said("a", 14), said("b", 16)))));
        }

        @Test
        void datum_and_pad_say_where_counting_starts() throws Refusal {
            assertThat(parse("datum c1 1")).isEqualTo(new TurnEntry.Datum(said("c1", 7), said(1, 10), none(), none()));
            assertThat(parse("datum c1 1 at -12,5 ± 0.5"))
                    .isEqualTo(new TurnEntry.Datum(
                            said("c1", 7), said(1, 10), some(said(number("-12.5"), 15)), some(number("0.5"))));
            assertThat(parse("pad gearbox")).isEqualTo(new TurnEntry.Pad(said("gearbox", 5)));
        }
    }

    @Nested
    class Airfoils_and_zones {

        @Test
        void find_says_kind_airfoil_zone_and_size() throws Refusal {
            assertThat(parse("find nick 3 tip/pressure/leading length 0.8 depth 0,2 width 1 ± 0.1 in"))
                    .isEqualTo(new FindingEntry.Find(
                            none(),
                            Kind.NICK,
                            said(3, 11),
                            said("tip/pressure/leading", 13),
                            new Size(
                                    some(number("0.8")),
                                    some(number("0.2")),
                                    some(number("1")),
                                    some(number("0.1")),
                                    LengthUnit.IN)));
        }

        @Test
        void the_short_form_gives_the_length_alone() throws Refusal {
            Size size = new Size(some(number("0.8")), none(), none(), none(), LengthUnit.MM);
            Entry nick = new FindingEntry.Find(none(), Kind.NICK, said(3, 6), said("tip", 8), size);
            assertThat(parse("nick 3 tip 0.8")).isEqualTo(nick);
            assertThat(parse("nick 3 tip 0,8mm")).isEqualTo(nick);
            assertThat(parse("nick 3 tip length 0.8 mm")).isEqualTo(nick);
        }

        @ParameterizedTest
        @ValueSource(strings = {"c2 nick 3 tip", "find c2 nick 3 tip", "c2 find nick 3 tip"})
        void another_row_may_stand_first(String line) throws Refusal {
            assertThat(EntryText.of(parse(line))).isEqualTo("find c2 nick 3 tip");
        }

        @Test
        void recheck_goes_on_in_free_words() throws Refusal {
            assertThat(parse("recheck 14 tip looks bent"))
                    .isEqualTo(new FindingEntry.Recheck(none(), said(14, 9), said("tip looks bent", 12)));
            assertThat(parse("recheck c2 14"))
                    .isEqualTo(new FindingEntry.Recheck(some(said("c2", 9)), said(14, 12), said("", 14)));
        }

        @Test
        void photo_may_be_of_an_airfoil_and_a_zone() throws Refusal {
            assertThat(parse("photo a.jpg")).isEqualTo(new FindingEntry.Photo(said("a.jpg", 7), none(), none()));
            assertThat(parse("photo \"my file.jpg\" of 3 tip"))
                    .isEqualTo(
                            new FindingEntry.Photo(said("my file.jpg", 7), some(said(3, 24)), some(said("tip", 26))));
        }

        @Test
        void saw_needs_a_picture() throws Refusal {
            assertThat(parse("saw c2 tip 3-5 photo a.jpg"))
                    .isEqualTo(new FindingEntry.Saw(
                            some(said("c2", 5)),
                            said("tip", 8),
                            new Airfoils(some(said(3, 12)), some(said(5, 14))),
                            said("a.jpg", 22)));
            assertThat(parse("saw tip 3 photo a.jpg"))
                    .isEqualTo(new FindingEntry.Saw(
                            none(),
                            said("tip", 5),
                            new Airfoils(some(said(3, 9)), some(said(3, 9))),
                            said("a.jpg", 17)));
        }

        @Test
        void noaccess_tells_a_row_from_a_zone_by_the_words_before_the_number() throws Refusal {
            assertThat(parse("noaccess tip 18–2, because wraps"))
                    .isEqualTo(new FindingEntry.NoAccess(
                            none(), said("tip", 10), new Airfoils(some(said(18, 14)), some(said(2, 17))), "wraps"));
            assertThat(parse("noaccess c2 tip all because no port"))
                    .isEqualTo(
                            new FindingEntry.NoAccess(some(said("c2", 10)), said("tip", 13), ALL_AIRFOILS, "no port"));
            assertThat(parse("noaccess c2 all because no port"))
                    .isEqualTo(new FindingEntry.NoAccess(none(), said("c2", 10), ALL_AIRFOILS, "no port"));
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "noaccess all because no port",
                    "noaccess all, because no port",
                    "noaccess all , because no port"
                })
        void noaccess_all_is_everything(String line) throws Refusal {
            assertThat(parse(line))
                    .isEqualTo(new FindingEntry.NoAccess(none(), said("all", 10), ALL_AIRFOILS, "no port"));
        }

        @Test
        void every_kind_of_finding_is_a_verb() throws Refusal {
            for (Kind kind : Kind.values()) {
                assertThat(EntryText.of(parse(kind.word() + " 3 tip"))).isEqualTo("find " + kind.word() + " 3 tip");
            }
        }
    }

    @Nested
    class Things_people_and_the_record {

        @Test
        void things_open_and_shut() throws Refusal {
            assertThat(parse("open p1")).isEqualTo(new RecordEntry.Open(said("p1", 6)));
            assertThat(parse("open \"pad cover\"")).isEqualTo(new RecordEntry.Open(said("pad cover", 6)));
            assertThat(parse("shut p1 torqued, lockwired"))
                    .isEqualTo(new RecordEntry.Shut(said("p1", 6), "torqued, lockwired"));
            assertThat(parse("shut p1")).isEqualTo(new RecordEntry.Shut(said("p1", 6), ""));
        }

        @Test
        void tools_go_out_and_in_and_are_lost() throws Refusal {
            assertThat(parse("tool out turning tool")).isEqualTo(new RecordEntry.ToolOut(said("turning tool", 10)));
            assertThat(parse("tool in \"turning tool\"")).isEqualTo(new RecordEntry.ToolIn(said("turning tool", 9)));
            assertThat(parse("lost 3\" bolt")).isEqualTo(new RecordEntry.Lost(said("3\" bolt", 6)));
        }

        @Test
        void conditions_are_kept() throws Refusal {
            assertThat(parse("vanes s1 shut")).isEqualTo(new TurnEntry.Vanes(said("s1", 7), said("shut", 10)));
            assertThat(parse("heat 40 C")).isEqualTo(new LookEntry.Heat(said(number("40"), 6), false));
            assertThat(parse("heat -4,5 °c")).isEqualTo(new LookEntry.Heat(said(number("-4.5"), 6), false));
            assertThat(parse("heat 104F")).isEqualTo(new LookEntry.Heat(said(number("104"), 6), true));
            assertThat(parse("proof 0.8mm at 20 mm"))
                    .isEqualTo(new LookEntry.Proof(said(number("0.8"), 7), said(number("20"), 16)));
            assertThat(parse("condition clean, a little oily"))
                    .isEqualTo(new LookEntry.Condition("clean, a little oily"));
            assertThat(parse("fact scope serial 123")).isEqualTo(new RecordEntry.Fact(said("scope serial", 6), "123"));
            assertThat(parse("fact Eye test May 2024"))
                    .isEqualTo(new RecordEntry.Fact(said("Eye test", 6), "May 2024"));
            assertThat(parse("fact scope B-0417")).isEqualTo(new RecordEntry.Fact(said("scope", 6), "B-0417"));
            assertThat(parse("fact \"scope\" serial 123"))
                    .isEqualTo(new RecordEntry.Fact(said("scope", 6), "serial 123"));
            assertThat(parse("fact hours 1204,5")).isEqualTo(new RecordEntry.Fact(said("hours", 6), "1204,5"));
            assertThat(parse("fact \"eye test\" May 2024"))
                    .isEqualTo(new RecordEntry.Fact(said("eye test", 6), "May 2024"));
        }

        @Test
        void people_hand_over() throws Refusal {
            assertThat(parse("pause")).isEqualTo(new RecordEntry.Pause(false));
            assertThat(parse("pause held")).isEqualTo(new RecordEntry.Pause(true));
            assertThat(parse("handover A. Reed")).isEqualTo(new RecordEntry.Handover("A. Reed"));
            assertThat(parse("takeover A. Reed")).isEqualTo(new RecordEntry.Takeover("A. Reed", false));
            assertThat(parse("takeover A. Reed HELD")).isEqualTo(new RecordEntry.Takeover("A. Reed", true));
            assertThat(parse("takeover \"Mary Held\"")).isEqualTo(new RecordEntry.Takeover("Mary Held", false));
        }

        @Test
        void what_stays_open_is_said_and_settled() throws Refusal {
            assertThat(parse("refer is 0.8 mm allowed?")).isEqualTo(new FindingEntry.Refer("is 0.8 mm allowed?"));
            assertThat(parse("again in 25 cycles"))
                    .isEqualTo(new FindingEntry.Again(said(number("25"), 10), Interval.CYCLES));
            assertThat(parse("again in 12,5 hours"))
                    .isEqualTo(new FindingEntry.Again(said(number("12.5"), 10), Interval.HOURS));
            assertThat(parse("again in 3 days"))
                    .isEqualTo(new FindingEntry.Again(said(number("3"), 10), Interval.DAYS));
            assertThat(parse("settle 12 because seen again, fine"))
                    .isEqualTo(new FindingEntry.Settle(said(12, 8), "seen again, fine"));
            assertThat(parse("void 7, because wrong blade")).isEqualTo(new RecordEntry.Void(said(7, 6), "wrong blade"));
            assertThat(parse("note  Anything \"at\" all, ± "))
                    .isEqualTo(new RecordEntry.Note("Anything \"at\" all, ±"));
        }
    }

    @Nested
    class Any_locale {

        @ParameterizedTest
        @ValueSource(strings = {"de", "tr", "ar-EG-u-nu-arab"})
        void reads_the_same_words_and_numbers(String language) throws Refusal {
            Locale before = Locale.getDefault();
            Locale.setDefault(Locale.forLanguageTag(language));
            try {
                assertThat(parse("TURN 1,5 BLADES")).isEqualTo(turn(by("1.5", Unit.BLADES)));
                assertThat(EntryText.of(parse("FIND NICK 3 TIP 1.5 IN"))).isEqualTo("find nick 3 TIP length 1.5 in");
                assertThat(parse("IN")).isEqualTo(new LookEntry.In());
                assertThat(parse("CLEAR")).isEqualTo(new LookEntry.Clear());
                assertThat(EntryText.of(parse("DISCOLOUR 3 TIP"))).isEqualTo("find discolour 3 TIP");
                assertThat(English.say(RefusalTest.refusal("note a\u0007"))).startsWith("U+0007 ");
                assertThat(English.say(RefusalTest.refusal("SKİP 3"))).contains("\"skip\"");
            } finally {
                Locale.setDefault(before);
            }
        }
    }

    private static Entry parse(String line) throws Refusal {
        return EntryParser.parse(line);
    }

    private static Entry turn(Movement movement) {
        return new TurnEntry.Turn(said(movement, 6), none(), none());
    }

    private static Movement by(String number, Unit unit) {
        return new Movement.By(none(), number(number), unit, none());
    }

    private static BigDecimal number(String digits) {
        return new BigDecimal(digits);
    }

    private static <T> Said<T> said(T value, int column) {
        return new Said<>(value, column);
    }

    private static <T> Optional<T> some(T value) {
        return Optional.of(value);
    }

    private static <T> Optional<T> none() {
        return Optional.empty();
    }
}
