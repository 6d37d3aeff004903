package everyblade.core.surface;

import everyblade.fact.Fact;
import java.util.Optional;

/** A shape or a mesh file that gives no surface. */
public final class UnusableShape extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Told told;

    /**
     * What is told of it.
     *
     * @param row id of the row whose shape it is, where that is known
     * @param fault why it gives none
     * @param mend what the author of the model is to do
     */
    public record Told(Optional<String> row, ShapeFault fault, ShapeFault.Mend mend) implements Fact {}

    UnusableShape(ShapeFault fault) {
        this(Optional.empty(), fault);
    }

    private UnusableShape(Optional<String> row, ShapeFault fault) {
        super(fault.toString(), null, false, false);
        this.told = new Told(row, fault, fault.mend());
    }

    UnusableShape of(String row) {
        return new UnusableShape(Optional.of(row), told.fault());
    }

    /** In one line what, why and what to do. */
    public Told told() {
        return told;
    }
}
