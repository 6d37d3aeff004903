package everyblade.verifier;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A job's files, each held against the hash that is kept of it; what does not agree is in {@code wrong}. */
final class Job {

    private static final Pattern SEALED = Pattern.compile("(\\{.*),\"hash\":\"([0-9a-f]{64})\"}");
    private static final String KEYS = "(k|at|written|by|live|text|hash|means\\b.*|photo\\b.*)";

    final Path folder;
    final List<String> wrong = new ArrayList<>();
    final List<Map<String, String>> lines;

    Job(Path folder) throws IOException {
        this.folder = folder;
        lines = chain("journal.jsonl");
        Map<String, String> first = lines.isEmpty() ? Map.of() : lines.get(0);
        require("everyblade/journal/1".equals(first.get("schema")), "journal.jsonl has no first line of version 1");
        first.forEach((key, hash) -> frozen("model/" + hash, key.startsWith("meshHashes.") ? hash : null));
        frozen("model/engine.json", first.get("modelHash"));
        frozen("limits/limits.json", first.get("limitsHash"));
        if (first.containsKey("previousHead")) {
            List<Map<String, String>> before = chain("previous/journal.jsonl");
            String head = before.isEmpty() ? "" : before.get(before.size() - 1).get("hash");
            require(head.equals(first.get("previousHead")), "previous/journal.jsonl is another one than at the start");
        }
        for (int k = 1; k < lines.size(); k++) {
            Map<String, String> entry = lines.get(k);
            require(
                    entry.keySet().stream().allMatch(key -> key.matches(KEYS)),
                    "entry " + k + " says more than is known");
            require(("" + k).equals(entry.get("k")), "entry " + k + " bears another number");
            frozen("photos/" + entry.get("photo.file"), entry.get("photo.sha256"));
        }
        if (Files.exists(folder.resolve("review.jsonl"))) {
            for (Map<String, String> says : chain("review.jsonl")) {
                boolean here =
                        head(says.getOrDefault("entries", "0")).equals(says.getOrDefault("head", says.get("job")));
                require(here, "review.jsonl: remark " + says.get("n") + " is of another journal");
            }
        }
    }

    /** Hash of the line of an entry; empty if there is none. */
    String head(String entry) {
        boolean there = entry.matches("[0-9]{1,7}") && Integer.parseInt(entry) < lines.size();
        return there ? lines.get(Integer.parseInt(entry)).get("hash") : "";
    }

    /** The lines of a chain as far as it is sound. */
    private List<Map<String, String>> chain(String name) throws IOException {
        List<Map<String, String>> chain = new ArrayList<>();
        String[] texts = new String(bytes(name), StandardCharsets.ISO_8859_1).split("\n", -1);
        require(texts[texts.length - 1].isEmpty(), name + " ends with a line that has no newline");
        String head = "";
        for (int i = 0; i < texts.length - 1; i++) {
            try {
                Matcher sealed = SEALED.matcher(texts[i]);
                if (!sealed.matches() || !sha256(latin(head + sealed.group(1))).equals(sealed.group(2))) {
                    throw new IllegalArgumentException("its hash does not fit it and the lines before");
                }
                head = sealed.group(2);
                chain.add(Flat.of(latin(texts[i])));
            } catch (IllegalArgumentException | IOException unsound) {
                wrong.add(name + " line " + (i + 1) + ": " + unsound.getMessage());
                return chain;
            }
        }
        return chain;
    }

    private void frozen(String name, String hash) {
        boolean plain = name.matches("[^/\\\\]+/[^/\\\\]+") && !name.contains("/.");
        require(hash == null || plain && sha256(bytes(name)).equals(hash), name + " is not there as it was kept");
    }

    /** The bytes of a file; none if it is no plain file. */
    byte[] bytes(String name) {
        try {
            Path file = folder.resolve(name);
            return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) ? Files.readAllBytes(file) : new byte[0];
        } catch (IOException unreadable) {
            return new byte[0];
        }
    }

    void require(boolean holds, String otherwise) {
        if (!holds) {
            wrong.add(otherwise);
        }
    }

    private static byte[] latin(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (GeneralSecurityException impossible) {
            throw new AssertionError(impossible);
        }
    }
}
