package everyblade.json;

import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Warns of spools that turn nothing, or that cannot be turned as a job needs. */
record SpoolValidator(ModelValidator model) {

    void judge() {
        Set<String> used = new HashSet<>();
        model.rows().forEach(row -> row.value().spool().ifPresent(used::add));
        model.walls().forEach(wall -> wall.value().spool().ifPresent(used::add));
        for (Located<Spool> spool : model.spools()) {
            if (spool.from() == null) {
                continue;
            }
            if (!used.contains(spool.value().id())) {
                warn(
                        "unused-spool",
                        spool.from().place(),
                        "no row turns with the spool "
                                + Wording.plain(spool.value().id()),
                        "turning it would show nothing",
                        "put a rotor on it or delete it");
            }
            if (spool.sound()) {
                ofPads(spool);
            }
        }
    }

    private void ofPads(Located<Spool> located) {
        Spool spool = located.value();
        if (spool.pads().stream().noneMatch(pad -> pad.directions().contains(spool.normal()))) {
            warn(
                    "normal-not-allowed",
                    located.from().placeOf("pads"),
                    "no pad of the spool " + Wording.plain(spool.id()) + " turns it in its normal direction, "
                            + spool.normal().word(),
                    "every move \"on\" and every full turn would be refused",
                    "correct \"normal\" or the pads' \"directions\"");
        }
        Optional<Row> finest = model.soundRows().stream()
                .map(Located::value)
                .filter(row -> row.spool().equals(Optional.of(spool.id())))
                .max(Comparator.comparingInt(Row::count));
        List<Pad> pads = spool.pads();
        for (int i = 0; finest.isPresent() && i < pads.size(); i++) {
            if (pads.get(i).play() >= ModelValidator.halfPitch(finest.get())) {
                warn(
                        "play-of-half-a-pitch",
                        located.from().placeAt("/pads/" + i + "/play"),
                        "the play of the pad " + Wording.plain(pads.get(i).id()) + " is half a pitch of "
                                + ModelValidator.named(finest.get()) + " or more",
                        "the count is lost with the first move",
                        "correct it, or turn at another pad");
            }
        }
    }

    private void warn(String code, Place place, String what, String why, String mend) {
        model.log().warning(code, place, what, why, mend);
    }
}
