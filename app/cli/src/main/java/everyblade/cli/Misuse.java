package everyblade.cli;

import everyblade.words.Words;
import java.util.Collections;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Arguments that a command cannot do anything with, told by the text of a key; and how to tell those that picocli finds. */
final class Misuse extends ParameterException {

    private static final long serialVersionUID = 1L;

    private static final Pattern QUOTED = Pattern.compile("'.*?'(?=,|$| but| should| \\()");
    private static final Pattern INDEX = Pattern.compile("index (\\d+)");
    private static final Pattern TWICE = Pattern.compile("option (.*) should be .*");

    private final transient List<Object> parts;

    Misuse(CommandLine line, String key, Object... parts) {
        super(line, key);
        this.parts = List.of(parts);
    }

    /** What is wrong, without the command. */
    static String told(ParameterException mistake, Words words) {
        if (mistake instanceof Misuse ours) {
            return words.say(ours.getMessage(), ours.parts.toArray());
        }
        String said = mistake.getMessage();
        List<String> quoted =
                QUOTED.matcher(said).results().map(MatchResult::group).toList();
        if (mistake instanceof MissingParameterException missing) {
            return missing(missing.getMissing(), said, quoted, words);
        }
        if (mistake instanceof UnmatchedArgumentException unmatched) {
            Matcher index = INDEX.matcher(said);
            return unmatched.isUnknownOption() || !index.find()
                    ? words.say("wrongUse.unknown", quoted, quoted.size())
                    : words.say("wrongUse.unmatched", quoted, quoted.size(), index.group(1));
        }
        Matcher twice = TWICE.matcher(said);
        if (mistake instanceof OverwrittenOptionException && twice.matches()) {
            return words.say("wrongUse.twice", twice.group(1));
        }
        return mistake.getArgSpec() == null
                ? said
                : words.say(
                        "wrongUse.value", name(mistake.getArgSpec()), mistake.getValue(), among(mistake.getArgSpec()));
    }

    private static String missing(List<ArgSpec> missing, String said, List<String> quoted, Words words) {
        if (said.startsWith("Expected parameter")) {
            return words.say("wrongUse.valueExpected", quoted.get(0), quoted.get(quoted.size() - 1));
        }
        if (said.startsWith("Missing required parameter for option")) {
            return words.say("wrongUse.valueMissing", quoted.get(0));
        }
        boolean options = missing.stream().allMatch(ArgSpec::isOption);
        boolean mixed = !options && missing.stream().anyMatch(ArgSpec::isOption);
        return words.say("wrongUse.missing", quoted, mixed ? null : options, quoted.size());
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    /** The values that it may have, if they are few. */
    private static List<String> among(ArgSpec argument) {
        Iterable<String> candidates = argument.completionCandidates();
        return candidates == null
                ? Collections.emptyList()
                : StreamSupport.stream(candidates.spliterator(), false).toList();
    }
}
