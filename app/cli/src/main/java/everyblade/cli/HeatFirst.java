package everyblade.cli;

import everyblade.core.move.Move;
import everyblade.core.move.Plan;
import everyblade.core.turning.Situation;
import everyblade.spi.ScopeTip;
import java.util.List;
import java.util.Optional;

/**
 * That the metal must be measured before the scope tips of a plan are seated, since they bear only so much heat.
 *
 * @param scopeTips ids of those that need it
 * @param hottest what the one bears that bears least, °C
 */
record HeatFirst(List<String> scopeTips, double hottest) {

    /** Whether a plan that goes on from here needs it; not if the last reading is low enough. */
    static Optional<HeatFirst> of(Plan plan, Situation now) {
        List<ScopeTip> tips = plan.moves().stream()
                .filter(Move::seated)
                .flatMap(move -> move.view().scopeTip().stream())
                .distinct()
                .flatMap(id -> now.engine().model().scopeTip(id).stream())
                .filter(tip -> tip.hottest().isPresent())
                .filter(tip -> now.celsius().isEmpty()
                        || now.celsius().get().doubleValue() > tip.hottest().getAsDouble())
                .toList();
        return tips.isEmpty()
                ? Optional.empty()
                : Optional.of(new HeatFirst(
                        tips.stream().map(ScopeTip::id).toList(),
                        tips.stream()
                                .mapToDouble(tip -> tip.hottest().getAsDouble())
                                .min()
                                .orElseThrow()));
    }
}
