package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import everyblade.session.Opening;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class CommandsTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "start",
                "log",
                "coverage",
                "gaps",
                "next",
                "plan",
                "map",
                "report",
                "verify",
                "models",
                "check",
                "new-model",
                "show",
                "sight",
                "mesh",
                "measure",
                "picture"
            })
    void explainThemselves(String command) {
        Ran help = Console.in(folder).run(command, "--help");

        assertThat(help.status()).isZero();
        assertThat(help.out()).startsWith("Usage: everyblade " + command);
        assertThat(help.err()).isEmpty();
    }

    @Test
    void areNamedAsTheyNameThemselves() {
        CommandLine line = Commands.line(Console.in(folder).surroundings(), Opening.NONE);

        assertThat(line.getSubcommands().keySet()).containsExactlyElementsOf(Commands.NAMES);
        line.getSubcommands()
                .forEach((name, command) -> assertThat(command.getCommandSpec()
                                .userObject()
                                .getClass()
                                .getAnnotation(Command.class)
                                .name())
                        .isEqualTo(name));
    }

    @Test
    void areLookedThroughOnlyIfTheyAreAsked() {
        CommandLine line = Commands.line(Console.in(folder).surroundings(), Opening.NONE, "gaps", "job", "--json");

        assertThat(line.getSubcommands().keySet()).containsExactly("gaps");
    }

    @Test
    void areListedByTheProgram() {
        Ran help = Console.in(folder).run("--help");

        assertThat(help.status()).isZero();
        assertThat(help.out())
                .contains("start", "log", "coverage", "gaps", "next", "map", "report", "verify", "models", "check")
                .contains("Exit status: 0 fine; 1");
    }

    @Test
    void haveTheirSettingsInTheHelpOfStart() {
        assertThat(Console.in(folder).run("start", "--help").out()).contains("least-view", "grazing-leading");
    }

    @Test
    void tellTheirVersion() {
        assertThat(Console.in(folder).run("--version").out()).startsWith("everyblade ");
    }

    @Test
    void failIfTheirAnswerCannotBeWritten() {
        Console console = Console.in(folder);
        console.job();
        ByteArrayOutputStream full = new ByteArrayOutputStream() {
            @Override
            public void write(byte[] bytes, int from, int length) {
                throw new java.io.UncheckedIOException(new IOException("no space"));
            }

            @Override
            public void flush() throws IOException {
                throw new IOException("no space");
            }
        };

        Ran ran = console.feed(new ByteArrayInputStream(new byte[0]), full, "verify", "job");

        assertThat(ran.status()).isEqualTo(2);
    }
}
