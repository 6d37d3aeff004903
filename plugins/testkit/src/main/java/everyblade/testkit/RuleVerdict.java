package everyblade.testkit;

import java.util.List;

/** What became of one rule. */
public sealed interface RuleVerdict {

    /** In one word. */
    String word();

    /** What there is to say of it, a line each. */
    List<String> lines();

    /** The model does as it is asked. */
    record Kept() implements RuleVerdict {
        @Override
        public String word() {
            return "kept";
        }

        @Override
        public List<String> lines() {
            return List.of();
        }
    }

    /**
     * The model does not.
     *
     * @param lines where and how, at least one
     */
    record Broken(List<String> lines) implements RuleVerdict {
        public Broken {
            lines = List.copyOf(lines);
            if (lines.isEmpty()) {
                throw new IllegalArgumentException("broken needs a line that says how");
            }
        }

        @Override
        public String word() {
            return "broken";
        }
    }

    /**
     * It could not be asked of this model.
     *
     * @param why it could not
     */
    record NotAsked(String why) implements RuleVerdict {
        @Override
        public String word() {
            return "not asked";
        }

        @Override
        public List<String> lines() {
            return List.of(why);
        }
    }

    /**
     * A person must look.
     *
     * @param how to do that
     */
    record ByHand(String how) implements RuleVerdict {
        @Override
        public String word() {
            return "by hand";
        }

        @Override
        public List<String> lines() {
            return List.of(how);
        }
    }

    /** Kept if there is nothing to say against it. */
    static RuleVerdict of(List<String> against) {
        return against.isEmpty() ? new Kept() : new Broken(against);
    }
}
