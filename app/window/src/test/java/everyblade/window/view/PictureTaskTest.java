package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.entry.Kind;
import everyblade.core.entry.Refusal;
import everyblade.session.Answer;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.session.photo.Album;
import everyblade.session.photo.JobPhoto;
import everyblade.session.photo.PictureSize.Surface;
import everyblade.window.map.CellAt;
import everyblade.window.view.Marks.Tool;
import everyblade.window.view.PictureTask.Typed;
import java.nio.file.Path;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PictureTaskTest {

    private static final Marks TWO_LINES =
            Marks.none(640, 480).with(Tool.KNOWN, 0, 0, 400, 0).with(Tool.SIZE, 0, 50, 200, 50);

    @TempDir
    Path folder;

    private Session session;

    @BeforeEach
    void open() {
        Workshop workshop = Workshop.in(folder);
        workshop.picture("one.png");
        workshop.picture("two.png");
        session = workshop.counting("photo one.png", "turn on 30 ± 0", "photo two.png of 4 tip");
    }

    @AfterEach
    void close() {
        session.close();
    }

    private PictureTask task(int photo, Typed typed) {
        Album album = session.album();
        return new PictureTask(album, album.photos().get(photo), typed);
    }

    private PictureTask task(int photo, String known) {
        Typed first = PictureTask.first(session.album().photos().get(photo));
        return task(photo, new Typed(first.airfoil(), first.zone(), known, Kind.DENT));
    }

    @Test
    void beginsWithWhatAPersonNamedElseWithWhatIsLikely() {
        // The clock of the test stands still, so all that was turned was turned by then.
        assertThat(task(0, "").typed()).isEqualTo(new Typed("12", "", "", Kind.DENT));
        assertThat(task(1, "").typed()).isEqualTo(new Typed("4", "tip", "", Kind.DENT));
    }

    @Test
    void tellsWhenWhereAndOfWhichBladeThePictureLikelyIs() {
        assertThat(task(0, "").told(Workshop.ENGLISH, ZoneOffset.UTC))
                .containsExactly(
                        "Entry 4, made at 06:00", "Through p-r at Rotor", "Shaft at 30° ± 0°", "about blade 12");
        assertThat(task(1, "").told(Workshop.ENGLISH, ZoneOffset.UTC))
                .last()
                .isEqualTo("Entered as of 4; by the time about blade 12");
    }

    @Test
    void leadsFromStepToStepToTheSize() {
        Marks none = Marks.none(640, 480);

        assertThat(task(0, "").next(none, Workshop.ENGLISH)).contains("Set the two ends of a known length");
        assertThat(task(0, "").next(TWO_LINES, Workshop.ENGLISH)).contains("Type how long");
        assertThat(task(0, "38").next(none.with(Tool.KNOWN, 0, 0, 9, 0), Workshop.ENGLISH))
                .contains("Set the two ends of what is to be measured");
        assertThat(task(0, "38").size(none, Surface.UNKNOWN)).isEmpty();
        assertThat(task(0, "much").size(TWO_LINES, Surface.UNKNOWN)).isEmpty();
        assertThat(task(0, "20 ± 0.2").size(TWO_LINES, Surface.UNKNOWN))
                .hasValueSatisfying(size -> assertThat(size.text()).isEqualTo("10.00 ± 0.19 mm"));
    }

    @Test
    void writesAFindingThatIsKeptAsItStands() throws Refusal {
        PictureTask task = task(1, "20 ± 0.2");

        String entry = task.finding(
                session.state(),
                task.subject(),
                task.size(TWO_LINES, Surface.UNKNOWN).orElseThrow());

        assertThat(entry).isEqualTo("dent 4 tip length 10.00 ± 0.19 mm");
        assertThat(session.say(entry)).isInstanceOf(Answer.Kept.class);
        session.say("view p-v");
        assertThat(task.finding(
                        session.state(),
                        task.subject(),
                        task.size(TWO_LINES, Surface.UNKNOWN).orElseThrow()))
                .isEqualTo("r dent 4 tip length 10.00 ± 0.19 mm");
    }

    @Test
    void confirmsTheLikelyBladeByAnEntryWhileItsRowIsInView() throws Refusal {
        PictureTask task = task(0, new Typed("12", "root", "", Kind.NICK));

        assertThat(task.confirmation(session.state(), task.subject())).contains("photo one.png of 12 root");
        assertThat(session.say("photo one.png of 12 root")).isInstanceOf(Answer.Kept.class);
        session.say("view p-v");
        assertThat(task.confirmation(session.state(), task.subject())).isEmpty();
    }

    @Test
    void refusesAZoneThatTheRowHasNot() {
        assertThatThrownBy(
                        () -> task(0, new Typed("1", "pressure", "", Kind.NICK)).subject())
                .isInstanceOf(Refusal.class);
    }

    @Test
    void isFoundByTheCellThatItShows() {
        Album album = session.album();

        assertThat(PictureTask.about(album, session.state(), new CellAt("r", 4, 0)))
                .map(JobPhoto::entry)
                .contains(6);
        assertThat(PictureTask.about(album, session.state(), new CellAt("r", 5, 0)))
                .isEmpty();
        assertThat(PictureTask.about(album, session.state(), new CellAt("v", 4, 0)))
                .isEmpty();
    }
}
