package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import everyblade.window.view.Act;
import everyblade.window.view.Choices;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where things stand in a job's screen, what is chosen, and that nothing of it slides or is cut off. */
class WindowLayoutTest extends WithAJob {

    private static Rectangle place(Offscreen screen, String name) {
        screen.paint();
        return Offscreen.on(() -> {
            JComponent root = screen.screen().component();
            Component found = Offscreen.find(root, Component.class, name);
            return SwingUtilities.convertRectangle(found.getParent(), found.getBounds(), root);
        });
    }

    private static String filedOn(Offscreen screen) {
        return Offscreen.on(() -> Offscreen.find(screen.screen().component(), JLabel.class, "filed on")
                .getText());
    }

    @Nested
    class TheChosenRow {

        @Test
        void isAtFirstTheOneInView() {
            assertThat(filedOn(screen())).isEqualTo("on r");
        }

        @Test
        void takenFromTheListIsTheOneThatAFindingIsFiledOn() {
            Offscreen screen = screen();
            Offscreen.on(() -> {
                JList<?> rows = Offscreen.find(screen.screen().component(), JList.class, "rows");
                rows.setSelectedIndex(1);
                return true;
            });

            assertThat(filedOn(screen)).isEqualTo("on v");
            assertThat(screen.screen().stages().chosen()).isEqualTo("v");
        }

        @Test
        void ofASelectedCellIsTakenInTheListAndNamedWithItsAirfoil() {
            Offscreen screen = screen();
            Offscreen.on(() -> {
                screen.screen().stages().select(new CellAt("v", 3, 0));
                screen.screen().act(Act.FIND);
                return true;
            });

            JList<?> rows = Offscreen.find(screen.screen().component(), JList.class, "rows");
            assertThat(Offscreen.<Integer>on(rows::getSelectedIndex)).isEqualTo(1);
            screen.press("finding add");
            if (workshop.kept().size() == 3) {
                screen.strike(KeyEvent.VK_ENTER, KeyEvent.KEY_LOCATION_STANDARD); // not in view: asked about once
            }
            assertThat(workshop.kept()).last().asString().startsWith("v nick 3 ");
        }

        @Test
        void followsTheViewWhenAnotherRowComesIntoView() {
            Offscreen screen = screen();
            Offscreen.on(() -> {
                screen.screen().stages().select(new CellAt("r", 3, 0));
                return true;
            });
            screen.enter("view p-v");

            assertThat(filedOn(screen)).isEqualTo("on v");
            assertThat(screen.screen().stages().selected()).isEmpty();
        }
    }

    @Test
    void nothingShiftsUnderAFingerWhenSomethingIsTyped() {
        Offscreen screen = screen();
        Rectangle entry = place(screen, "entry");
        Rectangle map = place(screen, "map");
        Rectangle look = place(screen, "act LOOK");
        for (String typed : List.of("t", "turn on 60", "skip on 90", "turn on many")) {
            screen.type(typed);
            assertThat(place(screen, "entry")).as(typed).isEqualTo(entry);
            assertThat(place(screen, "map")).as(typed).isEqualTo(map);
        }
        screen.enter("skip on 90");
        assertThat(screen.told()).contains("Enter keeps it as it is");
        assertThat(place(screen, "act LOOK")).isEqualTo(look);
        assertThat(place(screen, "map")).isEqualTo(map);
    }

    @ParameterizedTest
    @CsvSource({"en,100", "de,100", "en,150", "de,150"})
    void nothingShiftsUnderAFingerWhenAWarningComesOrGoes(Locale language, int text) {
        Offscreen screen = screen(Choices.first(language).text(text));
        Map<String, Rectangle> before = places(screen);
        for (String warning : List.of(
                "A short one.",
                "One that says much more than there is room for. ".repeat(12),
                "One\nof\nfour\nlines")) {
            Offscreen.on(() -> {
                screen.screen().tell(List.of(warning));
                return true;
            });
            assertThat(places(screen)).as(warning).isEqualTo(before);
            screen.press("banner.close");
            assertThat(places(screen)).as("after " + warning).isEqualTo(before);
        }
        List.of("turn on 60", "here 9").forEach(entry -> session.enter(entry, true, Workshop.ENGLISH));
        Offscreen.on(() -> {
            screen.screen().show(Shown.of(session.state(), Words.of(language), ZoneOffset.UTC));
            return true;
        });
        place(screen, "banner.show r");
        assertThat(places(screen)).as("after the count was lost").isEqualTo(before);
    }

    /** Where that stands which a finger may be on its way to. */
    private static Map<String, Rectangle> places(Offscreen screen) {
        return Stream.of(
                        "map",
                        "wheel",
                        "rows",
                        "entry",
                        "keep",
                        "act LOOK",
                        "act FIND",
                        "act WATCH_TIP",
                        "take next",
                        "pages")
                .collect(Collectors.toMap(name -> name, name -> place(screen, name)));
    }

