package everyblade.cli;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.regex.Pattern;

/**
 * Changes a model's file as a slip of the hand would: a figure, a word, a member gone or there twice. What comes out is
 * mostly still JSON, and often still a model, but of another engine.
 */
final class MutatedModel {

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");
    private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"");
    private static final Pattern MEMBER =
            Pattern.compile("\"[A-Za-z]+\": (?:\"[^\"]*\"|-?[0-9.]+|\\[[^\\[\\]]*\\]),? ?");
    private static final Pattern POINT = Pattern.compile("\\[-?[0-9.]+, -?[0-9.]+\\](, )?");

    private final String text;
    private final List<int[]> numbers;
    private final List<int[]> texts;
    private final List<int[]> members;
    private final List<int[]> points;

    MutatedModel(String text) {
        this.text = text;
        this.numbers = places(NUMBER);
        this.texts = places(TEXT);
        this.members = places(MEMBER);
        this.points = places(POINT);
    }

    private List<int[]> places(Pattern pattern) {
        return pattern.matcher(text)
                .results()
                .map(match -> new int[] {match.start(), match.end()})
                .toList();
    }

    /** With one to three changes of figures, or one of another sort. */
    String changed(SplittableRandom random) {
        return switch (random.nextInt(8)) {
            case 0 -> with(one(texts, random), part(one(texts, random)));
            case 1 -> with(one(members, random), "");
            case 2 -> twice(one(members, random));
            case 3 -> points.isEmpty() ? figures(random, 1) : with(one(points, random), "");
            case 4 -> points.isEmpty() ? figures(random, 1) : twice(one(points, random));
            default -> figures(random, 1 + random.nextInt(3));
        };
    }

    private String figures(SplittableRandom random, int count) {
        String changed = text;
        for (int i = 0; i < count; i++) {
            changed = new MutatedModel(changed).figure(random);
        }
        return changed;
    }

    private String figure(SplittableRandom random) {
        int[] place = one(numbers, random);
        double value = Double.parseDouble(part(place));
        double other = switch (random.nextInt(9)) {
            case 0 -> 0;
            case 1 -> -value;
            case 2 -> value * 10;
            case 3 -> value / 10;
            case 4 -> value + 1;
            case 5 -> value - 1;
            case 6 -> value * random.nextDouble(0.5, 1.5);
            case 7 -> Double.parseDouble(part(one(numbers, random)));
            default -> 99_999;
        };
        boolean whole = other == Math.rint(other);
        return with(place, whole ? Long.toString((long) other) : String.format(Locale.ROOT, "%.6f", other));
    }

    private static int[] one(List<int[]> places, SplittableRandom random) {
        return places.get(random.nextInt(places.size()));
    }

    private String part(int[] place) {
        return text.substring(place[0], place[1]);
    }

    private String twice(int[] place) {
        return text.substring(0, place[1]) + text.substring(place[0]);
    }

    private String with(int[] place, String other) {
        return text.substring(0, place[0]) + other + text.substring(place[1]);
    }
}
