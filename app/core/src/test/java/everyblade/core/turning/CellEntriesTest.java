package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Zoning;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Of which cells something is said: rows of 12 and of 8 blades, each divided into root and tip. */
class CellEntriesTest {

    private final Job job = new Job(new Engines()
                    .row("c1", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                    .row("c2", RowKind.ROTOR, 8, Direction.CW, 2, List.of(), false, 0)
                    .view("v", "c1", 0, 2)
                    .built())
            .enter("view v");

    private Ledger ledger() {
        return job.fold().situation().ledger();
    }

    /** Row and airfoils of each remark. */
    private List<String> said() {
        return ledger().remarks().stream()
                .map(remark -> remark.row() + " "
                        + remark.airfoils().stream()
                                .mapToObj(bit -> String.valueOf(bit + 1))
                                .collect(Collectors.joining(",")))
                .toList();
    }

    private Refusal refusal(String line) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> job.tryEnter(line));
        assertThat(refusal).as(line).isNotNull();
        return refusal;
    }

    private Zoning zoning() {
        return job.fold().situation().engine().zonings().get("c1");
    }

    @Test
    void aFindingIsOfOneAirfoil() {
        job.enter("nick 1 tip 0.5", "nick 12 root 0.5", "c2 nick 8 tip 0.5");
        assertThat(said()).containsExactly("c1 1", "c1 12", "c2 8");
        assertThat(ledger().remarks().get(0).zones()).isEqualTo(zoning().span(1));
        assertThat(refusal("nick 13 tip 0.5").why()).isEqualTo(new EntryProblem.NoAirfoil("c1", RowKind.ROTOR, 12, 13));
        assertThat(refusal("c2 nick 9 tip 0.5").why()).isEqualTo(new EntryProblem.NoAirfoil("c2", RowKind.ROTOR, 8, 9));
    }

    @Nested
    class WhatIsSeenInAPicture {

        @Test
        void isOfARunOfAirfoilsWhichMayGoOnOverTheLastOne() {
            job.enter(
                    "saw tip 3 photo a.jpg",
                    "saw tip 3-5 photo a.jpg",
                    "saw tip 11-2 photo a.jpg",
                    "saw tip 1-12 photo a.jpg",
                    "c2 saw tip 8-1 photo a.jpg");
            assertThat(said())
                    .containsExactly("c1 3", "c1 3,4,5", "c1 1,2,11,12", "c1 1,2,3,4,5,6,7,8,9,10,11,12", "c2 1,8");
        }

        @Test
        void isOfAllWhereNoneIsNamed() {
            job.enter("saw tip all photo a.jpg");
            assertThat(said()).containsExactly("c1 1,2,3,4,5,6,7,8,9,10,11,12");
        }

        @Test
        void hasAnAirfoilAndAZoneOfTheRowIfItNamesAny() {
            Situation before = job.fold().situation();
            job.enter("photo a.jpg", "photo a.jpg of 12", "photo a.jpg of 12 tip");
            assertThat(job.fold().situation()).isEqualTo(before);
            assertThat(refusal("photo a.jpg of 13").why())
                    .isEqualTo(new EntryProblem.NoAirfoil("c1", RowKind.ROTOR, 12, 13));
            refusal("photo a.jpg of 12 pressure");
        }
    }

    @Nested
    class WhatIsAcceptedAsNotSeen {

        @Test
        void isOfTheRowInViewUnlessAnotherOneIsNamed() {
            job.enter("noaccess tip 2 because dark", "noaccess c2 tip 7-8 because dark");
            assertThat(said()).containsExactly("c1 2", "c2 7,8");
            assertThat(ledger().remarks())
                    .extracting(Remark::what)
                    .containsExactly(Remark.What.ACCEPTED, Remark.What.ACCEPTED);
        }

        @Test
        void isOfEveryRowWhereItIsWhatNoViewShows() {
            job.enter("noaccess unshown because blanked off");
            assertThat(said()).containsExactly("c1 1,2,3,4,5,6,7,8,9,10,11,12", "c2 1,2,3,4,5,6,7,8");
            assertThat(ledger().remarks()).allSatisfy(remark -> {
                assertThat(remark.what()).isEqualTo(Remark.What.ACCEPTED_UNSHOWN);
                assertThat(remark.zones()).isEqualTo(zoning().all());
            });
        }

        @Test
        void isOfOneRowWhereThatIsNamedOrItsAirfoilsAre() {
            job.enter("noaccess c2 unshown because blanked off", "noaccess unshown 3-4 because blanked off");
            assertThat(said()).containsExactly("c2 1,2,3,4,5,6,7,8", "c1 3,4");
        }

        @Test
        void isOfOneRowWhereItIsAPart() {
            job.enter("noaccess tip all because dark");
            assertThat(said()).containsExactly("c1 1,2,3,4,5,6,7,8,9,10,11,12");
        }
    }
}
