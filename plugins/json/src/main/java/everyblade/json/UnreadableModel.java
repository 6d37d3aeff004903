package everyblade.json;

import java.io.IOException;
import java.util.List;

/** A model that cannot be read, with every problem in its place; the message is the first of them. */
public final class UnreadableModel extends IOException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    UnreadableModel(Reading.Unreadable reading) {
        super(reading.problems().get(0).toString());
        this.problems = reading.problems();
    }

    /** At least one, errors first. */
    public List<Problem> problems() {
        return problems;
    }
}
