package everyblade.core.entry;

import everyblade.core.entry.Entry.Airfoils;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Entry.Size;
import everyblade.core.entry.Entry.Through;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes an entry as the one line that says it: {@link EntryParser} reads that line back into an equal entry but for
 * the columns.
 *
 * <p>Verbs and words are in lower case, numbers have a decimal point, units that go without saying are left out, and
 * names are in double quotes only where they must be. Every entry that was read has such a line; texts that no line
 * can hold, such as empty ones or ones of several lines, never were.
 */
public final class EntryText {

    private static final String QUOTE = "\"";

    private EntryText() {}

    /** The line that says this entry. */
    public static String of(Entry entry) {
        return turning(entry)
                .or(() -> finding(entry))
                .or(() -> record(entry))
                .orElseThrow(() -> new IllegalStateException("no text for " + entry.getClass()));
    }

    /** A name as it stands in an entry: in double quotes where it would not be read as one word. */
    public static String name(String name) {
        return TypedText.isOneWord(name) ? name : quoted(name);
    }

    /** The name of a tool as it ends an entry: bare wherever it can be. */
    public static String nameToEnd(String name) {
        boolean bare = !name.startsWith(QUOTE)
                && !TypedText.isSpace(name.codePointAt(0))
                && !TypedText.isSpace(name.codePointBefore(name.length()));
        return bare ? name : quoted(name);
    }

    private static Optional<String> turning(Entry entry) {
        String line = null;
        if (entry instanceof Entry.View view) {
            line = "view " + name(view.view())
                    + view.scopeTip().map(tip -> " with " + name(tip)).orElse("");
        } else if (entry instanceof Entry.At at) {
            line = "at " + name(at.station());
        } else if (entry instanceof Entry.Watch watch) {
            line = "watch " + names(watch.parts());
        } else if (entry instanceof Entry.Ask ask) {
            line = "ask " + name(ask.row()) + " " + names(ask.parts());
        } else if (entry instanceof Entry.In) {
            line = "in";
        } else if (entry instanceof Entry.Clear) {
            line = "clear";
        } else if (entry instanceof Entry.Out) {
            line = "out";
        } else if (entry instanceof Entry.Turn turn) {
            line = "turn " + movement(turn.movement()) + seconds(turn.seconds()) + through(turn.through());
        } else if (entry instanceof Entry.Skip skip) {
            line = "skip " + movement(skip.movement());
        } else if (entry instanceof Entry.Round round) {
            line = "round " + round.airfoil().value() + plusMinus(round.plusMinus()) + seconds(round.seconds());
        } else if (entry instanceof Entry.Look look) {
            line = "look" + seconds(look.seconds()) + through(look.through());
        } else if (entry instanceof Entry.Draw draw) {
            line = "draw " + movement(draw.movement()) + seconds(draw.seconds());
        } else if (entry instanceof Entry.Feed feed) {
            line = "feed " + movement(feed.movement());
        } else if (entry instanceof Entry.Pad pad) {
            line = "pad " + name(pad.pad());
        } else if (entry instanceof Entry.Datum datum) {
            line = "datum " + name(datum.row()) + " " + datum.airfoil().value()
                    + datum.shaftAngle()
                            .map(angle -> " at " + number(angle.value()))
                            .orElse("")
                    + plusMinus(datum.plusMinus());
        } else if (entry instanceof Entry.Here here) {
            line = "here " + here.airfoil().value() + plusMinus(here.plusMinus());
        } else if (entry instanceof Entry.Slip) {
            line = "slip";
        }
        return Optional.ofNullable(line);
    }

    private static Optional<String> finding(Entry entry) {
        String line = null;
        if (entry instanceof Entry.Find find) {
            line = "find " + row(find.row()) + find.kind().word() + " "
                    + find.airfoil().value() + " " + name(find.zone()) + size(find.size());
        } else if (entry instanceof Entry.Recheck recheck) {
            line = "recheck " + row(recheck.row()) + recheck.airfoil().value()
                    + after(recheck.rest().value());
        } else if (entry instanceof Entry.Photo photo) {
            line = "photo " + name(photo.file())
                    + photo.airfoil().map(airfoil -> " of " + airfoil.value()).orElse("")
                    + photo.zone().map(zone -> " " + name(zone)).orElse("");
        } else if (entry instanceof Entry.Saw saw) {
            line = "saw " + row(saw.row()) + zones(saw.zone()) + " " + airfoils(saw.airfoils()) + " photo "
                    + name(saw.file());
        } else if (entry instanceof Entry.NoAccess noAccess) {
            line = "noaccess " + row(noAccess.row()) + zones(noAccess.zone()) + " " + airfoils(noAccess.airfoils())
                    + because(noAccess.reason());
        }
        return Optional.ofNullable(line);
    }

