package everyblade.window.view;

import everyblade.core.finding.compared.ComparedRow;
import everyblade.core.finding.compared.ComparedRow.By;
import everyblade.core.turning.Airfoils;
import everyblade.session.job.Comparison;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A line of what two records show differently.
 *
 * @param text in words
 * @param cell a place of it on the map
 */
public record ComparedLine(String text, Optional<CellAt> cell) {

    /** Row by row the cells seen by both, by one and by none; then what became of the findings. */
    public static List<ComparedLine> of(Comparison compared, Words words) {
        List<ComparedLine> lines = new ArrayList<>();
        for (ComparedRow row : compared.rows()) {
            lines.add(new ComparedLine(
                    words.say(
                            "compared.row",
                            row.row().id(),
                            row.count(By.BOTH),
                            row.count(By.FIRST),
                            row.count(By.SECOND),
                            row.count(By.NONE)),
                    Optional.empty()));
            for (By by : List.of(By.FIRST, By.SECOND, By.NONE)) {
                if (row.count(by) > 0) {
                    List<Integer> airfoils = row.airfoils().get(by).stream()
                            .map(bit -> bit + 1)
                            .boxed()
                            .toList();
                    lines.add(new ComparedLine(
                            words.say(
                                    "compared." + by.name().toLowerCase(Locale.ROOT),
                                    row.row().id(),
                                    row.count(by),
                                    Airfoils.of(row.row(), airfoils)),
                            Optional.of(new CellAt(row.row().id(), airfoils.get(0), 0))));
                }
            }
        }
        compared.growth().forEach(line -> lines.add(new ComparedLine(line, Optional.empty())));
        return lines;
    }
}
