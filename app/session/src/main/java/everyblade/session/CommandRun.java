package everyblade.session;

import everyblade.session.around.Surroundings;

/** Does what a command line says; the window starts jobs, signs and writes papers by it, and knows no more of it. */
@FunctionalInterface
public interface CommandRun {

    /**
     * Does what the arguments say; throws nothing.
     *
     * @return the exit status
     */
    int run(Surroundings around, String... arguments);
}
