package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.angle.Turn;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Stations before a row of boxes, with vanes between that may stand anywhere. */
class SightsTest {

    /** Keeps all, and knows what it was asked for. */
    private static final class Shelf implements SightStore {

        final Map<String, byte[]> kept = new TreeMap<>();
        final List<String> asked = new ArrayList<>();

        @Override
        public Optional<byte[]> find(String key) {
            asked.add(key);
            return Optional.ofNullable(kept.get(key));
        }

        @Override
        public void keep(String key, byte[] content) {
            kept.put(key, content);
        }
    }

    private final Station front = station("front", -30, 0, 0);
    private final Station loose = station("loose", -30, 1, 3);
    private final Station rear =
            new Station("rear", 30, 26, 10, new Heading(-1, 0, 0), new Heading(0, 0, 1), new Station.Tolerance(0, 0));
    private final Shelf shelf = new Shelf();

    private static Station station(String id, double x, double mm, double deg) {
        return new Station(id, x, 26, 10, new Heading(1, 0, 0), new Heading(0, 0, 1), new Station.Tolerance(mm, deg));
    }

    private static Place at(double clock) {
        return new Place(Turn.ofDegrees(clock), Turn.ofDegrees(clock), Turn.ofDegrees(clock));
    }

    private Blocks blocks() {
        return new Blocks()
                .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                .row("vanes", RowKind.STATOR, 8, -20, -12, 1.5, 19, 31)
                .row("far", RowKind.STATOR, 8, 100, 110, 1.5, 19, 31)
                .shapeless("counted", RowKind.ROTOR, 5)
                .view("v", "own", front, loose)
                .view("rear", "own", rear)
                .view("none", "own")
                .view("tipless", "own", "unheard-of", front)
                .view("c", "counted", front);
    }

    private Sights sights(Blocks blocks, Criteria criteria) {
        return new Sights(blocks.scene(), "mark", criteria, shelf, Progress.NONE);
    }

    private final Sights sights = sights(blocks(), Criteria.USUAL);

    private static Row row(String id, Blocks blocks) {
        return blocks.model().row(id).orElseThrow();
    }

    private static Stance stance(String view, String tip) {
        return new Stance(view, List.of("front"), false, Optional.ofNullable(tip), Map.of(), Optional.empty());
    }

    private static Stance with(Stance stance, Stance.Proof proof) {
        return new Stance(stance.view(), stance.stations(), false, stance.scopeTip(), Map.of(), Optional.of(proof));
    }

    private StationSight direct(ViewScene engine, Station station, Criteria criteria) throws Exception {
        Row row = engine.model().row("own").orElseThrow();
        Pose pose = Pose.of(station, engine.model().scopeTip("tip").orElseThrow());
        Setting setting = Setting.of(
                engine,
                engine.ring(row).orElseThrow(),
                row,
                pose,
                station.within().mm(),
                2);
        return StationSight.compute(
                setting,
                engine.grain(row).orElseThrow(),
                PoseFamily.of(pose, station.within()),
                criteria,
                Progress.NONE);
    }

    @Nested
    class WhatAStationShows {

        @Test
        void isWhatItsPosesShowInItsSurroundings() throws Exception {
            for (Station station : List.of(front, loose)) {
                StationSight found = sights.of(stance("v", "tip"), station.id()).orElseThrow();
                assertThat(found.written())
                        .isEqualTo(direct(blocks().scene(), station, Criteria.USUAL)
                                .written());
            }
            assertThat(sights.of(stance("v", "tip"), "front").orElseThrow().reaches(Blocks.FRONT))
                    .isTrue();
        }

        @Test
        void isComputedOnce() {
            StationSight first = sights.of(stance("v", "tip"), "front").orElseThrow();

            assertThat(sights.of(stance("v", "tip"), "front")).containsSame(first);
            assertThat(sights.knowing(Map.of()).of(stance("v", "tip"), "front")).containsSame(first);
            assertThat(shelf.asked).hasSize(1);
        }

        @Test
        void isNotComputedAgainForOneWhoWatchesOtherStationsToo() {
            StationSight first = sights.of(stance("v", "tip"), "front").orElseThrow();
            Stance both =
                    new Stance("v", List.of("front", "loose"), true, Optional.of("tip"), Map.of(), Optional.empty());

            assertThat(sights.of(both, "front")).containsSame(first);
            assertThat(shelf.asked).hasSize(1);
        }

