package everyblade.cli;

import everyblade.core.finding.closing.ClosingList;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.ClosingText;
import everyblade.session.job.OpenedJob;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says everything that is still open; it closes nothing itself. */
@Command(name = "close", description = "${bundle:help.close}")
final class CloseCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    CloseCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.read(around, job);
        ClosingList list = opened.closing(opened.coverage());
        if (json) {
            around.out().println(JsonText.of(ClosingJson.of(list, around.words())));
        } else {
            text(list);
        }
        return list.any() ? Commands.NOT_COMPLETE : Commands.FINE;
    }

    private void text(ClosingList list) {
        Words words = around.words();
        list.items().forEach(item -> say(ClosingText.open(item, words)));
        list.told().forEach(item -> say(ClosingText.told(item, words)));
        list.accepted().forEach(accepted -> say(ClosingText.accepted(accepted, words)));
        say(ClosingText.count(list, words));
    }

    private void say(String line) {
        around.out().println(OneLine.of(line));
    }
}
