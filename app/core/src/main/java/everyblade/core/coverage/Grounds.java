package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Sights;
import everyblade.core.turning.Ledger;
import everyblade.core.turning.Situation;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import java.util.Map;
import java.util.Optional;

/**
 * What the cells of a computed row rest on beside what was watched: while it is the same, so are they.
 *
 * @param vanes positions of movable vanes by row
 * @param proof the finest line seen on the day's target
 * @param first where airfoil 1 stands, if that is known and some station cannot be brought to every airfoil
 */
record Grounds(Map<String, String> vanes, Optional<Stance.Proof> proof, Optional<Turn> first) {

    static Grounds of(Situation situation, Row row, Sights sights) {
        Ledger ledger = situation.ledger();
        return new Grounds(
                ledger.vanes(), ledger.proof(), sights.travels(row) ? Optional.empty() : Within.first(situation, row));
    }
}
