package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.View;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Of which rows something is computed, and which other rows must be identified for it. */
class ComputedRowsTest extends StatedBoxes {

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

        /** Nearer than 4 mm they hide what lies aside, farther off they would not. */
        @Test
        void isAskedOfThoseAmongWhichTheScopeTipStands() {
            assertThat(sights(amongVanes(0), Criteria.USUAL).unidentified(row("own", amongVanes(0))))
                    .extracting(Row::id)
                    .containsExactly("vanes");
        }

        /** A scope tip that the job names makes its own sight. */
        @Test
        void isAskedForAViewOfWhichNoScopeTipIsStatedAsForAny() {
            Blocks unstated = new Blocks()
                    .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                    .row("vanes", RowKind.STATOR, 8, -20, -12, 1.5, 19, 31)
                    .view(new View(
                            "v",
                            Optional.empty(),
                            "own",
                            Optional.empty(),
                            0,
                            0,
                            Optional.empty(),
                            List.of(front),
                            false));

            assertThat(sights(unstated, Criteria.USUAL)
                            .knowing(Map.of("vanes", at(0)))
                            .placesFor(row("own", unstated)))
                    .containsOnlyKeys("vanes");
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
        void viewsOfOtherRowsSayNothingOfIt() {
            Blocks other = viewed(RowKind.STATOR, true)
                    .row("other", RowKind.STATOR, 6, 50, 60, 3, 20, 30)
                    .view("fixed", "other", front);

            assertThat(travels(other)).isTrue();
            assertThat(sights(other, Criteria.USUAL).travels(row("other", other)))
                    .isFalse();
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
}
