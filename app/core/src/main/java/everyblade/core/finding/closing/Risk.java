package everyblade.core.finding.closing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What an open thing puts at risk, the worst last. */
public enum Risk {
    /** The record lacks something that others will ask for. */
    RECORD(1),
    /** Damage may be there that nobody saw, or nobody has decided about. */
    DAMAGE(2),
    /** Something may be left in the engine or open, or what is said may be true of other parts. */
    ENGINE(3);

    private final int number;

    Risk(int number) {
        this.number = number;
    }

    /** From 1, higher is worse. */
    public int number() {
        return number;
    }

    /** What things of a kind put at risk. */
    public static Risk of(OpenItem.Kind kind) {
        return switch (kind) {
            case TIP, TOOL, LOST, OPENING, PORT, COUNT -> ENGINE;
            case FINDING, GAP, RECHECK, QUESTION, SENT_BACK, INTERVAL, VOIDED, NARROWED, ACCEPTED, PHOTO -> DAMAGE;
            case REPEAT, HANDOVER, FACT, TIME -> RECORD;
        };
    }

    /** The open things of a list and what is told with them, the worst first; of gaps the largest. */
    public static List<OpenItem> worstFirst(ClosingList list) {
        List<OpenItem> items = new ArrayList<>(list.items());
        items.addAll(list.told());
        items.sort(Comparator.comparing((OpenItem item) -> of(item.kind()))
                .reversed()
                .thenComparing(OpenItem::kind)
                .thenComparingInt(item -> -item.gap()
                        .map(gap -> gap.airfoils().size() * gap.zones().size())
                        .orElse(0)));
        return items;
    }
}
