package everyblade.core.finding.compared;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.finding.compared.ComparedRow.By;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two people looked at the same row: who saw which cells. */
class ComparedRowTest {

    private static Engines row(RowKind kind, int count, int bands) {
        return new Engines()
                .row("r", kind, count, Direction.CW, bands, List.of(), false, 0)
                .view("v", "r", 0, 2)
                .view("w", "r", 0, 2);
    }

    private static Job job(Engines engines, String... lines) {
        return new Job(engines.built()).enter(lines);
    }

    private static BitSet airfoils(int... numbers) {
        BitSet set = new BitSet();
        for (int n : numbers) {
            set.set(n - 1);
        }
        return set;
    }

    /** The first looks at root and tip of 1 to 3 of 6, the second at the root of 3 to 5, turning the other way. */
    @Test
    void eachCellIsOfOneSortAndEachAirfoilOfThoseOfItsCells() {
        Job first = job(row(RowKind.STATOR, 6, 2), "view v", "datum r 1", "draw 120");
        Job second = job(row(RowKind.STATOR, 6, 2), "view v", "datum r 3", "watch root", "draw 120");

        ComparedRow row = ComparedRow.of(first.coverage(), second.coverage()).get(0);

        assertThat(row.count(By.BOTH)).isEqualTo(1);
        assertThat(row.count(By.FIRST)).isEqualTo(5);
        assertThat(row.count(By.SECOND)).isEqualTo(2);
        assertThat(row.count(By.NONE)).isEqualTo(4);
        assertThat(row.airfoils().get(By.BOTH)).isEqualTo(airfoils(3));
        assertThat(row.airfoils().get(By.FIRST)).isEqualTo(airfoils(1, 2, 3));
        assertThat(row.airfoils().get(By.SECOND)).isEqualTo(airfoils(4, 5));
        assertThat(row.airfoils().get(By.NONE)).isEqualTo(airfoils(4, 5, 6));
    }

    @Test
    void rowsDividedOtherwiseAreNotCompared() {
        Job six = job(row(RowKind.STATOR, 6, 2));
        assertThat(ComparedRow.of(six.coverage(), job(row(RowKind.STATOR, 6, 2)).coverage()))
                .hasSize(1);
        assertThat(ComparedRow.of(six.coverage(), job(row(RowKind.STATOR, 7, 2)).coverage()))
                .isEmpty();
        assertThat(ComparedRow.of(six.coverage(), job(row(RowKind.ROTOR, 6, 2)).coverage()))
                .isEmpty();
        assertThat(ComparedRow.of(six.coverage(), job(row(RowKind.STATOR, 6, 3)).coverage()))
                .isEmpty();
    }

    @Test
    void rowsAreFoundByTheirIdInTheOrderOfTheFirst() {
        Engines one = new Engines().stator("a", 3).stator("b", 4).stator("c", 5);
        Engines other = new Engines().stator("c", 5).stator("a", 3);
        assertThat(ComparedRow.of(job(one).coverage(), job(other).coverage()))
                .extracting(row -> row.row().id())
                .containsExactly("a", "c");
    }
}
