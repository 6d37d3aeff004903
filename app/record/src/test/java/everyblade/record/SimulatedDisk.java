package everyblade.record;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * A disk that keeps apart what was written and what is safe. What is not yet forced is a list of changes: of a file the
 * sectors that were touched, its length, and cuts; of a folder its names. A cut in power keeps any of them and loses
 * the others, so a file may have its length without its middle. A force that fails leaves what was written readable and
 * forgets that it was never made safe, as some systems do.
 */
final class SimulatedDisk implements Disk {

    static final int SECTOR = 64;

    /** Thrown at the moment of the cut, and by everything after. */
    static final class PowerCut extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * Something that changes the disk.
     *
     * @param what is done
     * @param bytes how many are written, 0 if it is no write
     */
    record Step(String what, int bytes) {}

    /** What is to go wrong, when, and how many bytes of a write come before. */
    record Fault(int step, int bytes, Kind kind) {
        enum Kind {
            POWER_CUT,
            REFUSED_ONCE,
            /** This step and the next. */
            REFUSED_TWICE,
            REFUSED_FOR_GOOD
        }

        private int lastStep() {
            return switch (kind) {
                case POWER_CUT, REFUSED_ONCE -> step;
                case REFUSED_TWICE -> step + 1;
                case REFUSED_FOR_GOOD -> Integer.MAX_VALUE;
            };
        }

        static final Fault NONE = new Fault(-1, 0, Kind.REFUSED_ONCE);
    }

    private sealed interface Node {}

    private static final class FileNode implements Node {
        byte[] now = {};
        byte[] safe = {};
        final List<UnaryOperator<byte[]>> pending = new ArrayList<>();
    }

    private static final class FolderNode implements Node {
        Map<String, Node> now = new TreeMap<>();
        Map<String, Node> safe = new TreeMap<>();
        final List<UnaryOperator<Map<String, Node>>> pending = new ArrayList<>();
    }

    private final List<Node> nodes = new ArrayList<>();
    private final FolderNode root;
    private final Set<Path> locks = new HashSet<>();
    private final List<Step> steps = new ArrayList<>();
    private Fault fault = Fault.NONE;
    private boolean dead;

    SimulatedDisk() {
        root = new FolderNode();
        nodes.add(root);
    }

    /** From now on steps are counted from 0, and this goes wrong. */
    SimulatedDisk with(Fault next) {
        fault = next;
        steps.clear();
        return this;
    }

    /** What was done since the fault was set. */
    List<Step> steps() {
        return List.copyOf(steps);
    }

    /** How many changes are not safe. */
    int pending() {
        return nodes.stream()
                .mapToInt(node ->
                        node instanceof FileNode file ? file.pending.size() : ((FolderNode) node).pending.size())
                .sum();
    }

    /** The disk that is found after a cut in power, if of the pending changes these are kept. */
    SimulatedDisk afterPowerCut(BitSet kept) {
        SimulatedDisk found = new SimulatedDisk();
        Map<Node, Node> copies = new IdentityHashMap<>();
        for (Node node : nodes) {
            Node copy = node == root ? found.root : node instanceof FileNode ? new FileNode() : new FolderNode();
            copies.put(node, copy);
            if (node != root) {
                found.nodes.add(copy);
            }
        }
        int change = 0;
        for (Node node : nodes) {
            if (node instanceof FileNode file) {
                byte[] content = file.safe;
                for (UnaryOperator<byte[]> pending : file.pending) {
                    content = kept.get(change++) ? pending.apply(content) : content;
                }
                FileNode copy = (FileNode) copies.get(node);
                copy.now = content;
                copy.safe = content;
            } else if (node instanceof FolderNode folder) {
                Map<String, Node> content = new TreeMap<>(folder.safe);
                for (UnaryOperator<Map<String, Node>> pending : folder.pending) {
                    content = kept.get(change++) ? pending.apply(content) : content;
                }
                FolderNode copy = (FolderNode) copies.get(node);
                content.forEach((name, child) -> copy.now.put(name, copies.get(child)));
                copy.safe = new TreeMap<>(copy.now);
            }
        }
        return found;
    }

    /** Counts a step and lets it go wrong if it is the one; gives how many bytes of it are still done. */
    private int step(String what, int bytes) {
        requirePower();
        steps.add(new Step(what, bytes));
        int step = steps.size() - 1;
        boolean hit = fault.step() >= 0 && step >= fault.step() && step <= fault.lastStep();
        return hit ? Math.min(fault.bytes(), bytes) : -1;
    }

    private void fail() throws IOException {
        if (fault.kind() == Fault.Kind.POWER_CUT) {
            dead = true;
            throw new PowerCut();
        }
        throw new IOException("No space left on device");
    }

    private void stepOrFail(String what) throws IOException {
        if (step(what, 0) >= 0) {
            fail();
        }
    }

    private void requirePower() {
        if (dead) {
            throw new PowerCut();
        }
    }

    private Node find(Path path) {
        Node node = root;
        for (Path name : path) {
            node = node instanceof FolderNode folder ? folder.now.get(name.toString()) : null;
        }
        return node;
    }

    private FolderNode folder(Path path) throws IOException {
        if (path != null && find(path) instanceof FolderNode folder) {
            return folder;
        }
        throw new NoSuchFileException(String.valueOf(path));
    }

