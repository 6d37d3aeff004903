package everyblade.window;

import everyblade.session.Keeping;
import everyblade.words.Words;
import java.awt.Component;
import java.nio.file.Path;
import java.util.List;

/**
 * Writes a job's papers: asks for a file, has a command write it, and tells what came of it.
 *
 * @param drill whether the job is a drill, of which there is a report and nothing else
 */
record Papers(Component frame, JobStarting commands, Places places, Door door, Words words, boolean drill) {

    /** A paper: the command that writes it, and the texts for asking, for waiting and for having written it. */
    enum Paper {
        REPORT("report", "bar.report", "wait.report", "report.written"),
        HANDOVER("handover", "closing.handover", "wait.handover", "handover.written");

        private final String command;
        private final String title;
        private final String waiting;
        private final String written;

        Paper(String command, String title, String waiting, String written) {
            this.command = command;
            this.title = title;
            this.waiting = waiting;
            this.written = written;
        }

        /** The command that writes it of a drill, or of a job. */
        List<String> command(boolean drill) {
            return drill ? List.of("drill", command) : List.of(command);
        }
    }

    void write(JobScreen screen, Paper paper) {
        if (drill && paper != Paper.REPORT) {
            screen.tell(List.of(words.say("drill.onlyReport")));
            return;
        }
        Path job = screen.state().folder();
        places.askFile(frame, words.say(paper.title), job, paper.command)
                .ifPresent(file -> door.aside(
                        words.say(paper.waiting),
                        () -> commands.write(paper.command(drill), job, file)
                                .orElseGet(() -> words.say(paper.written, file.toString())),
                        message -> screen.tell(List.of(message))));
    }

    /** Asks who signs the record as what, signs what is on disk, and tells what came of it. */
    void sign(JobScreen screen) {
        Path job = screen.state().folder();
        if (drill) {
            screen.tell(List.of(words.say("drill.onlyReport")));
        } else if (screen.state().keeping() instanceof Keeping.InMemory) {
            screen.tell(List.of(words.say("sign.unsaved")));
        } else if (commands.around().packed().holds(job)) {
            screen.tell(List.of(words.say("sign.packed")));
        } else {
            new SignForm(words)
                    .asked(frame)
                    .ifPresent(filled -> door.aside(
                            words.say("wait.sign"),
                            () -> commands.sign(job, filled).orElseGet(() -> words.say("sign.done")),
                            message -> screen.tell(List.of(message))));
        }
    }
}
