package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What leaves the program for others: tables, and the report as one HTML file. */
class ToTravelTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aJobInWhichSomebodyTypesMoreThanWords() {
        console = Console.in(folder);
        String task = "<b>look</b> & \u202esee";
        Ran started = console.run("start", "job", "--model", "ring", "--serial", "7", "--task", task, "--by", "Ann");
        assertThat(started.err()).isEmpty();
    }

    private void log(String... entries) {
        String[] all = new String[entries.length + 2];
        all[0] = "log";
        all[1] = "job";
        System.arraycopy(entries, 0, all, 2, entries.length);
        assertThat(console.run(all).status()).isZero();
    }

    @Test
    void everyCellIsALineOfTheTable() {
        log("view p-r", "datum r 1", "look", "noaccess all 5 because \"no room, really\"");

        Ran ran = console.run("coverage", "job", "--csv");

        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().split("\r\n"))
                .hasSize(1 + 12 * 2 + 8)
                .startsWith("row,basis,airfoil,zone,state,why,accepted,stated", "r,declared,1,root,seen,,false,false")
                .contains("r,declared,5,tip,unseen,skipped,true,false", "v,declared,8,all,unseen,skipped,false,false");
        assertThat(ran.out()).endsWith("\r\n");
        assertThat(console.run("coverage", "job", "--csv", "--row", "v").out().split("\r\n"))
                .hasSize(9);
    }

    @Test
    void everyGapIsALineWithAnExitStatusAsEver() {
        log("view p-r", "datum r 1", "turn on 90");

        Ran ran = console.run("gaps", "job", "--csv");

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out().split("\r\n"))
                .hasSize(3)
                .anyMatch(line -> line.startsWith("r,2 3 4 5 6 7 8 9,root tip,unseen,skipped,p-r,,"));
    }

    @Test
    void whatPeopleTypedIsNeverAFormulaNorANewColumn() {
        log("view p-r", "datum r 1");
        console.run("log", "job", "--by", "=cmd|' /C calc'!A0", "nick 3 tip 0.8 ± 0.1");
        console.run("log", "job", "--by", "@SUM(1,\"2\")", "crack 4 root depth 0.3");

        String csv = console.run("findings", "job", "--csv").out();

        assertThat(csv.split("\r\n"))
                .hasSize(3)
                .anyMatch(line -> line.equals(
                        "3,2026-05-14T06:00:00Z,'=cmd|' /C calc'!A0,nick,r,3,tip,0.8,,,0.1,,nick 3 tip" + " 0.8 ± 0.1"))
                .anyMatch(line -> line.contains(",\"'@SUM(1,\"\"2\"\")\",crack,r,4,root,,0.3,,,"));
    }

    @Test
    void onlyOneFormIsPrintedAtATime() {
        for (String command : List.of("coverage", "gaps", "findings")) {
            Ran ran = console.run(command, "job", "--json", "--csv");
            assertThat(ran.status()).isEqualTo(2);
            assertThat(ran.errLines()).singleElement().asString().startsWith("--csv: there is --json, too");
        }
    }

    @Test
    void theReportAsHtmlNeedsNothingElseAndRunsNothing() {
        log("view p-r", "datum r 1", "turn on 90", "note <script>alert(1)</script> \"&quot;");

        assertThat(console.run("report", "job", "--out", "r.html").err()).isEmpty();

        String html = console.read("r.html");
        assertThat(html)
                .startsWith("<!DOCTYPE html>")
                .contains("INCOMPLETE", "Content-Security-Policy", "&lt;b&gt;look&lt;/b&gt; &amp; ⟨U+202E⟩see")
                .contains("note &lt;script&gt;alert(1)&lt;/script&gt; &quot;&amp;quot;")
                .contains("src=\"data:image/svg+xml;base64,")
                .doesNotContain("<script", "http://", "https://", "\u202e");
        for (String tag : List.of("table", "tr", "td", "ul", "div", "p", "h1", "h2", "strong", "s", "span")) {
            assertThat(html.split("<" + tag + "[ >]", -1)).as(tag).hasSameSizeAs(html.split("</" + tag + ">", -1));
        }
    }

    @Test
    void reportsAreTheSameBytesInAnotherZoneLocaleAndFolder() throws IOException {
        log("view p-r", "datum r 1", "turn on 90", "nick 3 tip 0.8");
        List<byte[]> here = reports(console, "job", "a");
        Path elsewhere =
                Files.createDirectories(folder.resolve("İçin başka/job")).getParent();
        Files.delete(elsewhere.resolve("job"));
        Files.move(folder.resolve("job"), elsewhere.resolve("job"));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            List<byte[]> there = reports(console, elsewhere.resolve("job").toString(), "b");
            for (int i = 0; i < here.size(); i++) {
                assertThat(Arrays.equals(there.get(i), here.get(i)))
                        .as("report " + i)
                        .isTrue();
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    private static List<byte[]> reports(Console console, String job, String name) throws IOException {
        for (String form : List.of(".pdf", ".html")) {
            assertThat(console.run("report", job, "--out", name + form).status())
                    .isZero();
        }
        return List.of(
                Files.readAllBytes(console.file(name + ".pdf")),
                Files.readAllBytes(console.file(name + ".html")),
                console.run("coverage", job, "--csv").out().getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