        @Test
        void isTakenFromWhereItWasKept() {
            StationSight first = sights.of(stance("v", "tip"), "front").orElseThrow();
            assertThat(shelf.kept.values()).containsExactly(first.written());

            String key = shelf.kept.keySet().iterator().next();
            byte[] rear = sights.of(stance("rear", "tip"), "rear").orElseThrow().written();
            shelf.kept.put(key, rear);

            assertThat(sights(blocks(), Criteria.USUAL)
                            .of(stance("v", "tip"), "front")
                            .orElseThrow()
                            .written())
                    .as("what is kept, whatever it says")
                    .isEqualTo(rear);
        }

        @Test
        void isComputedIfWhatWasKeptIsSomethingElse() {
            StationSight first = sights.of(stance("v", "tip"), "front").orElseThrow();
            shelf.kept.replaceAll((key, content) -> new byte[] {1, 2, 3});

            assertThat(sights(blocks(), Criteria.USUAL)
                            .of(stance("v", "tip"), "front")
                            .orElseThrow()
                            .written())
                    .isEqualTo(first.written());
        }

        @Test
        void isKeptUnderAKeyThatNamesAllThatItHangsOn() {
            Criteria fine = Criteria.USUAL.withDetail(0.2);
            sights.of(stance("v", "tip"), "front");
            sights.of(stance("v", "slim"), "front");
            sights.of(stance("v", "tip"), "loose");
            sights(blocks(), fine).of(stance("v", "tip"), "front");
            sights(blocks(), fine).of(with(stance("v", "tip"), new Stance.Proof(1, 20)), "front");
            sights.knowing(Map.of("vanes", at(7))).of(stance("v", "tip"), "front");
            new Sights(blocks().scene(), "other mark", Criteria.USUAL, shelf, Progress.NONE)
                    .of(stance("v", "tip"), "front");

            assertThat(shelf.kept).hasSize(7);
            assertThat(shelf.kept.keySet()).allMatch(key -> key.startsWith("sight "));
        }

        @Test
        void isNothingWithoutAScopeTipOrStations() {
            assertThat(sights.of(stance("v", null), "front")).isEmpty();
            assertThat(sights.of(stance("v", "unheard-of"), "front")).isEmpty();
            assertThat(sights.of(stance("c", "tip"), "front")).isEmpty();
        }

        @Test
        void stopsWhenCancelled() {
            Progress cancelled = new Progress() {
                @Override
                public boolean cancelled() {
                    return true;
                }
            };
            Sights stopped = new Sights(blocks().scene(), "mark", Criteria.USUAL, shelf, cancelled);

            assertThatThrownBy(() -> stopped.of(stance("v", "tip"), "front")).isInstanceOf(CancellationException.class);
            assertThat(stopped.mark()).isEqualTo("mark");
        }
    }

    @Nested
    class TheDetail {

        /** At 30 mm three pixels of 800 over 120° are 0.39 mm. */
        @Test
        void hidesWhereAViewIsTooCoarse() throws Exception {
            Criteria fine = Criteria.USUAL.withDetail(0.1);
            Sights judging = sights(blocks(), fine);

            assertThat(judging.judgesDetail()).isTrue();
            assertThat(sights.judgesDetail()).isFalse();
            StationSight coarse = judging.of(stance("v", "tip"), "front").orElseThrow();
            assertThat(coarse.written())
                    .isEqualTo(direct(blocks().scene(), front, fine).written());
            assertThat(coarse.why(Blocks.FRONT)).contains(Hindrance.TOO_COARSE);
            assertThat(judging.ofAnyDetail(stance("v", "tip"), "front")
                            .orElseThrow()
                            .why(Blocks.FRONT))
                    .isEmpty();
        }

        @Test
        void isNotAskedOfAViewThatIsAlwaysFine() {
            Sights judging = sights(blocks(), Criteria.USUAL.withDetail(50));

            StationSight fine = judging.of(stance("v", "tip"), "front").orElseThrow();
            assertThat(judging.ofAnyDetail(stance("v", "tip"), "front")).containsSame(fine);
        }

