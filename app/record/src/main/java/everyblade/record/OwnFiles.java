package everyblade.record;

import everyblade.record.packed.PackedName;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which files of a folder belong to its job.
 *
 * @param largest how many bytes each may have at most, by its name
 * @param left what else is in the folder and belongs to no job
 */
record OwnFiles(Map<String, Long> largest, List<String> left) {

    /** What is only there while somebody writes. */
    private static final Set<String> NOT_ITS_OWN = Set.of(JobFolder.LOCK, ReviewFile.LOCK);

    static OwnFiles of(JobFiles files) throws UnsoundJournal {
        Map<String, Long> own = new TreeMap<>();
        List<String> left = new ArrayList<>();
        for (String folder : PackedName.FOLDERS) {
            if (folder.isEmpty() || files.disk().exists(files.root().resolve(folder))) {
                look(files, folder.isEmpty() ? "" : folder + "/", own, left);
            }
        }
        return new OwnFiles(own, List.copyOf(left));
    }

    private static void look(JobFiles files, String folder, Map<String, Long> own, List<String> left)
            throws UnsoundJournal {
        try {
            for (String name :
                    files.disk().list(files.place(folder + Journal.FILE).getParent())) {
                String whole = folder + name;
                PackedName.largest(whole).ifPresent(largest -> own.put(whole, largest));
                if (!own.containsKey(whole) && !PackedName.FOLDERS.contains(whole) && !NOT_ITS_OWN.contains(whole)) {
                    left.add(whole);
                }
            }
        } catch (IOException failure) {
            throw new UnsoundJournal(new JobReader(files).unreadable(folder.isEmpty() ? "." : folder, failure));
        }
    }

    /** All bytes of one of them. */
    byte[] bytes(JobFiles files, String name) throws UnsoundJournal {
        try {
            return files.read(name, largest.get(name));
        } catch (IOException failure) {
            throw new UnsoundJournal(new JobReader(files).unreadable(name, failure));
        }
    }
}
