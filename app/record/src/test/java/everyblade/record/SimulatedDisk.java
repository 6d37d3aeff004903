package everyblade.record;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
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

    private static final int SECTOR = 64;

    /** Thrown at the moment of the cut, and by everything after. */
    static final class PowerCut extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * Something that changes the disk or makes it safe.
     *
     * @param what is done
     * @param bytes how many are written, 0 if it is no write
     */
    record Step(String what, int bytes) {}

    private sealed interface Node {
        Cached<?> content();
    }

    private static final class FileNode implements Node {
        private final Cached<byte[]> content;

        FileNode(byte[] safe) {
            content = new Cached<>(safe);
        }

        @Override
        public Cached<byte[]> content() {
            return content;
        }
    }

    private static final class FolderNode implements Node {
        private final Cached<Map<String, Node>> content;

        FolderNode(Map<String, Node> safe) {
            content = new Cached<>(safe);
        }

        @Override
        public Cached<Map<String, Node>> content() {
            return content;
        }
    }

    private final List<Node> nodes = new ArrayList<>();
    private final FolderNode root;
    private final Set<Path> locks = new HashSet<>();
    private final List<Step> steps = new ArrayList<>();
    private Fault fault = Fault.NONE;
    private boolean dead;

    SimulatedDisk() {
        this(new FolderNode(Map.of()));
        nodes.add(root);
    }

    private SimulatedDisk(FolderNode root) {
        this.root = root;
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
        return nodes.stream().mapToInt(node -> node.content().pending()).sum();
    }

    /** The disk that is found after a cut in power, if of the pending changes these are kept. */
    SimulatedDisk afterPowerCut(BitSet kept) {
        Map<Node, Integer> firstBits = new IdentityHashMap<>();
        int bit = 0;
        for (Node node : nodes) {
            firstBits.put(node, bit);
            bit += node.content().pending();
        }
        List<Node> found = new ArrayList<>();
        SimulatedDisk disk = new SimulatedDisk((FolderNode) found(root, kept, firstBits, found));
        disk.nodes.addAll(found);
        return disk;
    }

    private static Node found(Node node, BitSet kept, Map<Node, Integer> firstBits, List<Node> found) {
        Node copy;
        if (node instanceof FolderNode folder) {
            Map<String, Node> names = new TreeMap<>();
            folder.content()
                    .afterPowerCut(kept, firstBits.get(node))
                    .forEach((name, child) -> names.put(name, found(child, kept, firstBits, found)));
            copy = new FolderNode(names);
        } else {
            copy = new FileNode(((FileNode) node).content().afterPowerCut(kept, firstBits.get(node)));
        }
        found.add(copy);
        return copy;
    }

    /** Counts a step; gives whether it is to go wrong. */
    private boolean goesWrong(String what, int bytes) {
        requirePower();
        steps.add(new Step(what, bytes));
        return fault.hits(steps.size() - 1);
    }

    private void step(String what) throws IOException {
        if (goesWrong(what, 0)) {
            fail();
        }
    }

    private void fail() throws IOException {
        if (fault.kind() == Fault.Kind.POWER_CUT) {
            dead = true;
            throw new PowerCut();
        }
        throw new IOException("No space left on device");
    }

    private void requirePower() {
        if (dead) {
            throw new PowerCut();
        }
    }

    private Node find(Path path) {
        requirePower();
        Node node = root;
        for (Path name : path) {
            node = node instanceof FolderNode folder ? folder.content().now().get(name.toString()) : null;
        }
        return node;
    }

    private Cached<Map<String, Node>> folder(Path path) throws IOException {
        if (find(path) instanceof FolderNode folder) {
            return folder.content();
        }
        throw new NoSuchFileException(path.toString());
    }

    private Cached<byte[]> file(Path path) throws IOException {
        if (find(path) instanceof FileNode file) {
            return file.content();
        }
        throw new NoSuchFileException(path.toString());
    }

    private static UnaryOperator<Map<String, Node>> names(UnaryOperator<Map<String, Node>> change) {
        return names -> change.apply(new TreeMap<>(names));
    }

    private void add(Path path, Node node) throws IOException {
        if (find(path) != null) {
            throw new FileAlreadyExistsException(path.toString());
        }
        nodes.add(node);
        folder(path.getParent()).change(names(names -> {
            names.put(path.getFileName().toString(), node);
            return names;
        }));
    }

    private void requireEmpty(Path path) throws IOException {
        if (find(path) instanceof FolderNode folder && !folder.content().now().isEmpty()) {
            throw new DirectoryNotEmptyException(path.toString());
        }
    }

    @Override
    public boolean exists(Path path) {
        return find(path) != null;
    }

    @Override
    public List<String> list(Path path) throws IOException {
        return List.copyOf(folder(path).now().keySet());
    }

    @Override
    public void requireFolder(Path path) throws IOException {
        folder(path);
    }

    @Override
    public InputStream read(Path path, long longest) throws IOException {
        return new ByteArrayInputStream(file(path).now().clone());
    }

    byte[] read(Path path) throws IOException {
        return file(path).now().clone();
    }

    @Override
    public long size(Path path) throws IOException {
        return file(path).now().length;
    }

    @Override
    public void createFolder(Path path) throws IOException {
        step("create folder " + path);
        add(path, new FolderNode(Map.of()));
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step("rename " + from);
        Node node = find(from);
        requireEmpty(to);
        folder(from.getParent()).change(names(names -> {
            names.remove(from.getFileName().toString(), node);
            names.put(to.getFileName().toString(), node);
            return names;
        }));
    }

    @Override
    public void delete(Path path) throws IOException {
        step("delete " + path);
        requireEmpty(path);
        folder(path.getParent()).change(names(names -> {
            names.remove(path.getFileName().toString());
            return names;
        }));
    }

    @Override
    public void forceFolder(Path path) throws IOException {
        step("force folder " + path);
        folder(path).force();
    }

    @Override
    public OpenFile create(Path path) throws IOException {
        step("create " + path);
        add(path, new FileNode(new byte[0]));
        return open(path);
    }

    @Override
    public OpenFile createLike(Path path, Path other) throws IOException {
        file(other);
        return create(path);
    }

    @Override
    public OpenFile open(Path path) throws IOException {
        return new SimulatedFile(path, file(path));
    }

    @Override
    public LockAnswer lock(Path path, String holder) throws IOException {
        if (find(path) == null) {
            add(path, new FileNode(new byte[0]));
        }
        return locks.add(path) ? new SimulatedLock(() -> locks.remove(path)) : new Held(holder);
    }

    private record SimulatedLock(Runnable free) implements Lock {
        @Override
        public void close() {
            free.run();
        }
    }

    private final class SimulatedFile implements OpenFile {
        private final Path path;
        private final Cached<byte[]> content;

        SimulatedFile(Path path, Cached<byte[]> content) {
            this.path = path;
            this.content = content;
        }

        @Override
        public void write(long position, byte[] bytes) throws IOException {
            boolean wrong = goesWrong("write " + path, bytes.length);
            int done = wrong ? Math.min(fault.bytes(), bytes.length) : bytes.length;
            if (done > 0) {
                put(Math.toIntExact(position), Arrays.copyOf(bytes, done));
            }
            if (wrong) {
                fail();
            }
        }

        private void put(int position, byte[] bytes) {
            int end = position + bytes.length;
            byte[] next = overlay(content.now(), position, bytes);
            List<UnaryOperator<byte[]>> changes = new ArrayList<>();
            changes.add(before -> before.length < end ? Arrays.copyOf(before, end) : before);
            for (int sector = position / SECTOR * SECTOR; sector < end; sector += SECTOR) {
                int start = sector;
                byte[] dirty = Arrays.copyOfRange(next, start, Math.min(start + SECTOR, next.length));
                changes.add(before -> overlay(before, start, dirty));
            }
            content.change(next, changes);
        }

        private static byte[] overlay(byte[] content, int position, byte[] bytes) {
            byte[] result = Arrays.copyOf(content, Math.max(content.length, position + bytes.length));
            System.arraycopy(bytes, 0, result, position, bytes.length);
            return result;
        }

        @Override
        public void truncate(long length) throws IOException {
            step("truncate " + path);
            content.change(before -> before.length > length ? Arrays.copyOf(before, (int) length) : before);
        }

        @Override
        public void force() throws IOException {
            if (goesWrong("force " + path, 0)) {
                if (fault.kind() != Fault.Kind.POWER_CUT) {
                    content.forget();
                }
                fail();
            }
            content.force();
        }

        @Override
        public void close() {
            // what is written stays written, and what is not safe stays so
        }
    }
}
