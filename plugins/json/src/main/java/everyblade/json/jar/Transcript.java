package everyblade.json.jar;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What code has handed over, as bytes: a mark for its beginning, the things in order, a mark for the end. It comes out of
 * the process in which the code ran, and is kept so that the code need not run again. Whoever reads it believes none of
 * it: whatever is cut off or makes no sense is left out.
 *
 * @param handed what was read
 * @param whole whether the end was reached
 */
public record Transcript(List<Handed> handed, boolean whole) {

    /** Longest one that is read, bytes: two models of the largest kind. */
    static final long LARGEST = 128L << 20;

    private static final byte BEGIN = 'b';
    private static final byte MODEL = 'm';
    private static final byte FAILED = 'f';
    private static final byte END = 'e';

    public Transcript {
        handed = List.copyOf(handed);
    }

    /** Reads what the code of a jar has handed over. */
    public static Transcript read(CodeJar jar, byte[] bytes) {
        List<Handed> handed = new ArrayList<>();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            if (in.get() != BEGIN) {
                return new Transcript(handed, false);
            }
            for (byte mark = in.get(); mark != END; mark = in.get()) {
                Optional<Handed> one =
                        mark == MODEL ? Optional.of(model(jar, in)) : mark == FAILED ? failed(in) : Optional.empty();
                if (one.isEmpty()) {
                    return new Transcript(handed, false);
                }
                handed.add(one.get());
            }
            return new Transcript(handed, !in.hasRemaining() && !handed.isEmpty());
        } catch (BufferUnderflowException cutOff) {
            return new Transcript(handed, false);
        }
    }

    /** The whole of it, to be kept. */
    public static byte[] of(List<Handed> handed) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            begin(bytes);
            for (Handed one : handed) {
                add(bytes, one);
            }
            end(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    static void begin(OutputStream out) throws IOException {
        out.write(BEGIN);
    }

    static void add(OutputStream out, Handed one) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(bytes);
        if (one instanceof Handed.Model model) {
            data.write(MODEL);
            write(data, model.engineJson());
        } else if (one instanceof Handed.Failed failed) {
            Complaint complaint = failed.complaint();
            data.write(FAILED);
            for (String text : List.of(complaint.fault().code(), complaint.what(), complaint.why(), complaint.mend())) {
                write(data, text.getBytes(StandardCharsets.UTF_8));
            }
        }
        bytes.writeTo(out);
    }

    static void end(OutputStream out) throws IOException {
        out.write(END);
    }

    private static void write(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static Handed model(CodeJar jar, ByteBuffer in) {
        return new Handed.Model(jar.file(), bytes(in), jar.doubts());
    }

    private static Optional<Handed> failed(ByteBuffer in) {
        String code = text(in);
        String what = text(in);
        String why = text(in);
        String mend = text(in);
        return Arrays.stream(Fault.values())
                .filter(fault -> fault.code().equals(code))
                .findFirst()
                .map(fault -> new Handed.Failed(new Complaint(fault, what, why, mend)));
    }

    private static String text(ByteBuffer in) {
        return JarRefusal.line(new String(bytes(in), StandardCharsets.UTF_8));
    }

    private static byte[] bytes(ByteBuffer in) {
        int length = in.getInt();
        if (length < 0 || length > in.remaining()) {
            throw new BufferUnderflowException();
        }
        byte[] bytes = new byte[length];
        in.get(bytes);
        return bytes;
    }
}
