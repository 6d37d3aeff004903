package everyblade.session.around;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The folders in which a user's programs keep what is theirs: on POSIX systems those of the XDG Base Directory
 * Specification 0.8, on Windows those of the application data.
 */
public final class UserFolders {

    private static final String OURS = "everyblade";

    private UserFolders() {}

    /** Where the user's configuration of programs is, ours among them. */
    public static Optional<Path> configuration(Surroundings around) {
        return around.variable("XDG_CONFIG_HOME")
                .or(() -> around.variable("APPDATA"))
                .flatMap(UserFolders::path)
                .or(() -> home(around).map(home -> home.resolve(".config")));
    }

    /** Our own folder for what can be computed again: the one that is named for it, else the one in the user's cache. */
    static Optional<Path> cache(Surroundings around) {
        Optional<Path> named = around.variable("EVERYBLADE_CACHE").flatMap(UserFolders::path);
        return named.map(around::path)
                .or(() -> around.variable("XDG_CACHE_HOME")
                        .or(() -> around.variable("LOCALAPPDATA"))
                        .flatMap(UserFolders::path)
                        .filter(Path::isAbsolute)
                        .or(() -> home(around).map(home -> home.resolve(".cache")))
                        .map(folder -> folder.resolve(OURS)));
    }

    /** Our own folder for what happened here: the log of faults. */
    public static Optional<Path> state(Surroundings around) {
        return around.variable("XDG_STATE_HOME")
                .or(() -> around.variable("LOCALAPPDATA"))
                .flatMap(UserFolders::path)
                .or(() -> home(around).map(home -> home.resolve(".local").resolve("state")))
                .map(folder -> folder.resolve(OURS));
    }

    private static Optional<Path> home(Surroundings around) {
        return around.variable("HOME").flatMap(UserFolders::path);
    }

    /** A path that can be one on this system. */
    public static Optional<Path> path(String text) {
        try {
            return Optional.of(Path.of(text));
        } catch (InvalidPathException unusable) {
            return Optional.empty();
        }
    }
}
