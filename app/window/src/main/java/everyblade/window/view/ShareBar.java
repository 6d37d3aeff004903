package everyblade.window.view;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Headline;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.picture.MapWords;
import everyblade.picture.ShareFigures;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * How much of something was seen: its parts are shares of all its cells and make one with what is not seen.
 *
 * @param name what it is
 * @param seen surely seen
 * @param part seen as far as it can be, which is half or more
 * @param glimpsed seen as far as it can be, which is less than half
 * @param maybe only maybe
 * @param figures what is left, surface seen, surface that no view shows
 * @param told the numbers in words
 */
public record ShareBar(
        String name, double seen, double part, double glimpsed, double maybe, String figures, String told) {

    /** The bars of one row: the whole, then each span band, side and chord band. */
    public static List<ShareBar> of(RowCoverage row, Words words) {
        Zoning zoning = row.zoning();
        List<ShareBar> bars = new ArrayList<>();
        bars.add(bar(row, row.row().id(), zoning.all(), words));
        for (int band = 0; band < zoning.spans().size(); band++) {
            bars.add(bar(row, MapWords.of(words).zone(zoning.spans().get(band)), zoning.span(band), words));
        }
        for (int side = 0; side < zoning.sides().size(); side++) {
            bars.add(bar(row, MapWords.of(words).zone(zoning.sides().get(side)), zoning.side(side), words));
        }
        for (int band = 0; band < zoning.chords().size(); band++) {
            bars.add(bar(row, MapWords.of(words).zone(zoning.chords().get(band)), zoning.chord(band), words));
        }
        return bars;
    }

    private static ShareBar bar(RowCoverage row, String name, ZoneSet zones, Words words) {
        return bar(name, row.tally(zones), row.headline(zones), words);
    }

    /** The bar of all rows whose states rest on the same as what leads. */
    public static ShareBar all(Coverage coverage, Words words) {
        Basis basis = coverage.leading();
        String name = words.say("share.all", MapWords.of(words).basis(basis));
        return bar(name, coverage.tally(basis), coverage.headline(basis), words);
    }

    private static ShareBar bar(String name, Tally tally, Headline headline, Words words) {
        ShareFigures figures = new ShareFigures(headline, MapWords.of(words));
        return new ShareBar(
                name,
                tally.seenShare(),
                tally.share(tally.part() - tally.glimpsed()),
                tally.share(tally.glimpsed()),
                tally.share(tally.maybe()),
                figures.brief(),
                words.say(
                        "share.told",
                        name,
                        figures.line(),
                        tally.cells(),
                        tally.seen(),
                        tally.part(),
                        tally.glimpsed(),
                        tally.maybe()));
    }
}
