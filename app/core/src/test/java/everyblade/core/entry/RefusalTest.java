package everyblade.core.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import everyblade.core.English;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In each line, {@code ^} stands before what is wrong; it is taken out before the line is read. */
class RefusalTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    ^trun 38                      | "trun" is not an entry; did you mean "turn"?
                    ^38                           | is not an entry
                    ^crak 3 tip                   | did you mean "crack"?
                    view^                         | expected a view, but the line ends
                    view p1 ^using fwd60          | expected the end of the line, found "using"
                    view p1 with^                 | expected a scope tip
                    view ^"p1                     | closing double quote is missing
                    view ^""                      | expected a name between the double quotes
                    view "p1"^c1                  | expected a space after the closing double quote
                    at a ^b                       | expected the end of the line
                    watch^                        | expected a part
                    in ^5s                        | expected the end of the line
                    turn^                         | expected how far
                    turn ^fast                    | expected how far
                    turn on ^-38                  | after "on" the number must not be negative
                    turn back ^-2 blades          | after "back" the number must not be negative
                    turn 38 ^turns                | expected deg, blades, rev, tool, tooldeg or the end of the line
                    turn 1^e5                     | expected deg, blades, rev, tool, tooldeg or the end of the line
                    turn 12.5^.3                  | this point does not belong
                    turn ^.5                      | expected how far
                    turn ^1234567890              | at most 9 digits
                    turn ^0.1234567890            | at most 9 digits
                    turn 38 ± ^-1.9               | must not be negative
                    turn 38 ±^                    | expected degrees after ±
                    turn 38 ± 2 ^blades           | expected degrees of the shaft
                    here 7 ± 1 ^blade             | expected degrees of the shaft
                    turn 38 in 45^                | expected s for seconds
                    turn 38 in ^0s                | more than 0
                    turn 38 in ^-5s               | must not be negative
                    turn 38 through a^            | expected the station where the move ended
                    turn 38 in 4s ^in 5s          | expected the end of the line
                    turn to^                      | expected the angle to reach
                    turn to ^on 210               | expected the angle to reach
                    draw 2 ^tool                  | does not move the scope tip
                    draw 2 ^tooldeg               | does not move the scope tip
                    out ^p1                       | expected the end of the line
                    round ^0                      | counted from 1
                    round 3 in 60s ^± 1           | expected the end of the line
                    here ^3.5                     | a whole number
                    here 3^x                      | expected a space after the number
                    here 3^-5                     | expected the end of the line
                    datum c1^                     | expected an airfoil number
                    datum c1 1 at^                | expected the shaft angle
                    find ^nik 3 tip               | did you mean "nick"?
                    find nick ^tip                | expected an airfoil number
                    find nick 3^                  | expected a zone
                    nick 3 ^0.8                   | expected a zone
                    nick 3 tip length^            | expected the length
                    nick 3 tip 0.8 ^length 0.9    | the length is said twice
                    nick 3 tip depth 1 mm ^width 2 | one unit
                    nick 3 tip 0.8 ^cm            | expected the end of the line
                    recheck ^tip                  | expected an airfoil number
                    recheck 14^-15 tip            | expected a space after the number
                    recheck 14^, tip looks bent   | expected a space after the number
                    recheck 14^± 1                | expected a space after the number
                    nick 3^,tip                   | expected a space after the number
                    noaccess ^,tip 3 because y    | expected a zone
                    photo a.jpg of 3^-5           | expected a space after the number
                    photo my ^file.jpg            | double quotes
                    photo a.jpg of^               | expected an airfoil number
                    saw tip 3^                    | expected "photo"
                    saw tip 3 photo a ^b          | double quotes
                    noaccess tip 3^               | expected "because" and a reason
                    noaccess tip 3 because^       | expected a reason
                    noaccess tip 3-^x because y   | expected the last airfoil number
                    noaccess c2 ^because y        | expected airfoil numbers such as 3, 3-5 or all
                    tool ^away wrench             | expected "out" or "in"
                    heat 40^                      | expected C or F
                    heat ^-300 C                  | no metal here is colder than -90 C
                    heat ^-131 F                  | no metal here is colder than -130 F
                    heat ^1,050 C                 | "1,050" may be read in two ways: write 1.050 or 1050
                    turn ^1,250                   | write 1.250 or 1250
                    turn back ^12,500 deg         | write 12.500 or 12500
                    skip ^-1,250                  | write -1.250 or -1250
                    turn to ^1,080                | write 1.080 or 1080
                    turn 38 ± ^1,250              | write 1.250 or 1250
                    turn 38 in ^1,200 s           | write 1.200 or 1200
                    datum c1 1 at ^2,160          | write 2.160 or 2160
                    nick 7 tip ^1,250             | write 1.250 or 1250
                    dent 7 tip depth ^1,250 mm    | write 1.250 or 1250
                    proof 0.8 mm at ^1,000 mm     | write 1.000 or 1000
                    again in ^1,250 cycles        | write 1.250 or 1250
                    fact hours ^8,412             | write 8.412 or 8412
                    proof 0.8 ^at 20 mm           | expected mm
                    fact hours^                   | expected its value
                    fact scope serial^            | expected its value
                    again in 25 ^weeks            | expected cycles, hours or days
                    pause ^hold                   | expected the end of the line
                    takeover ^held                | expected a name before "held"
                    settle 3 because^             | expected a reason
                    void ^K because y             | expected an entry's number
                    note^                         | expected a text
                    """)
    void points_at_what_is_wrong_and_says_what_was_expected(String marked, String message) {
        Refusal refusal = refusal(marked.replace("^", ""));
        assertThat(refusal.column()).as(English.say(refusal)).isEqualTo(marked.indexOf('^') + 1);
        assertThat(English.say(refusal)).contains(message);
    }

    @Test
    void columns_count_leading_spaces_and_whole_characters() {
        assertThat(refusal("  turn fast").column()).isEqualTo(8);
        assertThat(refusal("\tturn\tfast").column()).isEqualTo(7);
        assertThat(refusal("view \ud83d\udd27\ud83d\udd27 x").column()).isEqualTo(9);
    }

    @Test
    void an_empty_line_is_refused_at_its_first_column() {
        assertThat(refusal("").column()).isEqualTo(1);
        assertThat(refusal("   ").column()).isEqualTo(1);
        assertThat(English.say(refusal(""))).contains("expected an entry");
    }

    @Test
    void what_was_found_is_cut_short() {
        assertThat(English.say(refusal("x".repeat(1000)))).hasSizeLessThan(100).contains("xxx\u2026");
    }

    static Refusal refusal(String line) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> EntryParser.parse(line));
        assertThat(refusal).as("refusal of %s", line).isNotNull();
        return refusal;
    }
}