        /** A line of 1 mm at 20 mm was the finest: 1.5 mm at 30 mm is found, 1.4 mm is not. */
        @Test
        void isJudgedByTheDaysTestTarget() {
            Stance proven = with(stance("v", "tip"), new Stance.Proof(1, 20));

            assertThat(sights(blocks(), Criteria.USUAL.withDetail(1.8))
                            .of(proven, "front")
                            .orElseThrow()
                            .why(Blocks.FRONT))
                    .isEmpty();
            assertThat(sights(blocks(), Criteria.USUAL.withDetail(1.4))
                            .of(proven, "front")
                            .orElseThrow()
                            .why(Blocks.FRONT))
                    .contains(Hindrance.TOO_COARSE);
            assertThat(sights(blocks(), Criteria.USUAL.withDetail(1.4))
                            .of(with(stance("v", "tip"), new Stance.Proof(1, 0)), "front")
                            .orElseThrow()
                            .why(Blocks.FRONT))
                    .as("a distance of nothing says nothing")
                    .isEmpty();
        }
    }

    @Nested
    class WhatIsKnownOfVanesBetween {

        @Test
        void showsMoreOnceItIsKnown() throws Exception {
            Sights knowing = sights.knowing(Map.of("vanes", at(0), "far", at(3)));

            StationSight known = knowing.of(stance("v", "tip"), "front").orElseThrow();
            assertThat(known.written())
                    .isEqualTo(direct(blocks().known("vanes", at(0)).scene(), front, Criteria.USUAL)
                            .written());
            assertThat(known.arcs(0, Blocks.FRONT).measure())
                    .isGreaterThan(sights.of(stance("v", "tip"), "front")
                            .orElseThrow()
                            .arcs(0, Blocks.FRONT)
                            .measure());
        }

        @Test
        void isTheSameIfNothingElseIsKnown() {
            Sights knowing = sights.knowing(Map.of("vanes", at(0)));

            assertThat(sights.knowing(Map.of())).isSameAs(sights);
            assertThat(knowing.knowing(Map.of("vanes", at(0)))).isSameAs(knowing);
            assertThat(knowing.mark()).isEqualTo("mark");
        }

        @Test
        void isAskedOnlyOfThoseOnWhichTheRowHangs() {
            Sights knowing = sights.knowing(Map.of("vanes", at(0), "far", at(3)));

            assertThat(knowing.placesFor(row("own", blocks()))).isEqualTo(Map.of("vanes", at(0)));
            assertThat(knowing.placesFor(row("counted", blocks()))).isEmpty();
            assertThat(knowing.placesFor(row("far", blocks()))).isEmpty();
            assertThat(sights.placesFor(row("own", blocks()))).isEmpty();
            assertThat(sights.unidentified(row("own", blocks())))
                    .extracting(Row::id)
                    .containsExactly("vanes");
            assertThat(knowing.unidentified(row("own", blocks()))).isEmpty();
            assertThat(sights.unidentified(row("counted", blocks()))).isEmpty();
        }

        @Test
        void isNotAskedWhereTheyHideNothing() {
            Blocks low = new Blocks()
                    .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                    .row("vanes", RowKind.STATOR, 8, -20, -12, 1.5, 60, 70)
                    .view("v", "own", front);

            assertThat(sights(low, Criteria.USUAL).unidentified(row("own", low)))
                    .isEmpty();
        }

        @Test
        void isNotAskedWhereTheMakerSaysIt() {
            Blocks placed = new Blocks()
                    .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                    .row("vanes", RowKind.STATOR, 8, row -> row.phase(3), -20, -12, 1.5, 19, 31)
                    .view("v", "own", front);

            assertThat(sights(placed, Criteria.USUAL).unidentified(row("own", placed)))
                    .isEmpty();
        }

        /** Vanes seen past vanes: what is between them hangs on both. */
        @Test
        void isAskedOfTheRowItselfIfItStandsStill() {
            Blocks still = new Blocks()
                    .row("own", RowKind.STATOR, 6, 0, 10, 3, 20, 30)
                    .row("vanes", RowKind.STATOR, 8, -20, -12, 1.5, 19, 31)
                    .row("turning", RowKind.ROTOR, 8, -11, -10, 1.5, 28, 31)
                    .view("v", "own", front);
            Sights of = sights(still, Criteria.USUAL);

            assertThat(of.unidentified(row("own", still))).extracting(Row::id).containsExactly("own", "vanes");
            assertThat(of.knowing(Map.of("vanes", at(1), "own", at(2), "turning", at(3)))
                            .placesFor(row("own", still)))
                    .containsOnlyKeys("own", "vanes");
            assertThat(of.knowing(Map.of("vanes", at(1))).unidentified(row("own", still)))
                    .extracting(Row::id)
                    .containsExactly("own");
        }
    }

    @Nested
    class WhetherSomethingIsComputed {

