package everyblade.cli;

import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.around.UserFolders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The keys that this user knows, and whose they are: {@code trusted-keys.txt} in the user's settings, a fingerprint and a
 * name on each line; or the file that {@code EVERYBLADE_TRUSTED_KEYS} names, such as one that a shop keeps for all.
 */
record TrustedKeys(Surroundings around) {

    private static final String VARIABLE = "EVERYBLADE_TRUSTED_KEYS";
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (\\S.*)");

    /** Names by fingerprint, in the order of the list. */
    Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        for (String line : lines()) {
            Matcher matcher = LINE.matcher(line);
            if (matcher.matches()) {
                all.put(matcher.group(1), matcher.group(2));
            }
        }
        return all;
    }

    private List<String> lines() {
        Optional<Path> file = file();
        try {
            return file.isPresent() && Files.exists(file.get()) ? Files.readAllLines(file.get()) : List.of();
        } catch (IOException unreadable) {
            throw Failure.of("stopped.trustedKeys.listTrustedKeysCannotBe", file.get());
        }
    }

    /** Puts a key on the list, in the place of what it said of this key before. */
    void trust(String fingerprint, String name) {
        List<String> lines = without(fingerprint);
        lines.add(fingerprint + "  " + name);
        write(lines);
    }

    /** Takes a key off the list; whether it was on it. */
    boolean distrust(String fingerprint) {
        boolean known = all().containsKey(fingerprint);
        if (known) {
            write(without(fingerprint));
        }
        return known;
    }

    private List<String> without(String fingerprint) {
        List<String> lines = new ArrayList<>(lines());
        lines.removeIf(line -> line.startsWith(fingerprint));
        return lines;
    }

    private void write(List<String> lines) {
        Path file = file().orElseThrow(() -> Failure.of("stopped.trustedKeys.thereNoFolderForUser", VARIABLE));
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
        } catch (IOException failure) {
            throw Failure.of("stopped.trustedKeys.itsFolderCannotBeMade", file, VARIABLE);
        }
        NewFile.at(around, "trusted keys", file)
                .write((String.join("\n", lines) + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    private Optional<Path> file() {
        return around.variable(VARIABLE)
                .flatMap(UserFolders::path)
                .map(around::path)
                .or(() -> UserFolders.configuration(around)
                        .map(folder -> folder.resolve("everyblade").resolve("trusted-keys.txt")));
    }
}