    private static Optional<String> record(Entry entry) {
        String line = null;
        if (entry instanceof Entry.Open open) {
            line = "open " + name(open.thing());
        } else if (entry instanceof Entry.Shut shut) {
            line = "shut " + name(shut.thing()) + after(shut.text());
        } else if (entry instanceof Entry.ToolOut out) {
            line = "tool out " + nameToEnd(out.tool().value());
        } else if (entry instanceof Entry.ToolIn in) {
            line = "tool in " + nameToEnd(in.tool().value());
        } else if (entry instanceof Entry.Lost lost) {
            line = "lost " + nameToEnd(lost.tool().value());
        } else if (entry instanceof Entry.Vanes vanes) {
            line = "vanes " + name(vanes.row()) + " " + name(vanes.position());
        } else if (entry instanceof Entry.Heat heat) {
            line = "heat " + number(heat.temperature().value()) + (heat.fahrenheit() ? " F" : " C");
        } else if (entry instanceof Entry.Proof proof) {
            line = "proof " + number(proof.size().value()) + " mm at "
                    + number(proof.distance().value()) + " mm";
        } else if (entry instanceof Entry.Condition condition) {
            line = "condition " + condition.words();
        } else if (entry instanceof Entry.Fact fact) {
            boolean longer = RecordRules.isFact(fact.name().value(), fact.value());
            line = "fact " + (longer ? quoted(fact.name().value()) : name(fact.name())) + " " + fact.value();
        } else if (entry instanceof Entry.Refer refer) {
            line = "refer " + refer.text();
        } else if (entry instanceof Entry.Again again) {
            line = "again in " + number(again.number().value()) + " " + word(again.interval());
        } else if (entry instanceof Entry.Pause pause) {
            line = "pause" + (pause.held() ? " held" : "");
        } else if (entry instanceof Entry.Handover handover) {
            line = "handover " + nameToEnd(handover.name());
        } else if (entry instanceof Entry.Takeover takeover) {
            line = "takeover " + nameBeforeHeld(takeover.name()) + (takeover.held() ? " held" : "");
        } else if (entry instanceof Entry.Settle settle) {
            line = "settle " + settle.entry().value() + because(settle.reason());
        } else if (entry instanceof Entry.Void voided) {
            line = "void " + voided.entry().value() + because(voided.reason());
        } else if (entry instanceof Entry.Note note) {
            line = "note " + note.text();
        }
        return Optional.ofNullable(line);
    }

    /** The word of an enum's constant. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static String movement(Said<Movement> said) {
        Movement movement = said.value();
        if (movement instanceof Movement.By by) {
            String unit = by.unit() == Unit.DEG ? "" : " " + word(by.unit());
            return sense(by.sense()) + number(by.number()) + unit + plusMinus(by.plusMinus());
        }
        Movement.To to = (Movement.To) movement;
        return sense(to.sense()) + "to " + number(to.angle()) + plusMinus(to.plusMinus());
    }

    private static String sense(Optional<Sense> sense) {
        return sense.map(which -> word(which) + " ").orElse("");
    }

    private static String number(BigDecimal number) {
        return number.toPlainString();
    }

    private static String plusMinus(Optional<BigDecimal> plusMinus) {
        return plusMinus.map(number -> " \u00b1 " + number(number)).orElse("");
    }

    private static String seconds(Optional<BigDecimal> seconds) {
        return seconds.map(number -> " in " + number(number) + "s").orElse("");
    }

    private static String through(Optional<Through> through) {
        return through.map(way -> " through " + name(way.from()) + " " + name(way.to()))
                .orElse("");
    }

    private static String size(Size size) {
        return size.length().map(number -> " length " + number(number)).orElse("")
                + size.depth().map(number -> " depth " + number(number)).orElse("")
                + size.width().map(number -> " width " + number(number)).orElse("")
                + plusMinus(size.plusMinus())
                + (size.unit() == LengthUnit.IN ? " in" : "");
    }

    private static String airfoils(Airfoils airfoils) {
        if (airfoils.first().isEmpty() || airfoils.last().isEmpty()) {
            return "all";
        }
        int first = airfoils.first().get().value();
        int last = airfoils.last().get().value();
        return first == last ? Integer.toString(first) : first + "-" + last;
    }

    private static String because(String reason) {
        return " because " + reason;
    }

    private static String after(String text) {
        return text.isEmpty() ? "" : " " + text;
    }

    private static String row(Optional<Said<String>> row) {
        return row.map(id -> (startsWithDigit(id.value()) ? quoted(id.value()) : name(id)) + " ")
                .orElse("");
    }

    private static boolean startsWithDigit(String text) {
        return text.charAt(0) >= '0' && text.charAt(0) <= '9';
    }

    private static String names(List<Said<String>> names) {
        return names.stream().map(EntryText::name).collect(Collectors.joining(" "));
    }

    private static String zones(Said<String> zones) {
        return Arrays.stream(zones.value().split(" and ", -1))
                .map(EntryText::name)
                .collect(Collectors.joining(" and "));
    }

    private static String name(Said<String> name) {
        return name(name.value());
    }

    private static String nameBeforeHeld(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith("held") ? quoted(name) : nameToEnd(name);
    }

    private static String quoted(String text) {
        return QUOTE + text.replace(QUOTE, QUOTE + QUOTE) + QUOTE;
    }
}