    @Test
    void aWarningThatIsCutUnfoldsWhenAPersonWantsIt() {
        Offscreen screen = screen();
        String warning = "One that says much more than there is room for. ".repeat(12);
        Offscreen.on(() -> {
            screen.screen().tell(List.of(warning));
            return true;
        });
        int folded = place(screen, "banners").height;
        screen.press("banner.fold");

        assertThat(place(screen, "banners").height).isGreaterThan(folded);
        screen.press("banner.fold");
        assertThat(place(screen, "banners").height).isEqualTo(folded);
    }

    @Test
    void wordsToPickComeOverTheScreenWhileSomethingIsTypedOrWhenTheLineIsTouched() {
        Offscreen screen = screen();
        assertThat(isOver(screen)).isFalse();
        screen.type("turn ");
        assertThat(isOver(screen)).isTrue();
        Rectangle over = place(screen, "over the line");
        Rectangle entry = place(screen, "entry");
        assertThat(over.y + over.height).isLessThanOrEqualTo(entry.y);

        screen.type("");
        assertThat(isOver(screen)).isFalse();
        screen.touch();
        assertThat(isOver(screen)).isTrue();
        screen.touch();
        assertThat(isOver(screen)).isFalse();
    }

    private static boolean isOver(Offscreen screen) {
        return Offscreen.on(() -> Offscreen.find(screen.screen().component(), Component.class, "over the line")
                .isVisible());
    }

    @Test
    void openPortsAreToldBesideRingsAndAboveStrips() {
        for (boolean strips : new boolean[] {false, true}) {
            Offscreen screen = screen(Choices.first(Locale.ENGLISH).strips(strips));
            Laid laid = Offscreen.on(() -> Laid.out(screen.screen().component(), Offscreen.SIZE));
            laid.shows("ports");
            screen.enter(strips ? "shut p nothing inside" : "open p");
            assertThat(Offscreen.<String>on(() -> Offscreen.find(screen.screen().component(), JLabel.class, "ports")
                            .getText()))
                    .isEqualTo(strips ? "no port is open" : "open: p");
        }
    }

    @Test
    void theSwitchShowsWhatIsWatched() {
        Offscreen screen = screen();
        for (String part : List.of("TIP", "ROOT", "ALL")) {
            screen.press("act WATCH_" + part);
            for (String each : List.of("TIP", "ROOT", "ALL")) {
                assertThat(Offscreen.<Boolean>on(() -> Offscreen.find(
                                        screen.screen().component(),
                                        javax.swing.JToggleButton.class,
                                        "act WATCH_" + each)
                                .isSelected()))
                        .as(each + " after " + part)
                        .isEqualTo(each.equals(part));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"en,true,false", "de,true,false", "en,false,true", "de,true,true"})
    void nothingReachesBeyondWhatHoldsIt(Locale language, boolean gloves, boolean strips) {
        Offscreen screen = screen(Choices.first(language).gloves(gloves).strips(strips));
        Offscreen.on(() -> {
            Laid.out(screen.screen().component(), Offscreen.SIZE).reachesNowhereBeyond();
            return true;
        });
    }

    @Nested
    class LargeLetters {

        @ParameterizedTest
        @CsvSource({
            "en,100,1280,740,false",
            "de,100,1280,740,true",
            "en,150,1280,740,false",
            "de,150,1280,740,false",
            "de,150,1280,740,true",
            "en,200,1920,1020,true",
            "de,200,1920,1020,false"
        })
        void cutNothingOff(Locale language, int text, int width, int height, boolean strips) {
            Offscreen screen =
                    screen(Choices.first(language).strips(strips).text(text).dark(strips));
            Offscreen.on(() -> {
                Laid laid = Laid.out(screen.screen().component(), new Dimension(width, height));
                laid.reachesNowhereBeyond();
                laid.cutsNoWords();
                return true;
            });
        }

        @Test
        void areAsLargeAsChosenAndAsBeforeWhenChosenBack() {
            List<Float> sizes = Offscreen.on(() -> Stream.of(100, 150, 300, 100)
                    .map(text -> {
                        Looks.use(Choices.first(Locale.ENGLISH).gloves(false).text(text));
                        return UIManager.getFont("Label.font").getSize2D();
                    })
                    .toList());

            assertThat(sizes).containsExactly(14f, 21f, 42f, 14f);
        }

        @Test
        void makePanelsScrollWhereThereIsNoRoomForThem() {
            Offscreen screen = screen(Choices.first(Locale.ENGLISH).text(300));
            Offscreen.on(() -> {
                JobScreen shown = screen.screen();
                Laid.out(shown.component(), Offscreen.SIZE);
                JViewport port = (JViewport) SwingUtilities.getAncestorOfClass(
                        JViewport.class, shown.middle().component());
                assertThat(port.getView().getHeight()).isGreaterThan(port.getHeight());
                return true;
            });
        }
    }
}
