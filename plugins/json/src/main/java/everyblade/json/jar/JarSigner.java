package everyblade.json.jar;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.security.CodeSigner;
import java.security.cert.X509Certificate;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Who has signed a jar, where every entry is signed by the same and none was changed since. */
final class JarSigner {

    private static final String META = "META-INF/";

    private JarSigner() {}

    /**
     * The name in the signer's certificate, which is not held against any authority; empty if the jar is not signed, or
     * not all of it.
     *
     * @throws JarFault if it is signed and was changed since
     */
    static Optional<String> of(Path jar, ZipFile zip) throws IOException, JarFault {
        boolean signed =
                Collections.list(zip.entries()).stream().map(ZipEntry::getName).anyMatch(JarSigner::isSignature);
        if (!signed) {
            return Optional.empty();
        }
        Set<String> names = new TreeSet<>();
        try (JarFile whole = new JarFile(jar.toFile(), true)) {
            for (JarEntry entry : Collections.list(whole.entries())) {
                try (InputStream in = whole.getInputStream(entry)) {
                    in.transferTo(OutputStream.nullOutputStream()); // only what was read to its end is judged
                }
                if (!entry.isDirectory()
                        && !entry.getName().toUpperCase(Locale.ROOT).startsWith(META)) {
                    names.add(name(entry.getCodeSigners()));
                }
            }
        } catch (SecurityException changed) {
            throw new JarFault(
                    Fault.BAD_JAR,
                    "the jar was changed after it was signed",
                    JarRefusal.of(changed),
                    "do not use it, and get it anew from where it comes from");
        }
        return names.size() == 1 && !names.contains("") ? names.stream().findFirst() : Optional.empty();
    }

    private static boolean isSignature(String name) {
        String upper = name.toUpperCase(Locale.ROOT);
        return upper.startsWith(META) && upper.endsWith(".SF");
    }

    private static String name(CodeSigner[] signers) {
        return Arrays.stream(signers == null ? new CodeSigner[0] : signers)
                .map(signer -> signer.getSignerCertPath().getCertificates())
                .flatMap(List::stream)
                .filter(X509Certificate.class::isInstance)
                .map(certificate -> ((X509Certificate) certificate)
                        .getSubjectX500Principal()
                        .getName())
                .findFirst()
                .map(JarRefusal::line)
                .orElse("");
    }
}
