package everyblade.session.photo;

import everyblade.core.angle.Turn;
import everyblade.core.entry.LookEntry;
import everyblade.core.finding.measure.Slant;
import everyblade.core.finding.photo.PhotoPlace;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.List;
import java.util.Optional;

/**
 * How slantwise, and from how far, the scope tip saw a part of an airfoil when a picture was taken, by the engine's
 * geometry: the mean over the facets that faced it, each by the share of the picture that it fills. Nobody knows which of
 * the facets is measured, so the slant is told larger by one and a half standard deviations: then 95 of 100 lengths
 * between random places of a zone, in rendered pictures of the models, lie within the uncertainty stated for them. What
 * stands in the way is not considered, for what is hidden is not measured.
 */
final class Sighting {

    /** Where no length along the slant could be told any more, degrees. */
    private static final double STEEPEST = 89;

    private static final double DEVIATIONS = 1.5;

    private final Situation situation;
    private final List<Logged> counting;
    private final JobPhoto photo;
    private final Subject subject;

    private Sighting(Fold fold, JobPhoto photo, Subject subject) {
        this.situation = fold.situation();
        this.counting = fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .takeWhile(logged -> logged.number() <= photo.place().entry())
                .toList();
        this.photo = photo;
        this.subject = subject;
    }

    /** Of a part of an airfoil; empty if its row has no shape, the view no station, or no facet of it was in view. */
    static Optional<Slant> of(Album album, JobPhoto photo, Subject subject) {
        try {
            Sighting sighting = new Sighting(album.fold(), photo, subject);
            Optional<Pose> pose = sighting.pose();
            Optional<Mesh> mesh = album.scene().airfoil(subject.row());
            return pose.isEmpty() || mesh.isEmpty() ? Optional.empty() : sighting.from(pose.get(), mesh.get());
        } catch (UnusableShape noSurface) {
            return Optional.empty();
        }
    }

    private Optional<Pose> pose() {
        Optional<View> view = photo.place().view();
        Optional<String> other = Optional.empty();
        Optional<String> moved = Optional.empty();
        for (Logged logged : counting) {
            if (logged.entry() instanceof LookEntry.View seated) {
                other = seated.scopeTip().map(said -> said.value());
                moved = Optional.empty();
            } else if (logged.entry() instanceof LookEntry.At at) {
                moved = Optional.of(at.station().value());
            }
        }
        String wanted = moved.orElse("");
        Optional<Station> station = view.flatMap(seen -> seen.stations().stream()
                .filter(each -> wanted.isEmpty() || each.id().equals(wanted))
                .findFirst());
        String tip = other.or(() -> view.flatMap(View::scopeTip)).orElse("");
        Optional<ScopeTip> scopeTip = situation.engine().model().scopeTips().stream()
                .filter(each -> each.id().equals(tip))
                .findFirst();
        return station.isEmpty() || scopeTip.isEmpty()
                ? Optional.empty()
                : Optional.of(Pose.of(station.get(), scopeTip.get()));
    }

    private Optional<Slant> from(Pose pose, Mesh mesh) {
        Facets facets = Facets.of(mesh);
        Seat seat = Seat.of(pose);
        double off = off();
        Mean mean = new Mean();
        for (double clock : new double[] {clock(), clock() - off, clock() + off}) {
            for (int facet = 0; facet < facets.count(); facet++) {
                if (subject.zones().contains(mesh.zone(facet))) {
                    seat.look(facets, facet, Math.toRadians(clock)).ifPresent(mean::add);
                }
            }
        }
        return mean.slant();
    }

    /** Clock angle at which the airfoil stood, degrees. */
    private double clock() {
        Row row = subject.row();
        PhotoPlace place = photo.place();
        double pitch = 360.0 / row.count() * row.numbering().sign();
        SmoothedTrack placing = situation.placing(row);
        Optional<SmoothedTrack.Place> first = place.moving() || isNamedLater()
                ? Optional.empty()
                : placing.at(row.id(), row.rock(), situation.stopAfter(row, place.entry()))
                        .place();
        double reference = place.view().map(View::reference).orElse(0.0);
        if (isNamedLater()) {
            return reference;
        }
        return first.map(SmoothedTrack.Place::best)
                .map(Turn::degrees)
                .map(clockOfFirst -> clockOfFirst + pitch * (subject.airfoil() - 1))
                .orElseGet(() ->
                        reference + pitch * (subject.airfoil() - place.airfoil().orElse(subject.airfoil())));
    }

