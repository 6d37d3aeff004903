package everyblade.window.view;

import everyblade.core.angle.Turn;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.FindingEntry;
import everyblade.core.sight.Criteria;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.picture.sight.TipPicture;
import everyblade.picture.sight.Vantage;
import everyblade.session.JobState;
import everyblade.session.photo.Album;
import everyblade.session.photo.PhotoImage;
import everyblade.spi.Row;
import everyblade.spi.Station;
import java.awt.image.BufferedImage;
import java.util.Optional;

/**
 * What the scope tip had before it: the picture that was taken, where an entry names one; else what is computed from the
 * shapes of the engine model. For one thread at a time.
 */
public final class TipSight {

    private static final int ACROSS = 260;

    private final Album album;
    private final Criteria criteria;
    private Optional<Vantage> last = Optional.empty();

    /** @param coverage by the criteria of which sight is judged */
    TipSight(Album album, Coverage coverage) {
        this.album = album;
        this.criteria = Criteria.of(coverage.settings());
    }

    /**
     * What a picture depends on; as long as it is the same, so is the picture.
     *
     * @param view id of the view in use
     * @param station id of its station; empty if it has none
     * @param first clock angle, as the scope tip sees it, at which airfoil 1 stands, tenths of a degree
     * @param photo the entry that names a picture, or 0
     */
    public record Aim(String view, Optional<String> station, long first, int photo) {}

    /** What there is to be seen; empty while nothing is in view, or nobody knows where the row stands. */
    static Optional<Aim> aim(JobState state) {
        Situation now = state.situation();
        Optional<Logged> entry = state.last().filter(logged -> logged.entry() instanceof FindingEntry.Photo);
        return now.seat()
                .flatMap(seat -> first(now, seat)
                        .map(first -> new Aim(
                                seat.view().id(),
                                seat.station().map(Station::id),
                                Math.round(first.wrapped().degrees() * 10),
                                entry.map(Logged::number).orElse(0))));
    }

    private static Optional<Turn> first(Situation now, Seat seat) {
        Row row = seat.row();
        return now.counting(row)
                ? now.placing(row)
                        .at(row.id(), row.rock(), now.stop(row))
                        .place()
                        .map(SmoothedTrack.Place::best)
                : Optional.empty();
    }

    /** The picture; empty if none was taken and none can be drawn. Takes a part of a second. */
    public Optional<BufferedImage> picture(JobState state) {
        return aim(state).flatMap(aim -> taken(aim).or(() -> drawn(state, aim)));
    }

    private Optional<BufferedImage> taken(Aim aim) {
        return album.find(String.valueOf(aim.photo()))
                .flatMap(photo -> PhotoImage.of(album.folder(), photo.kept()))
                .map(PhotoImage::image);
    }

    private Optional<BufferedImage> drawn(JobState state, Aim aim) {
        Seat seat = state.seat().orElseThrow();
        if (seat.station().isEmpty()
                || seat.row().shape().isEmpty()
                || seat.view().scopeTip().isEmpty()) {
            return Optional.empty();
        }
        try {
            Vantage vantage = last.filter(known -> known.view().id().equals(aim.view())
                            && aim.station().equals(Optional.of(known.station().id())))
                    .orElse(null);
            if (vantage == null) {
                vantage = Vantage.of(album.scene(), seat.view(), seat.station().get(), criteria);
                last = Optional.of(vantage);
            }
            return Optional.of(TipPicture.field(vantage, Turn.ofDegrees(aim.first() / 10.0), ACROSS));
        } catch (UnusableShape unusable) {
            return Optional.empty();
        }
    }
}
