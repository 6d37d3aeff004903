package everyblade.json.jar;

import java.util.List;

/** The one way in for models in code: what becomes of a jar that cannot be read without running it. */
@FunctionalInterface
public interface CodeDoor {

    /** Runs nothing. */
    CodeDoor SHUT = jar -> List.of(new Handed.Code(jar));

    /** What the jar hands over, in its own order, or that it was not run; at least one thing. */
    List<Handed> open(CodeJar jar);
}
