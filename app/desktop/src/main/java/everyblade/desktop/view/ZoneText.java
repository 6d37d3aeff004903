package everyblade.desktop.view;

import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.GapText;
import everyblade.core.turning.Situation;
import everyblade.desktop.words.Words;
import everyblade.spi.Row;

/** Zones of a row in few words of the person's language. */
final class ZoneText {

    private ZoneText() {}

    static String of(Situation now, Row row, ZoneSet zones, Words words) {
        return words.map().zone(GapText.zones(now.engine().zonings().get(row.id()), zones));
    }
}