    private FileNode file(Path path) throws IOException {
        if (find(path) instanceof FileNode file) {
            return file;
        }
        throw new NoSuchFileException(path.toString());
    }

    private static void change(FolderNode folder, UnaryOperator<Map<String, Node>> change) {
        folder.now = change.apply(new TreeMap<>(folder.now));
        folder.pending.add(names -> change.apply(new TreeMap<>(names)));
    }

    private void add(Path path, Node node) throws IOException {
        if (find(path) != null) {
            throw new FileAlreadyExistsException(path.toString());
        }
        String name = path.getFileName().toString();
        nodes.add(node);
        change(folder(path.getParent()), names -> {
            names.put(name, node);
            return names;
        });
    }

    @Override
    public boolean exists(Path path) {
        requirePower();
        return find(path) != null;
    }

    @Override
    public List<String> list(Path path) throws IOException {
        requirePower();
        return List.copyOf(folder(path).now.keySet());
    }

    @Override
    public byte[] read(Path path) throws IOException {
        requirePower();
        return file(path).now.clone();
    }

    @Override
    public long size(Path path) throws IOException {
        requirePower();
        return file(path).now.length;
    }

    @Override
    public void createFolder(Path path) throws IOException {
        stepOrFail("create folder " + path);
        add(path, new FolderNode());
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        stepOrFail("rename " + from);
        FolderNode parent = folder(from.getParent());
        Node node = find(from);
        requireEmpty(to);
        change(parent, names -> {
            names.remove(from.getFileName().toString(), node);
            names.put(to.getFileName().toString(), node);
            return names;
        });
    }

    @Override
    public void delete(Path path) throws IOException {
        stepOrFail("delete " + path);
        requireEmpty(path);
        change(folder(path.getParent()), names -> {
            names.remove(path.getFileName().toString());
            return names;
        });
    }

    private void requireEmpty(Path path) throws IOException {
        if (find(path) instanceof FolderNode folder && !folder.now.isEmpty()) {
            throw new DirectoryNotEmptyException(path.toString());
        }
    }

    @Override
    public void forceFolder(Path path) throws IOException {
        FolderNode folder = folder(path);
        int done = step("force folder " + path, 0);
        if (done < 0) {
            folder.safe = new TreeMap<>(folder.now);
            folder.pending.clear();
        } else {
            fail();
        }
    }

    @Override
    public OpenFile create(Path path) throws IOException {
        stepOrFail("create " + path);
        FileNode node = new FileNode();
        add(path, node);
        return new SimulatedFile(path, node);
    }

    @Override
    public OpenFile open(Path path) throws IOException {
        requirePower();
        return new SimulatedFile(path, file(path));
    }

    @Override
    public LockAnswer lock(Path path, String holder) throws IOException {
        requirePower();
        if (!locks.add(path)) {
            return new Held(holder);
        }
        if (find(path) == null) {
            add(path, new FileNode());
        }
        return new SimulatedLock(() -> locks.remove(path));
    }

    private record SimulatedLock(Runnable free) implements Lock {
        @Override
        public void close() {
            free.run();
        }
    }

    private final class SimulatedFile implements OpenFile {
        private final Path path;
        private final FileNode node;

        SimulatedFile(Path path, FileNode node) {
            this.path = path;
            this.node = node;
        }

        @Override
        public void write(long position, byte[] bytes) throws IOException {
            int done = step("write " + path, bytes.length);
            put(Math.toIntExact(position), done < 0 ? bytes : Arrays.copyOf(bytes, done));
            if (done >= 0) {
                fail();
            }
        }

        private void put(int position, byte[] bytes) {
            if (bytes.length == 0) {
                return;
            }
            int end = position + bytes.length;
            node.now = overlay(node.now, position, bytes);
            node.pending.add(content -> content.length < end ? Arrays.copyOf(content, end) : content);
            for (int sector = position / SECTOR * SECTOR; sector < end; sector += SECTOR) {
                int start = sector;
                byte[] dirty = Arrays.copyOfRange(node.now, start, Math.min(start + SECTOR, node.now.length));
                node.pending.add(content -> overlay(content, start, dirty));
            }
        }

        private byte[] overlay(byte[] content, int position, byte[] bytes) {
            byte[] result = Arrays.copyOf(content, Math.max(content.length, position + bytes.length));
            System.arraycopy(bytes, 0, result, position, bytes.length);
            return result;
        }

        @Override
        public void truncate(long length) throws IOException {
            stepOrFail("truncate " + path);
            UnaryOperator<byte[]> cut =
                    content -> content.length > length ? Arrays.copyOf(content, (int) length) : content;
            node.now = cut.apply(node.now);
            node.pending.add(cut);
        }

        @Override
        public void force() throws IOException {
            int done = step("force " + path, 0);
            if (done < 0) {
                // not simply what is readable: what a failed force has forgotten stays forgotten
                node.pending.forEach(change -> node.safe = change.apply(node.safe));
                node.pending.clear();
                return;
            }
            if (fault.kind() != Fault.Kind.POWER_CUT) {
                node.pending.clear();
            }
            fail();
        }

        @Override
        public void close() {
            // what is written stays written, and what is not safe stays so
        }
    }
}