        @Test
        void isSoOfAViewWithStationsOfARowWithAShape() {
            assertThat(blocks().model().views())
                    .extracting(sights::computes)
                    .containsExactly(true, true, false, true, false);
        }

        @Test
        void isSoOfARowThatHasSuchAViewWithAScopeTip() {
            Blocks tipless =
                    new Blocks().row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30).view("v", "own", "unheard-of", front);

            assertThat(sights.computes(row("own", blocks()))).isTrue();
            assertThat(sights.computes(row("vanes", blocks()))).isFalse();
            assertThat(sights.computes(row("counted", blocks()))).isFalse();
            assertThat(sights(tipless, Criteria.USUAL).computes(row("own", tipless)))
                    .isFalse();
            assertThat(sights(tipless, Criteria.USUAL).unidentified(row("own", tipless)))
                    .isEmpty();
        }

        @Test
        void itsStancesAreItsComputedViewsWithTheirOwnScopeTips() {
            assertThat(sights.stances(row("own", blocks()), Map.of("vanes", "open"), Optional.empty()))
                    .containsExactly(
                            new Stance(
                                    "v",
                                    List.of("front", "loose"),
                                    false,
                                    Optional.of("tip"),
                                    Map.of("vanes", "open"),
                                    Optional.empty()),
                            new Stance(
                                    "rear",
                                    List.of("rear"),
                                    false,
                                    Optional.of("tip"),
                                    Map.of("vanes", "open"),
                                    Optional.empty()),
                            new Stance(
                                    "tipless",
                                    List.of("front"),
                                    false,
                                    Optional.of("unheard-of"),
                                    Map.of("vanes", "open"),
                                    Optional.empty()));
            assertThat(sights.stances(row("counted", blocks()), Map.of(), Optional.empty()))
                    .isEmpty();
        }
    }

    @Nested
    class WhetherEachAirfoilCanBeBroughtBefore {

        private Blocks viewed(RowKind kind, boolean... travels) {
            Blocks blocks = new Blocks().row("own", kind, 6, 0, 10, 3, 20, 30);
            for (int i = 0; i < travels.length; i++) {
                blocks.view(new View(
                        "v" + i,
                        Optional.empty(),
                        "own",
                        Optional.of("tip"),
                        0,
                        0,
                        Optional.empty(),
                        List.of(front),
                        travels[i]));
            }
            return blocks;
        }

        private boolean travels(Blocks blocks) {
            return sights(blocks, Criteria.USUAL).travels(row("own", blocks));
        }

        @Test
        void isSoOfWhatTurns() {
            assertThat(travels(viewed(RowKind.ROTOR, false))).isTrue();
        }

        @Test
        void isSoOfWhatStandsStillIfTheScopeTipOfEveryViewTravels() {
            assertThat(travels(viewed(RowKind.STATOR, true, true))).isTrue();
            assertThat(travels(viewed(RowKind.STATOR, true, false))).isFalse();
            assertThat(sights(viewed(RowKind.STATOR, true, false), Criteria.USUAL)
                            .travels("v0"))
                    .isTrue();
            assertThat(sights(viewed(RowKind.STATOR, true, false), Criteria.USUAL)
                            .travels("v1"))
                    .isFalse();
        }
    }

    @Nested
    class SceneAndGrain {

        @Test
        void areMadeOnce() {
            Row own = row("own", blocks());

            assertThat(sights.scene(own)).isSameAs(sights.scene(own));
            assertThat(sights.grain(own)).isSameAs(sights.grain(own));
            assertThat(sights.scene(own).facets().count()).isEqualTo(6);
            assertThat(sights.grain(own).patches().facetCount()).isEqualTo(6);
        }

        @Test
        void areNoneOfARowWithoutAShape() {
            Row counted = row("counted", blocks());

            assertThatThrownBy(() -> sights.scene(counted))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("counted");
            assertThatThrownBy(() -> sights.grain(counted))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("counted");
        }

        @Test
        void areAFaultOfAShapeThatGivesNoSurface() {
            Sights missing = new Sights(
                    new ViewScene(blocks().model(), Map.of(), Map.of()),
                    "mark",
                    Criteria.USUAL,
                    SightStore.NONE,
                    Progress.NONE);
            Row own = row("own", blocks());

            assertThatThrownBy(() -> missing.scene(own))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("own");
            assertThatThrownBy(() -> missing.grain(own)).isInstanceOf(IllegalStateException.class);
            assertThatThrownBy(() -> missing.unidentified(own)).isInstanceOf(IllegalStateException.class);
        }
    }
}
