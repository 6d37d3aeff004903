package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Progress;
import everyblade.session.Session;
import everyblade.session.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WhereTest {

    @TempDir
    Path folder;

    private Workshop workshop;

    @BeforeEach
    void start() {
        workshop = Workshop.in(folder);
    }

    private Where after(String... entries) {
        try (Session session = workshop.open(entries)) {
            return Panels.of(session).where();
        }
    }

    @Test
    void tellsTheTipTheRotorThePadAndTheLastEntry() {
        Where where = after("heat 20 C", "view p-r", "datum r 1 at 0", "watch tip", "turn on 60 ± 2");

        assertThat(where.tip()).isEqualTo("p-r, reference 90°, watching tip");
        assertThat(where.rotor()).isEqualTo("blade 11 of r at the reference, ± 2°; shaft at 60°");
        assertThat(where.pad()).isEqualTo("each move ± 1°, normally clockwise");
        assertThat(where.last()).isEqualTo("Last kept: 5 turn on 60 ± 2 (06:00, Ann)");
    }

    @Nested
    class WhatIsNext {

        private NextToDo next(String... entries) {
            try (Session session = workshop.open(entries)) {
                return NextToDo.of(Panels.of(session), Workshop.ENGLISH, Progress.NONE);
            }
        }

        @Test
        void isToMeasureTheMetalBeforeAScopeTipGoesIn() {
            assertThat(next().entry()).isEqualTo(Optional.of("heat "));
        }

        @Test
        void isToLookThroughAView() {
            assertThat(next("heat 20 C").entry()).isEqualTo(Optional.of("view p-r"));
        }

        @Test
        void isToBringALandmarkToTheReference() {
            NextToDo step = next("heat 20 C", "view p-r");

            assertThat(step.words()).contains("blade 1 (etched)");
            assertThat(step.entry()).isEqualTo(Optional.of("round 1"));
        }

        @Test
        void isToIdentifyABladeAgainAfterASlip() {
            assertThat(next("heat 20 C", "view p-r", "datum r 1", "slip").entry())
                    .isEqualTo(Optional.of("round 1"));
        }

        @Test
        void isToClearTheBladesBeforeAnythingElse() {
            assertThat(next("heat 20 C", "view p-r", "datum r 1", "in").entry()).isEqualTo(Optional.of("clear"));
        }

        @Test
        void isTheNearestGapThenTheOtherRowThenClosingUpThenTheReport() {
            List<String> said = new ArrayList<>(
                    List.of("heat 20 C", "tool out lamp", "open p1", "view p-r", "datum r 1 at 0", "round 1"));
            assertThat(next(said.toArray(String[]::new)).entry()).isEqualTo(Optional.of("view p-v"));

            assertThat(next("view p-v", "datum v 1", "draw 360").entry()).isEqualTo(Optional.of("tool in lamp"));
            assertThat(next("tool in lamp").entry()).isEqualTo(Optional.of("shut p1 "));
            assertThat(next("shut p1").words()).contains("write the report");
        }
    }

    @Nested
    class Cautions {

        private List<CautionsNow> cautionsAfter(String... entries) {
            try (Session session = workshop.open(entries)) {
                return Panels.of(session).cautions();
            }
        }

        @Test
        void withoutAReadingNoViewStarts() {
            assertThat(cautionsAfter())
                    .anyMatch(caution -> caution.bars() && caution.text().contains("60 °C"));
        }

        @Test
        void hotMetalBarsToo() {
            assertThat(cautionsAfter("heat 61 C"))
                    .anyMatch(caution -> caution.bars() && caution.text().contains("61 °C"));
        }

        @Test
        void aScopeTipAmongTheBladesBarsTurning() {
            assertThat(cautionsAfter("heat 20 C", "view p-r", "in"))
                    .singleElement()
                    .matches(caution -> caution.bars() && caution.text().contains("turning is barred"));
        }

        @Test
        void whatIsStillOutIsNamedAtAHandover() {
            assertThat(cautionsAfter("heat 20 C", "view p-r", "tool out turning tool", "open p1", "handover Bob"))
                    .singleElement()
                    .matches(caution -> caution.text().contains("turning tool, p1"));
        }

        @Test
        void nothingIsSaidWhileNothingMatters() {
            assertThat(cautionsAfter("heat 20 C", "view p-r", "datum r 1")).isEmpty();
        }
    }
}
