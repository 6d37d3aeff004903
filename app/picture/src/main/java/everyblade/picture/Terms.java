package everyblade.picture;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Settings;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * By what the figures are judged, and what nobody judges, in words: they mean little without it.
 *
 * @param settings of the job
 * @param isComputed whether any sight is computed; what windows declare is not judged by slant and detail
 * @param words in which
 */
public record Terms(Settings settings, boolean isComputed, MapWords words) {

    private static final List<String> GRAZING = List.of("grazing-leading", "grazing-middle", "grazing-trailing");

    /** Those of a job. */
    public static Terms of(Coverage coverage, MapWords words) {
        return new Terms(coverage.settings(), coverage.leading() == Basis.COMPUTED, words);
    }

    /** All of it as a sentence. */
    public String line() {
        return words.say("terms", told());
    }

    /** All of it in one line, such as {@code line of sight at least 30° to the surface; …}. */
    String told() {
        List<String> terms = new ArrayList<>();
        if (isComputed) {
            terms.add(grazing());
            terms.add(number("detail")
                    .map(size ->
                            words.say("terms.detail", size, number("pixels").orElseThrow()))
                    .orElseGet(() -> words.say("terms.noDetail")));
        } else {
            terms.add(words.say("terms.windows"));
        }
        Optional<String> seconds = number("least-view");
        seconds.ifPresent(least -> terms.add(words.say("terms.view", least)));
        terms.add(words.say(seconds.isPresent() ? "terms.unjudged" : "terms.unjudgedAndTime"));
        return String.join("; ", terms);
    }

    private String grazing() {
        String usual = number("grazing").orElseThrow();
        List<String> bands =
                GRAZING.stream().map(band -> number(band).orElse(usual)).toList();
        return bands.stream().allMatch(bands.get(0)::equals)
                ? words.say("terms.grazing", bands.get(0))
                : words.say("terms.bands", bands.toArray());
    }

    private Optional<String> number(String setting) {
        DecimalFormat format = new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(words.locale()));
        return Optional.ofNullable(settings.values().get(setting)).map(format::format);
    }
}
