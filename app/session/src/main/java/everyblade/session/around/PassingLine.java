package everyblade.session.around;

import java.io.PrintStream;

/** A line at a terminal that is written over by what is told next, and in the end taken away. */
final class PassingLine {

    private final PrintStream to;
    private String shown = "";

    PassingLine(PrintStream to) {
        this.to = to;
    }

    /** Writes over what is there; an empty line takes it away. */
    void show(String line) {
        if (!line.equals(shown)) {
            to.print("\r" + " ".repeat(shown.length()) + "\r" + line);
            to.flush();
            shown = line;
        }
    }
}
