package everyblade.desktop.view;

import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.GapText;
import everyblade.core.turning.Situation;
import everyblade.desktop.words.Words;
import everyblade.spi.Row;
import java.util.regex.Pattern;

/** Zones of a row in few words of the person's language. */
final class ZoneText {

    private static final Pattern WORD = Pattern.compile("\\p{L}+[0-9]*");

    private ZoneText() {}

    static String of(Situation now, Row row, ZoneSet zones, Words words) {
        return told(GapText.zones(now.engine().zonings().get(row.id()), zones), words);
    }

    /** A zone as files name it, each word in the person's language. */
    static String told(String zone, Words words) {
        return WORD.matcher(zone)
                .replaceAll(match ->
                        words.has("zone." + match.group()) ? words.say("zone." + match.group()) : match.group());
    }
}
