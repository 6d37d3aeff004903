import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Writes a jar's classes of before Java 6 as class files of Java 8, and leaves all else in it as it is. Java prepares no
 * class for a quick start that is older, and checks such a class at every start in a way that takes its time. Into a second
 * file go the hashes that are others now.
 */
final class RenewedClasses {

    private static final int OLDEST_PREPARED = Opcodes.V1_6;
    private static final int MAJOR_VERSION_AT = 6;
    private static final List<String> HASHES =
            List.of("MD5", "SHA-1", "SHA-256", "SHA-384", "SHA-512", "SHA3-256", "SHA3-384", "SHA3-512");

    private RenewedClasses() {}

    public static void main(String[] arguments) throws IOException, NoSuchAlgorithmException {
        Path jar = Path.of(arguments[0]);
        Path renewed = Path.of(jar + ".new");
        try (URLClassLoader types = new URLClassLoader(new URL[] {jar.toUri().toURL()});
                ZipInputStream in = new ZipInputStream(Files.newInputStream(jar));
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(renewed))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] bytes = in.readAllBytes();
                ZipEntry written = new ZipEntry(entry.getName());
                written.setTimeLocal(entry.getTimeLocal());
                out.putNextEntry(written);
                out.write(entry.getName().endsWith(".class") ? renewed(bytes, types) : bytes);
                out.closeEntry();
            }
        }
        Files.writeString(Path.of(arguments[1]), newHashes(jar, renewed));
        Files.move(renewed, jar, StandardCopyOption.REPLACE_EXISTING);
    }

    /** A line for each kind of hash that a bill of materials has: the old jar's, and behind = the new one's. */
    private static String newHashes(Path old, Path renewed) throws IOException, NoSuchAlgorithmException {
        StringBuilder lines = new StringBuilder();
        for (String algorithm : HASHES) {
            lines.append(hash(algorithm, old)).append('=').append(hash(algorithm, renewed)).append('\n');
        }
        return lines.toString();
    }

    private static String hash(String algorithm, Path file) throws IOException, NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance(algorithm).digest(Files.readAllBytes(file)));
    }

    private static byte[] renewed(byte[] bytes, ClassLoader types) {
        ClassReader old = new ClassReader(bytes);
        if (old.readShort(MAJOR_VERSION_AT) >= OLDEST_PREPARED) {
            return bytes;
        }
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected ClassLoader getClassLoader() {
                return types;
            }
        };
        ClassVisitor renewing = new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visit(
                    int version, int access, String name, String signature, String parent, String[] interfaces) {
                super.visit(Opcodes.V1_8, access, name, signature, parent, interfaces);
            }
        };
        old.accept(renewing, 0);
        return writer.toByteArray();
    }
}
