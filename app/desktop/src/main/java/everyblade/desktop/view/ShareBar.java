package everyblade.desktop.view;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.desktop.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * How much of something was seen: the four parts are shares of all its cells and make one together.
 *
 * @param name what it is
 * @param seen surely seen
 * @param part seen as far as it can be
 * @param maybe only maybe
 * @param told the numbers in words
 */
public record ShareBar(String name, double seen, double part, double maybe, String told) {

    /** The bars of one row: the whole, then each span band, side and chord band. */
    public static List<ShareBar> of(RowCoverage row, Words words) {
        Zoning zoning = row.zoning();
        List<ShareBar> bars = new ArrayList<>();
        bars.add(bar(row, row.row().id(), zoning.all(), words));
        for (int band = 0; band < zoning.spans().size(); band++) {
            bars.add(bar(row, words.map().zone(zoning.spans().get(band)), zoning.span(band), words));
        }
        for (int side = 0; side < zoning.sides().size(); side++) {
            bars.add(bar(row, words.map().zone(zoning.sides().get(side)), zoning.side(side), words));
        }
        for (int band = 0; band < zoning.chords().size(); band++) {
            bars.add(bar(row, words.map().zone(zoning.chords().get(band)), zoning.chord(band), words));
        }
        return bars;
    }

    private static ShareBar bar(RowCoverage row, String name, ZoneSet zones, Words words) {
        Tally tally = row.tally(zones);
        return new ShareBar(
                name,
                tally.seenShare(),
                tally.share(tally.part()),
                tally.share(tally.maybe()),
                words.say(
                        "share.told",
                        name,
                        words.percent(tally.seenShare()),
                        words.percent(tally.doneShare()),
                        words.percent(tally.share(tally.maybe())),
                        tally.cells()));
    }
}
