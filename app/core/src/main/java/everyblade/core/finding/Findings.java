package everyblade.core.finding;

import everyblade.core.entry.Entry;
import everyblade.core.entry.FindingEntry;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Remark;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The findings of a journal. */
public final class Findings {

    private Findings() {}

    /** All that are not void, in the order in which they were entered. */
    public static List<Finding> of(Fold fold) {
        return fold.situation().ledger().remarks().stream()
                .filter(remark -> remark.what() == Remark.What.FOUND)
                .map(remark -> finding(fold, remark))
                .toList();
    }

    private static Finding finding(Fold fold, Remark remark) {
        FindingEntry.Find find =
                (FindingEntry.Find) fold.entries().get(remark.entry() - 1).entry();
        return new Finding(
                remark.entry(),
                find.kind(),
                fold.situation().engine().rows().get(remark.row()),
                find.airfoil().value(),
                remark.zones(),
                sizes(find.size()));
    }

    /** The sizes of an entry, in mm. */
    public static Map<Dimension, Measured> sizes(Entry.Size size) {
        Map<Dimension, Measured> sizes = new EnumMap<>(Dimension.class);
        add(sizes, Dimension.LENGTH, size.length(), size);
        add(sizes, Dimension.DEPTH, size.depth(), size);
        add(sizes, Dimension.WIDTH, size.width(), size);
        return sizes;
    }

    private static void add(
            Map<Dimension, Measured> sizes, Dimension dimension, Optional<BigDecimal> value, Entry.Size size) {
        value.ifPresent(number -> sizes.put(
                dimension,
                new Measured(
                        Length.of(number, size.unit()),
                        size.plusMinus().map(plusMinus -> Length.of(plusMinus, size.unit())))));
    }
}
