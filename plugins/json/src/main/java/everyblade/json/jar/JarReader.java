package everyblade.json.jar;

import everyblade.spi.EngineModel;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.zip.ZipFile;

/**
 * Opens jars, each on a thread of its own and for no longer than it has patience: whatever is in a jar, the caller gets
 * an answer. A jar that takes longer is left to its thread, which keeps no program from ending, and closes the jar if it
 * ever comes to an end.
 *
 * @param data name of the entry that makes a jar a data-only plugin
 * @param asText what it would say of a model of code
 * @param patience how long a jar may take
 */
public record JarReader(String data, Function<EngineModel, byte[]> asText, Duration patience) {

    /** What the jar hands over, in its own order; at least one thing. */
    public List<Handed> open(Path jar) {
        List<Handed> handed = Collections.synchronizedList(new ArrayList<>());
        FutureTask<Void> task = new FutureTask<>(() -> read(jar, handed::add), null);
        Thread thread = new Thread(task, "plugin " + jar.getFileName());
        thread.setDaemon(true);
        thread.start();
        try {
            task.get(patience.toNanos(), TimeUnit.NANOSECONDS);
        } catch (TimeoutException e) {
            thread.interrupt();
            handed.add(tooSlow("it has taken longer than " + patience.toMillis() / 1000.0 + " s"));
        } catch (InterruptedException e) {
            thread.interrupt();
            Thread.currentThread().interrupt();
            handed.add(tooSlow("it was not waited for"));
        } catch (ExecutionException e) {
            handed.add(failed(Fault.PLUGIN_FAILED, "the plugin fails", Reason.of(e.getCause())));
        }
        return List.copyOf(handed);
    }

    private void read(Path jar, Consumer<Handed> to) {
        try {
            Contents.requireSize(jar);
            Optional<Sources> code;
            try (ZipFile zip = new ZipFile(jar.toFile())) {
                code = sources(jar, zip, to);
            }
            if (code.isPresent()) {
                code.get().handOver();
            }
        } catch (JarFault fault) {
            to.accept(new Handed.Failed(fault.complaint()));
        } catch (IOException | IllegalArgumentException e) {
            to.accept(failed(Fault.BAD_JAR, "this is no readable jar", Reason.of(e)));
        }
    }

    /** Hands over what is data; what is code is only looked at, and has yet to speak. */
    private Optional<Sources> sources(Path jar, ZipFile zip, Consumer<Handed> to) throws IOException, JarFault {
        Contents.requireFit(zip);
        Optional<byte[]> text = Contents.bytes(zip, data);
        if (text.isPresent()) {
            to.accept(new Handed.Model(jar + "!/" + data, text.get(), List.of()));
            return Optional.empty();
        }
        Optional<Metadata> metadata = Metadata.of(zip);
        if (metadata.isPresent()) {
            metadata.get().requireOurs();
        }
        String name = metadata.map(Metadata::toString).orElse(String.valueOf(jar.getFileName()));
        List<Complaint> doubts = metadata.isPresent() ? List.of() : List.of(Metadata.missing(name));
        return Optional.of(new Sources(jar, name, data, asText, doubts, to));
    }

    private static Handed tooSlow(String why) {
        return new Handed.Failed(new Complaint(
                Fault.PLUGIN_TOO_SLOW,
                "the plugin does not come to an end",
                why + ", and is left alone",
                "take it out of the folder, and ask its author to compute less when it is loaded"));
    }

    private static Handed failed(Fault fault, String what, String why) {
        return new Handed.Failed(new Complaint(fault, what, why, "copy it anew, or take it out of the folder"));
    }
}
