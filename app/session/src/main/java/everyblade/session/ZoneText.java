package everyblade.session;

import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import everyblade.words.Words;

/** Zones of a row in few words of the person's language. */
public final class ZoneText {

    private ZoneText() {}

    public static String of(Situation now, Row row, ZoneSet zones, Words words) {
        return words.say(ZonePhrase.of(now.engine().zonings().get(row.id()), zones));
    }
}
