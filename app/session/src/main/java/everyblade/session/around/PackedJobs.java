package everyblade.session.around;

import everyblade.record.packed.UnfitZip;
import everyblade.record.packed.Unpacking;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Packed jobs, each unpacked into a folder that only this user may read, which goes when the program is done. */
public final class PackedJobs implements AutoCloseable {

    private final Map<Path, Path> unpacked = new HashMap<>();

    /** The folder of a packed job; what is done to it is lost. */
    synchronized Path folder(Surroundings around, Path named) {
        Path zip = around.path(named).toAbsolutePath().normalize();
        Path known = unpacked.get(zip);
        return known == null ? unpack(around, named, zip) : known;
    }

    /** Whether a job's folder is one that was unpacked, and goes when the program ends. */
    public synchronized boolean holds(Path folder) {
        return unpacked.containsValue(folder);
    }

    private Path unpack(Surroundings around, Path named, Path zip) {
        try {
            Optional<Path> place = around.variable("TMPDIR").flatMap(UserFolders::path);
            Path temporary = place.isPresent()
                    ? Files.createTempDirectory(place.get(), "everyblade-")
                    : Files.createTempDirectory("everyblade-");
            unpacked.put(zip, temporary);
            Unpacking.into(temporary, zip);
            return temporary;
        } catch (UnfitZip unfit) {
            throw Failure.of("stopped.packedJobs.nameJobSFolderOr", named, unfit.why());
        } catch (IOException failure) {
            throw Failure.of("stopped.packedJobs.cannotBeUnpackedCheckThat", named);
        }
    }

    @Override
    public synchronized void close() {
        unpacked.values().forEach(PackedJobs::remove);
        unpacked.clear();
    }

    private static void remove(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            List<Path> deepestFirst = paths.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) {
                Files.deleteIfExists(path);
            }
        } catch (IOException | UncheckedIOException stays) {
            // It lies among the system's temporary files, which the system clears.
        }
    }
}
