package everyblade.json.jar;

import java.util.List;

/** One thing that a jar hands over: an engine model as text, or why there is none. */
public sealed interface Handed {

    /**
     * An engine model, not read yet.
     *
     * @param file its name, for messages
     * @param engineJson what stands in it, or would
     * @param doubts that refuse nothing
     */
    record Model(String file, byte[] engineJson, List<Complaint> doubts) implements Handed {
        public Model {
            doubts = List.copyOf(doubts);
        }
    }

    /** No model. */
    record Failed(Complaint complaint) implements Handed {}

    /** Code that was not run, so that nobody knows its models yet. */
    record Code(CodeJar jar) implements Handed {}
}
