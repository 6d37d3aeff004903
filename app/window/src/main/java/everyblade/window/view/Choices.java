package everyblade.window.view;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a person chose about the window, on this machine; nothing of it touches a job.
 *
 * @param language of the texts
 * @param dark whether light ink stands on a dark ground
 * @param gloves whether targets are large enough for gloves
 * @param strips whether all rows are shown unrolled, not as rings
 * @param fromAhead whether the engine is shown as seen from ahead looking aft
 * @param pictures the folder in which new pictures appear
 * @param by who worked last
 * @param text how large letters are, in per cent of the usual; {@link #AS_THE_SYSTEM} for what the system says
 * @param side width of what stands beside the map, in units of the window; 0 before it was ever moved
 * @param store address of the shop's store; empty where there is none, and never with a password
 * @param follows whether the job that is worked on is kept in that store as well, all the time
 * @param place of the window: left, top, width, height; empty before it was ever closed
 * @param recent jobs, the last one first
 */
public record Choices(
        Locale language,
        boolean dark,
        boolean gloves,
        boolean strips,
        boolean fromAhead,
        Optional<Path> pictures,
        String by,
        int text,
        int side,
        String store,
        boolean follows,
        Optional<List<Integer>> place,
        List<RecentJob> recent) {

    /** Letters as large as the system has them. */
    public static final int AS_THE_SYSTEM = 0;

    /** How large letters may be chosen, in per cent. */
    public static final List<Integer> TEXTS = List.of(AS_THE_SYSTEM, 100, 125, 150, 175, 200, 250, 300);

    private static final int REMEMBERED = 12;

    public Choices {
        text = TEXTS.contains(text) ? text : AS_THE_SYSTEM;
        recent = List.copyOf(recent);
    }

    /** Before anything was chosen. */
    public static Choices first(Locale language) {
        return new Choices(
                language,
                false,
                true,
                false,
                false,
                Optional.empty(),
                "",
                0,
                0,
                "",
                false,
                Optional.empty(),
                List.of());
    }

    /** As kept in this file; whatever cannot be read is as at first. */
    public static Choices read(Path file, Locale language) {
        Properties kept = new Properties();
        try {
            kept.load(new StringReader(Files.readString(file)));
        } catch (IOException | IllegalArgumentException unreadable) {
            return first(language);
        }
        List<RecentJob> recent = new ArrayList<>();
        for (int i = 1; i <= REMEMBERED; i++) {
            RecentJob.read(kept, "recent." + i).ifPresent(recent::add);
        }
        return new Choices(
                Locale.forLanguageTag(kept.getProperty("language", language.toLanguageTag())),
                Boolean.parseBoolean(kept.getProperty("dark")),
                Boolean.parseBoolean(kept.getProperty("gloves", "true")),
                Boolean.parseBoolean(kept.getProperty("strips")),
                Boolean.parseBoolean(kept.getProperty("fromAhead")),
                path(kept.getProperty("pictures")),
                kept.getProperty("by", ""),
                number(kept.getProperty("text", "")),
                number(kept.getProperty("side", "")),
                kept.getProperty("store", ""),
                Boolean.parseBoolean(kept.getProperty("follows")),
                place(kept.getProperty("place", "")),
                recent);
    }

    private static int number(String text) {
        return text.matches("\\d{1,5}") ? Integer.parseInt(text) : 0;
    }

    private static Optional<List<Integer>> place(String text) {
        return text.matches("-?\\d{1,5}( -?\\d{1,5}){3}")
                ? Optional.of(Stream.of(text.split(" ")).map(Integer::valueOf).toList())
                : Optional.empty();
    }

    static Optional<Path> path(String text) {
        try {
            return Optional.ofNullable(text).filter(name -> !name.isBlank()).map(Path::of);
        } catch (java.nio.file.InvalidPathException unusable) {
            return Optional.empty();
        }
    }

    /** Keeps them in this file; what is chosen matters too little to stop anybody if that fails. */
    public void write(Path file) {
        Properties kept = new Properties();
        kept.setProperty("language", language.toLanguageTag());
        kept.setProperty("dark", Boolean.toString(dark));
        kept.setProperty("gloves", Boolean.toString(gloves));
        kept.setProperty("strips", Boolean.toString(strips));
        kept.setProperty("fromAhead", Boolean.toString(fromAhead));
        kept.setProperty("pictures", pictures.map(Path::toString).orElse(""));
        kept.setProperty("by", by);
        kept.setProperty("text", Integer.toString(text));
        kept.setProperty("side", Integer.toString(side));
        kept.setProperty("store", store);
        kept.setProperty("follows", Boolean.toString(follows));
        place.ifPresent(four ->
                kept.setProperty("place", four.stream().map(String::valueOf).collect(Collectors.joining(" "))));
        for (int i = 0; i < recent.size(); i++) {
            recent.get(i).write(kept, "recent." + (i + 1));
        }
        StringWriter text = new StringWriter();
        try {
            kept.store(text, null);
            Files.createDirectories(file.getParent());
            Files.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException refused) {
            // the window opens as at first next time
        }
    }

    public Choices language(Locale other) {
        return new Choices(
                other, dark, gloves, strips, fromAhead, pictures, by, text, side, store, follows, place, recent);
    }

    public Choices dark(boolean isDark) {
        return new Choices(
                language, isDark, gloves, strips, fromAhead, pictures, by, text, side, store, follows, place, recent);
    }

    public Choices gloves(boolean forGloves) {
        return new Choices(
                language, dark, forGloves, strips, fromAhead, pictures, by, text, side, store, follows, place, recent);
    }

    public Choices strips(boolean unrolled) {
        return new Choices(
                language, dark, gloves, unrolled, fromAhead, pictures, by, text, side, store, follows, place, recent);
    }

    public Choices fromAhead(boolean isFromAhead) {
        return new Choices(
                language, dark, gloves, strips, isFromAhead, pictures, by, text, side, store, follows, place, recent);
    }

    public Choices pictures(Path folder) {
        return new Choices(
                language,
                dark,
                gloves,
                strips,
                fromAhead,
                Optional.of(folder),
                by,
                text,
                side,
                store,
                follows,
                place,
                recent);
    }

    /** With the window there: left, top, width, height. */
    public Choices place(List<Integer> four) {
        return new Choices(
                language,
                dark,
                gloves,
                strips,
                fromAhead,
                pictures,
                by,
                text,
                side,
                store,
                follows,
                Optional.of(four),
                recent);
    }

    public Choices by(String name) {
        return new Choices(
                language, dark, gloves, strips, fromAhead, pictures, name, text, side, store, follows, place, recent);
    }

    /** With letters of so many per cent, one of {@link #TEXTS}. */
    public Choices text(int percent) {
        return new Choices(
                language, dark, gloves, strips, fromAhead, pictures, by, percent, side, store, follows, place, recent);
    }

    /** With what stands beside the map as wide as this. */
    public Choices side(int width) {
        return new Choices(
                language, dark, gloves, strips, fromAhead, pictures, by, text, width, store, follows, place, recent);
    }

    /** With this store, and whether jobs are kept there all the time. */
    public Choices store(String address, boolean always) {
        return new Choices(
                language, dark, gloves, strips, fromAhead, pictures, by, text, side, address, always, place, recent);
    }

    /** With this job as the last one opened; what was told of it when it was left stays. */
    public Choices opened(Path job) {
        return first(recent.stream()
                .filter(one -> one.folder().equals(job))
                .findFirst()
                .orElseGet(() -> new RecentJob(job, Optional.empty())));
    }

    /** With this job told as it is now, if it is one of those that were opened. */
    public Choices left(RecentJob job) {
        return recent.stream().anyMatch(one -> one.folder().equals(job.folder())) ? first(job) : this;
    }

    private Choices first(RecentJob job) {
        List<RecentJob> jobs = new ArrayList<>(recent);
        jobs.removeIf(one -> one.folder().equals(job.folder()));
        jobs.add(0, job);
        return new Choices(
                language,
                dark,
                gloves,
                strips,
                fromAhead,
                pictures,
                by,
                text,
                side,
                store,
                follows,
                place,
                jobs.subList(0, Math.min(REMEMBERED, jobs.size())));
    }
}
