package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The launcher for Windows, read as its command interpreter reads it, where there is none to run it. */
class WindowsLauncherTest {

    private static final Path LAUNCHERS = Path.of("src", "main", "launcher");
    /** What the interpreter does itself, of all that it might. */
    private static final Set<String> WORDS = Set.of("@echo", "rem", "setlocal", "set", "if", "exit");
    /** A variable, one of the batch file's own arguments with or without what takes it apart, or all of these. */
    private static final Pattern EXPANSION = Pattern.compile("%(?:([A-Z_]+)%|(~dp0|\\*))");

    private static List<String> lines() throws IOException {
        return Files.readAllLines(LAUNCHERS.resolve("everyblade.bat"), StandardCharsets.US_ASCII).stream()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** What a line asks to be done, behind the conditions before it, each of which is one word or two. */
    private static String done(String line) {
        return line.replaceFirst("^(?i:if (?:not )?(?:defined \\S+|exist (?:\"[^\"]*\"|\\S+)) )+", "");
    }

    /** The words of a line; what stands in quotes is of one word, the quotes taken away. */
    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = Pattern.compile("(?:\"[^\"]*\"|[^\\s\"])+").matcher(line);
        while (word.find()) {
            words.add(word.group().replace("\"", ""));
        }
        return words;
    }

    private static String java() throws IOException {
        return lines().stream()
                .filter(line -> line.startsWith("\"%JAVA%\""))
                .reduce((first, second) -> {
                    throw new AssertionError("Java is called twice");
                })
                .orElseThrow();
    }

    @Test
    void eachLineIsAWordOfTheInterpreterOrTheCallOfJava() throws IOException {
        assertThat(lines()).allSatisfy(line -> {
            String word = words(line).get(0).toLowerCase(java.util.Locale.ROOT);
            assertThat(WORDS.contains(word) || word.equals("%java%")).as(line).isTrue();
            assertThat(line.chars().filter(c -> c == '"').count() % 2)
                    .as("quotes of " + line)
                    .isZero();
        });
    }

    @Test
    void noLabelIsJumpedTo() throws IOException {
        assertThat(lines()).noneMatch(line -> line.startsWith(":") || line.matches("(?i).*\\b(goto|call)\\b.*"));
    }

    @Test
    void everyVariableWasSetBeforeOrIsTheSystemS() throws IOException {
        Set<String> set = new TreeSet<>(Set.of("JAVA_HOME", "ERRORLEVEL"));
        for (String line : lines()) {
            List<String> used = EXPANSION
                    .matcher(line)
                    .results()
                    .map(MatchResult::group)
                    .filter(name -> name.endsWith("%"))
                    .map(name -> name.replace("%", ""))
                    .toList();
            assertThat(set).as(line).containsAll(used);
            assertThat(EXPANSION.matcher(line).replaceAll(""))
                    .as("what is left of " + line)
                    .doesNotContain("%");
            Matcher setting = Pattern.compile("set \"([A-Z_]+)=[^\"]*\"").matcher(done(line));
            if (setting.matches()) {
                set.add(setting.group(1));
            } else {
                assertThat(done(line))
                        .as("a value set without quotes would take in what follows")
                        .doesNotStartWith("set ");
            }
        }
    }

    /** A folder such as {@code Program Files (x86)} has what would end a word, or a block. */
    @Test
    void whatMayHaveSpacesStandsInQuotes() throws IOException {
        for (String line : lines()) {
            String bare = line.replaceAll("\"[^\"]*\"", "");
            assertThat(bare.replace("%*", "").replace("%ERRORLEVEL%", ""))
                    .as(line)
                    .doesNotContain("%", "(", ")");
        }
    }

    @Test
    void javaGetsWhatTheOtherLauncherGivesItAndAllThatWasTyped() throws IOException {
        List<String> words = words(java());
        String other = Files.readString(LAUNCHERS.resolve("everyblade"));

        assertThat(words).endsWith("-jar", "%HOME_FOLDER%\\lib\\everyblade-desktop.jar", "%*");
        assertThat(words).contains("-Deveryblade.home=%HOME_FOLDER%", "-Dfile.encoding=UTF-8", "-Xshare:auto");
        assertThat(words)
                .as("whether a person watches is for Java to find out")
                .contains("-Deveryblade.watched=console", "-Djdk.console=java.base");
        assertThat(words.subList(1, words.size()))
                .filteredOn(word -> word.startsWith("-X") || word.startsWith("-Dfile"))
                .allSatisfy(word -> assertThat(other).contains(word));
    }

    /** But for what is about the archive of classes, which is made where Java and the jars lie as on the machine of the build. */
    @Test
    void javaIsStartedAsQuickly() throws IOException {
        List<String> flags = Pattern.compile("^quick=\"(?:\\$quick )?([^\"]*)\"", Pattern.MULTILINE)
                .matcher(Files.readString(LAUNCHERS.resolve("everyblade")))
                .results()
                .flatMap(line -> Stream.of(line.group(1).split(" ")))
                .filter(flag -> !flag.contains("ArchiveRelocationMode") && !flag.contains("UnlockDiagnostic"))
                .toList();

        assertThat(flags).hasSizeGreaterThan(5);
        assertThat(words(java())).containsAll(flags);
    }

    @Test
    void theFolderIsTheOneAboveItsOwnAndTheExitStatusIsThatOfJava() throws IOException {
        List<String> lines = lines();
        assertThat(lines).contains("set \"HOME_FOLDER=%~dp0..\"");
        assertThat(lines.get(lines.size() - 2)).isEqualTo(java());
        assertThat(lines.get(lines.size() - 1)).isEqualTo("exit /b %ERRORLEVEL%");
    }
}