    /**
     * Whether a person named an airfoil in an entry that says nothing of where that stood: entries may be typed long after,
     * and what is measured is brought to the middle of the picture first (common practice, no source).
     */
    private boolean isNamedLater() {
        return !photo.byCamera()
                && photo.place().airfoil().filter(n -> n == subject.airfoil()).isEmpty();
    }

    /** By how much that may be off, degrees: in the middle of a turn nobody knows better than half a pitch. */
    private double off() {
        double half = photo.place().moving() ? 180.0 / subject.row().count() : 0;
        return Math.max(half, photo.place().plusMinus());
    }

    /** What is seen of a facet: degrees from square, distance along the axis in mm, and its share of the picture. */
    private record Look(double incidence, double distance, double weight) {}

    /** Where the scope tip stands and looks, in the frame of the engine. */
    private record Seat(Pose pose, double[] eye, double[] forward) {

        static Seat of(Pose pose) {
            double clock = Math.toRadians(pose.clock().degrees());
            double sin = Math.sin(clock);
            double cos = Math.cos(clock);
            double tangential = pose.forward().tangential();
            double radial = pose.forward().radial();
            return new Seat(pose, new double[] {pose.x(), pose.r() * sin, pose.r() * cos}, new double[] {
                pose.forward().axial(), tangential * cos + radial * sin, radial * cos - tangential * sin
            });
        }

        /** At a facet of an airfoil that was turned from clock 0 to this angle, if it faces and is in view. */
        Optional<Look> look(Facets facets, int facet, double turned) {
            double sin = Math.sin(turned);
            double cos = Math.cos(turned);
            double[] to = {
                facets.centroid(facet, 0) - eye[0],
                facets.centroid(facet, 1) * cos + facets.centroid(facet, 2) * sin - eye[1],
                facets.centroid(facet, 2) * cos - facets.centroid(facet, 1) * sin - eye[2]
            };
            double[] normal = {
                facets.normal(facet, 0),
                facets.normal(facet, 1) * cos + facets.normal(facet, 2) * sin,
                facets.normal(facet, 2) * cos - facets.normal(facet, 1) * sin
            };
            double far = Math.sqrt(dot(to, to));
            double along = dot(to, forward);
            double facing = -dot(normal, to) / far;
            boolean inCone = along > far * Math.cos(Math.toRadians(pose.cone().degrees() / 2));
            return facing > 0 && inCone && far >= pose.near() && far <= pose.far()
                    ? Optional.of(new Look(
                            Math.toDegrees(Math.acos(Math.min(1, facing))),
                            along,
                            facets.area(facet) * facing / (far * far)))
                    : Optional.empty();
        }

        private static double dot(double[] a, double[] b) {
            return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
        }
    }

    /** The weighted mean of looks, and how far their distances spread. */
    private static final class Mean {

        private double weight;
        private double incidence;
        private double incidenceSquare;
        private double distance;
        private double square;

        void add(Look look) {
            weight += look.weight();
            incidence += look.weight() * look.incidence();
            incidenceSquare += look.weight() * look.incidence() * look.incidence();
            distance += look.weight() * look.distance();
            square += look.weight() * look.distance() * look.distance();
        }

        Optional<Slant> slant() {
            if (!(weight > 0)) {
                return Optional.empty();
            }
            double mean = distance / weight;
            double spread = Math.sqrt(Math.max(0, square / weight - mean * mean));
            double slant = incidence / weight;
            double slantSpread = Math.sqrt(Math.max(0, incidenceSquare / weight - slant * slant));
            return Optional.of(new Slant(Math.min(STEEPEST, slant + DEVIATIONS * slantSpread), mean, spread));
        }
    }
}
