package everyblade.json.jar;

import java.util.Objects;
import java.util.Optional;
import java.util.ServiceConfigurationError;

/** What something thrown by a plugin says, on one line, whatever its own methods do. */
final class JarRefusal {

    private static final int LONGEST = 300;
    private static final int MOST_CAUSES = 20;

    private JarRefusal() {}

    /** Its kind and its message; of what only wraps another, that of the other. */
    static String of(Throwable thrown) {
        if (thrown instanceof ServiceConfigurationError || thrown instanceof ExceptionInInitializerError) {
            return thrown.getCause() == null ? message(thrown).replaceFirst("^[\\w.]+: ", "") : of(thrown.getCause());
        }
        String kind = thrown.getClass().getSimpleName();
        String message = message(thrown);
        return message.isBlank() ? kind : kind + ": " + message;
    }

    /** The nearest of these causes that is of a kind; empty if none is. */
    static <T extends Throwable> Optional<T> cause(Throwable thrown, Class<T> kind) {
        Throwable at = thrown;
        for (int depth = 0; at != null && depth < MOST_CAUSES; depth++) {
            if (kind.isInstance(at)) {
                return Optional.of(kind.cast(at));
            }
            at = at.getCause();
        }
        return Optional.empty();
    }

    /** A text on one line, cut short if it is long. */
    static String line(String text) {
        String cut = text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
        return cut.replaceAll("[\\p{Cntrl}\\p{Zl}\\p{Zp}\\p{Cs}]+", " ").strip();
    }

    private static String message(Throwable said) {
        try {
            return line(Objects.requireNonNullElse(said.getMessage(), ""));
        } catch (RuntimeException | Error itself) {
            return "";
        }
    }
}
