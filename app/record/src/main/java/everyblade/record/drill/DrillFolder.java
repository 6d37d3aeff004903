package everyblade.record.drill;

import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Tip;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.drill.TipTrack.Event;
import everyblade.practice.drill.TipTrack.Sample;
import everyblade.practice.drill.TipTrack.TipLost;
import everyblade.practice.drill.TipTrack.ToldOf;
import everyblade.practice.drill.Truth;
import everyblade.record.Disk;
import everyblade.record.DiskFailure;
import everyblade.record.RecordProblem;
import everyblade.record.Remedy;
import everyblade.record.drill.Node.Garbled;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is added to a drill's folder while it goes on and when it ends. */
public final class DrillFolder {

    private static final String FOLDER = "drill";
    private static final String SET = "drill.json";
    private static final String TRACK = "track.jsonl";
    private static final String TRUTH = "truth.json";
    private static final long LARGEST = 64L << 20;

    private final Disk disk;
    private final Path root;

    public DrillFolder(Disk disk, Path root) {
        this.disk = disk;
        this.root = root;
    }

    /** Whether a folder is that of a drill, by what lies in it. */
    public static boolean isOne(Disk disk, Path root) {
        return disk.exists(root.resolve(FOLDER).resolve(SET));
    }

    private Path file(String name) {
        return root.resolve(FOLDER).resolve(name);
    }

    /** Adds to the track. What a cut in power takes of it is a second or so of the replay; entries are kept by the journal. */
    public Optional<RecordProblem> add(List<Sample> samples) {
        Path path = file(TRACK);
        try {
            boolean there = disk.exists(path);
            long end = there ? disk.size(path) : 0;
            try (Disk.OpenFile open = there ? disk.open(path) : disk.create(path)) {
                ByteArrayOutputStream lines = new ByteArrayOutputStream();
                for (Sample sample : samples) {
                    lines.writeBytes(line(sample));
                }
                open.write(end, lines.toByteArray());
                open.force();
            }
            return Optional.empty();
        } catch (IOException failure) {
            return Optional.of(notWritten(path, failure));
        }
    }

    private static byte[] line(Sample sample) {
        ObjectNode node = Node.empty().object();
        Tip tip = sample.moment().tip();
        node.put("t", sample.millis());
        node.put("view", tip.view());
        node.put("at", tip.station());
        node.put("push", tip.push());
        node.put("up", tip.up());
        node.put("right", tip.right());
        node.put("roll", tip.roll());
        node.put("round", tip.round());
        ObjectNode shafts = node.putObject("shafts");
        sample.moment().shafts().forEach(shafts::put);
        node.put("entries", sample.entries());
        if (!sample.tools().isEmpty()) {
            ObjectNode tools = node.putObject("tools");
            sample.tools().forEach(tools::put);
        }
        sample.event().ifPresent(event -> {
            if (event instanceof TipLost lost) {
                node.put("lost", lost.row());
            } else if (event instanceof ToldOf told) {
                node.put("told", told.harm());
            }
        });
        return (new String(new Node(node).bytes(), StandardCharsets.UTF_8) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** The track so far; a torn or garbled line ends it. */
    public TipTrack track() {
        List<Sample> samples = new ArrayList<>();
        Path path = file(TRACK);
        if (!disk.exists(path)) {
            return new TipTrack(samples);
        }
        try (InputStream in = disk.read(path, LARGEST)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            long before = 0;
            for (String line : text.split("\n")) {
                Node node = Node.read(line.getBytes(StandardCharsets.UTF_8));
                Tip tip = new Tip(
                        node.text("view"),
                        node.text("at"),
                        node.number("push"),
                        node.number("up"),
                        node.number("right"),
                        node.number("roll"),
                        node.number("round"));
                before = Math.max(before, node.whole("t"));
                samples.add(new Sample(
                        before,
                        new Moment(tip, node.numbers("shafts")),
                        node.has("entries") ? (int) node.whole("entries") : 0,
                        event(node),
                        node.has("tools") ? node.numbers("tools") : Map.of()));
            }
        } catch (IOException | Garbled cut) {
            return new TipTrack(samples);
        }
        return new TipTrack(samples);
    }

    private static Optional<Event> event(Node node) throws Garbled {
        if (node.has("lost")) {
            return Optional.of(new TipLost(node.text("lost")));
        }
        return node.has("told") ? Optional.of(new ToldOf((int) node.whole("told"))) : Optional.empty();
    }

    /** Ends the drill: from now on its truth can be read by anybody. */
    public Optional<RecordProblem> end(byte[] truth) {
        Path path = file(TRUTH);
        try (Disk.OpenFile open = disk.create(path)) {
            open.write(0, truth);
            open.force();
            disk.forceFolder(root.resolve(FOLDER));
            return Optional.empty();
        } catch (IOException failure) {
            return Optional.of(notWritten(path, failure));
        }
    }

    /** Whether it has ended. */
    public boolean ended() {
        return disk.exists(file(TRUTH));
    }

    /** The truth once it has ended; empty before, or if it is not the one that was sealed. */
    public Optional<Truth> truth(Sealed sealed) {
        if (!ended()) {
            return Optional.empty();
        }
        try (InputStream in = disk.read(file(TRUTH), LARGEST)) {
            byte[] bytes = in.readAllBytes();
            return sealed.isOf(bytes) ? DrillFile.readTruth(bytes) : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static RecordProblem notWritten(Path path, IOException failure) {
        return RecordProblem.inFile(
                RecordProblem.What.FILE_NOT_WRITTEN,
                path.toString(),
                DiskFailure.of(failure),
                Remedy.CHECK_DISK_AND_FOLDER);
    }
}
