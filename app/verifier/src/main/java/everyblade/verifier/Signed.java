package everyblade.verifier;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The signatures of a job: made by the key that they name, of this journal, each after the one before. */
final class Signed {

    private static final Pattern LINE = Pattern.compile("(\\{.*),\"signature\":\"([A-Za-z0-9+/]{86}==)\"}\n");

    private Signed() {}

    /** A line for each; what is wrong is told to the job. */
    static List<String> check(Job job) {
        List<String> told = new ArrayList<>();
        Map<String, Boolean> inspects = new HashMap<>();
        String before = null;
        for (int n = 1; Files.exists(job.folder.resolve("signatures/" + n + ".json")); n++) {
            byte[] file = job.bytes("signatures/" + n + ".json");
            String which = "signature " + n;
            try {
                Map<String, String> says = Flat.of(file);
                byte[] key = Base64.getDecoder().decode(says.get("key"));
                job.require(fits(new String(file, StandardCharsets.UTF_8), key), which + " does not fit what it signs");
                String entries = says.get("entries");
                boolean here = job.head("0").equals(says.get("journal"))
                        && job.head(entries).equals(says.get("head"));
                job.require(here, which + " is of another journal, or of entries that are no longer those");
                job.require(("" + before).equals("" + says.get("before")), which + " did not follow what is before it");
                boolean inspected = "inspected".equals(says.get("as"));
                boolean one =
                        inspects.merge(Job.sha256(key), inspected, (a, b) -> a == b ? a : !inspected) == inspected;
                job.require(one, which + " is by a key that holds the other role");
                told.add(which + ": " + says.get("as") + " by " + says.get("name") + ", entries 1 to " + entries
                        + " of " + (job.lines.size() - 1) + ", key " + Job.sha256(key));
            } catch (GeneralSecurityException | RuntimeException | IOException unreadable) {
                job.wrong.add(which + " is none");
            }
            before = Job.sha256(file);
        }
        return told;
    }

    private static boolean fits(String file, byte[] key) throws GeneralSecurityException {
        Matcher line = LINE.matcher(file);
        Signature signature = Signature.getInstance("Ed25519");
        signature.initVerify(KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(key)));
        boolean one = line.matches();
        signature.update(one ? line.group(1).getBytes(StandardCharsets.UTF_8) : new byte[0]);
        return one && signature.verify(Base64.getDecoder().decode(line.group(2)));
    }
}
