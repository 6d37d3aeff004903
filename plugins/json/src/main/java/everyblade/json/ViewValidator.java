package everyblade.json;

import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.View;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/** Judges views: whether the scope passes on the way in, and whether what they say has a meaning together. */
final class ViewValidator {

    private final ModelValidator model;
    private final Map<String, Located<Row>> rows;
    private final Map<String, ScopeTip> scopeTips;
    private final Map<String, Located<Port>> ports;

    ViewValidator(ModelValidator model) {
        this.model = model;
        this.rows = ModelValidator.byId(model.soundRows(), row -> row.value().id());
        this.scopeTips = ModelValidator.byId(model.scopeTips(), ScopeTip::id);
        this.ports = ModelValidator.byId(model.ports(), port -> port.value().id());
    }

    void judge() {
        for (Located<View> view : model.views()) {
            ofNothingSeen(view);
            if (view.sound()) {
                ofWayIn(view);
                new SectorValidator(model.log()).judge(view);
                Optional.ofNullable(rows.get(view.value().row())).ifPresent(row -> ofRow(view, row.value()));
            }
        }
    }

    private void ofNothingSeen(Located<View> view) {
        if (view.value().window().isEmpty() && view.value().stations().isEmpty()) {
            warn(
                    "blind-view",
                    view.from().place(),
                    named(view.value()) + " has neither a window nor a station",
                    "it sees nothing",
                    "add one of them");
        }
    }

    private void ofWayIn(Located<View> located) {
        View view = located.value();
        if (!view.stations().isEmpty() && view.scopeTip().isEmpty()) {
            warn(
                    "no-scope-tip",
                    located.from().place(),
                    named(view) + " has stations but names no scope tip",
                    "what they show cannot be computed without a cone of view",
                    "add \"scopeTip\"");
        }
        Optional<ScopeTip> tip = view.scopeTip().map(scopeTips::get);
        Optional<Located<Port>> port = view.port().map(ports::get).filter(Located::sound);
        if (tip.isEmpty() || port.isEmpty()) {
            return;
        }
        port.get().value().through().stream()
                .min(Comparator.comparingDouble(Port.Opening::diameter))
                .filter(narrowest -> narrowest.diameter() < tip.get().diameter())
                .ifPresent(narrowest -> model.log()
                        .error(
                                "tip-too-thick",
                                located.from().placeOf("scopeTip"),
                                "the scope tip " + Wording.plain(tip.get().id()) + " of " + named(view) + " is "
                                        + tip.get().diameter() + " mm thick",
                                Wording.quoted(narrowest.what()) + " of the port "
                                        + Wording.plain(port.get().value().id()) + " lets " + narrowest.diameter()
                                        + " mm pass",
                                "name a thinner scope tip or another port, or correct a diameter"));
    }

    private void ofRow(Located<View> located, Row row) {
        View view = located.value();
        double pitch = 2 * ModelValidator.halfPitch(row);
        double width = view.window().map(window -> 2 * window.halfWidth()).orElse(pitch / 2);
        if (width * row.count() > 360) {
            warn(
                    "wide-window",
                    located.from().placeOf("window"),
                    "the window of " + named(view) + " is wider than a pitch of " + ModelValidator.named(row),
                    "more than one airfoil is counted as seen at a time",
                    "make sure that all of it is seen well, or narrow it");
        }
        if (width == 0) {
            warn(
                    "narrow-window",
                    located.from().placeOf("window"),
                    "the window of " + named(view) + " has no width",
                    "an airfoil is in sight only while it stands exactly at the reference",
                    "state a \"halfWidth\" above 0");
        }
        if (view.aim() >= pitch / 2) {
            warn(
                    "aim-of-half-a-pitch",
                    located.from().placeOf("aim"),
                    "the aim of " + named(view) + " is half a pitch of " + ModelValidator.named(row) + " or more",
                    "one airfoil is easily taken for its neighbour",
                    "correct it, or aim at something sharper");
        }
        if (view.travels() && row.kind() == RowKind.ROTOR) {
            warn(
                    "travels-past-rotor",
                    located.from().placeOf("travels"),
                    named(view) + " travels past a rotor",
                    "a scope is drawn round only past what stands still; a rotor is turned",
                    "delete \"travels\"");
        }
        if (!view.stations().isEmpty() && view.window().isEmpty() && row.shape().isEmpty()) {
            warn(
                    "stations-without-shape",
                    located.from().placeOf("stations"),
                    named(view) + " has only stations but " + ModelValidator.named(row) + " has no shape",
                    "nothing can be computed, so that the view shows nothing",
                    "give the row a shape or the view a window");
        }
    }

    static String named(View view) {
        return "the view " + Wording.plain(view.id());
    }

    private void warn(String code, Place place, String what, String why, String mend) {
        model.log().warning(code, place, what, why, mend);
    }
}
