package everyblade.window.view;

import everyblade.core.entry.EntryText;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the form for a new job says.
 *
 * @param folder where the job is to be
 * @param model id of the engine model
 * @param serial of the engine
 * @param task what is to be done
 * @param card the task card of the model that says what is asked for; blank if all is
 * @param by who does it
 * @param scopeTip id of the scope tip that will be used; blank if it is the views' own
 * @param facts further facts by name, in order; blank ones are left out
 */
public record NewJob(
        String folder,
        String model,
        String serial,
        String task,
        String card,
        String by,
        String scopeTip,
        List<Map.Entry<String, String>> facts) {

    /** What the form asks for beside the rest, by the name under which the record keeps it. */
    public static final List<String> FACTS = List.of("manual", "revision", "hours", "cycles");

    public NewJob {
        facts = List.copyOf(facts);
    }

    /** The first thing that is missing, in words; empty if a job can be started. */
    public Optional<String> missing(Words words) {
        return java.util.stream.Stream.of(
                        Map.entry("form.model", model),
                        Map.entry("form.serial", serial),
                        Map.entry("form.task", task),
                        Map.entry("form.by", by),
                        Map.entry("form.folder", folder))
                .filter(field -> field.getValue().isBlank())
                .findFirst()
                .map(field -> words.say("form.missing", words.say(field.getKey())));
    }

    /** The command that starts the job. */
    public List<String> command() {
        List<String> command = new ArrayList<>(
                List.of("start", folder, "--model", model, "--serial", serial, "--task", task, "--by", by));
        if (!card.isBlank()) {
            command.addAll(List.of("--card", card));
        }
        return command;
    }

    /** The first entries of the job. */
    public List<String> entries() {
        List<String> entries = new ArrayList<>();
        facts.stream()
                .filter(fact -> !fact.getValue().isBlank())
                .forEach(fact -> entries.add("fact " + EntryText.name(fact.getKey()) + " "
                        + fact.getValue().strip()));
        if (!scopeTip.isBlank()) {
            entries.add("fact \"scope tip\" " + scopeTip);
        }
        return entries;
    }
}
