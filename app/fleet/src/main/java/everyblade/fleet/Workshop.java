package everyblade.fleet;

import everyblade.fleet.StoreRefusal.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A folder of our own in which jobs of a store lie for a moment; removed with all that is in it when it is closed.
 *
 * @param folder the folder
 */
public record Workshop(Path folder) implements AutoCloseable {

    /**
     * Makes one.
     *
     * @param within where; in the system's folder for temporary files, unless said
     */
    public static Workshop open(Optional<Path> within) throws StoreRefusal {
        try {
            String name = "everyblade-fleet-";
            return new Workshop(
                    within.isPresent()
                            ? Files.createTempDirectory(within.get(), name)
                            : Files.createTempDirectory(name));
        } catch (IOException failure) {
            throw new StoreRefusal(Reason.NOT_WRITTEN, StoreRefusal.said(failure));
        }
    }

    /** Where a job can lie. */
    public Path place(KeptChain job) {
        return folder.resolve(job.first());
    }

    /** Removes what lies there, if anything does. */
    public void clear(Path place) throws StoreRefusal {
        if (!Files.exists(place)) {
            return;
        }
        try (Stream<Path> all = Files.walk(place)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException failure) {
            throw new StoreRefusal(Reason.NOT_WRITTEN, place + ": " + StoreRefusal.said(failure));
        }
    }

    @Override
    public void close() throws StoreRefusal {
        clear(folder);
    }
}
