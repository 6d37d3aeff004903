package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.Dimension;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.growth.LeftAgain;
import everyblade.core.gap.Gap;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.session.job.OpenedJob;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Cells, gaps and findings as tables for other programs. */
final class CellTables {

    private CellTables() {}

    /** Every cell of these rows. */
    static Csv cells(List<RowCoverage> rows) {
        Csv csv = new Csv("row", "basis", "airfoil", "zone", "state", "why", "accepted", "stated");
        for (RowCoverage row : rows) {
            for (int n = 1; n <= row.row().count(); n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    csv.add(
                            row.row().id(),
                            row.basis().word(),
                            n,
                            row.zoning().names().get(zone),
                            row.state(n, zone).word(),
                            row.why(n, zone).map(Why::word).orElse(""),
                            row.remarked(Remark.What.ACCEPTED, n, zone),
                            row.remarked(Remark.What.STATED, n, zone));
                }
            }
        }
        return csv;
    }

    /** What is left. */
    static Csv gaps(List<LeftAgain.Left> gaps) {
        Csv csv = new Csv(
                "row",
                "airfoils",
                "zones",
                "state",
                "why",
                "view",
                "station",
                "turn to",
                "draw to",
                "sweep",
                "last time too");
        for (LeftAgain.Left left : gaps) {
            Gap gap = left.gap();
            Optional<Gap.Reach> reach = gap.reach();
            Optional<Object> from = reach.map(known -> JsonText.position(known.from()));
            boolean drawn = reach.filter(Gap.Reach::drawn).isPresent();
            csv.add(
                    gap.row().id(),
                    gap.airfoils().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                    zones(Zoning.of(gap.row()), gap.zones()),
                    gap.state().word(),
                    gap.why().word(),
                    reach.map(Gap.Reach::view).orElse(""),
                    reach.flatMap(Gap.Reach::station).orElse(""),
                    drawn ? "" : from.orElse(""),
                    drawn ? from.orElse("") : "",
                    reach.<Object>map(known -> JsonText.degrees(known.sweep())).orElse(""),
                    left.lastTimeToo());
        }
        return csv;
    }

    /** What was found; lengths in mm. */
    static Csv findings(OpenedJob opened, Coverage coverage) {
        Csv csv = new Csv(
                "entry",
                "at",
                "by",
                "kind",
                "row",
                "airfoil",
                "zones",
                "length",
                "depth",
                "width",
                "plus minus",
                "verdict",
                "text");
        List<Judgement> judged = opened.judged(coverage);
        for (Finding finding : Findings.of(opened.fold())) {
            Logged logged = opened.fold().entries().get(finding.entry() - 1);
            csv.add(
                    finding.entry(),
                    logged.at(),
                    logged.by(),
                    finding.kind().word(),
                    finding.row().id(),
                    finding.airfoil(),
                    zones(Zoning.of(finding.row()), finding.zones()),
                    size(finding, Dimension.LENGTH),
                    size(finding, Dimension.DEPTH),
                    size(finding, Dimension.WIDTH),
                    finding.sizes().values().stream()
                            .findFirst()
                            .flatMap(size -> size.plusMinus())
                            .<Object>map(plusMinus -> plusMinus.mm())
                            .orElse(""),
                    judged.stream()
                            .filter(judgement -> judgement.finding().entry() == finding.entry())
                            .map(judgement -> JsonText.token(judgement.verdict()))
                            .findFirst()
                            .orElse(""),
                    logged.text());
        }
        return csv;
    }

    private static Object size(Finding finding, Dimension dimension) {
        return Optional.ofNullable(finding.sizes().get(dimension))
                .<Object>map(size -> size.value().mm())
                .orElse("");
    }

    private static String zones(Zoning zoning, ZoneSet zones) {
        return IntStream.range(0, zoning.size())
                .filter(zones::contains)
                .mapToObj(zone -> zoning.names().get(zone))
                .collect(Collectors.joining(" "));
    }
}
