package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.Station;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What stations show, computed once and kept. */
class SightsTest extends StatedBoxes {

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

        /** Of 4 mm diameter. */
        @Test
        void leavesAScopeTipAmongVanesItsRoom() throws Exception {
            Sights between = sights(amongVanes(0.2), Criteria.USUAL);

            assertThat(between.of(stance("v", "tip"), "front").orElseThrow().written())
                    .isEqualTo(direct(amongVanes(0.2).scene(), among(0.2), Criteria.USUAL)
                            .written());
        }

        @Test
        void costsWhatItCostsAmongVanesThatLeaveItItsRoom() throws Exception {
            ViewScene engine = amongVanes(0.2).scene();
            Row own = engine.model().row("own").orElseThrow();
            Pose pose = Pose.of(among(0.2), engine.model().scopeTip("tip").orElseThrow());
            Setting setting = Setting.of(engine, engine.ring(own).orElseThrow(), own, pose, 0.2, 2);
            StationSight shown = direct(engine, among(0.2), Criteria.USUAL);

            assertThat(sights(amongVanes(0.2), Criteria.USUAL).cost(stance("v", "tip"), "front"))
                    .contains(
                            ToleranceCost.of(setting, pose, among(0.2).within(), shown, Criteria.USUAL, Progress.NONE));
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
