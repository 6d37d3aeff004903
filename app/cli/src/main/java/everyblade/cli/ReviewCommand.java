package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Refusal;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.OpenItem;
import everyblade.core.finding.closing.Risk;
import everyblade.core.finding.review.Blind;
import everyblade.core.finding.review.CellsThere;
import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.core.turning.Logged;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.ClosingText;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.ReviewText;
import everyblade.session.job.Reviewer;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a reviewer, who was not there, is shown of a record and says of it; the record itself stays as it is. */
@Command(
        name = "review",
        description = {"${bundle:help.review}", "${bundle:help.review2}"})
final class ReviewCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--by", paramLabel = "NAME", description = "${bundle:help.review.by}")
    private String by;

    @Option(names = "--blind", description = "${bundle:help.review.blind}")
    private boolean blind;

    @Option(names = "--want", paramLabel = "TEXT", description = "${bundle:help.review.want}")
    private List<String> wants = List.of();

    @Option(names = "--compare", description = "${bundle:help.review.compare}")
    private boolean compare;

    @Option(names = "--question", paramLabel = "TEXT", description = "${bundle:help.review.question}")
    private List<String> questions = List.of();

    @Option(names = "--remark", paramLabel = "TEXT", description = "${bundle:help.review.remark}")
    private List<String> remarks = List.of();

    @Option(names = "--where", paramLabel = "PLACE", description = "${bundle:help.review.where}")
    private String where;

    @Option(names = "--withdraw", paramLabel = "N", description = "${bundle:help.review.withdraw}")
    private Integer withdrawn;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    ReviewCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.readWithDoubts(around, job);
        if (speaks()) {
            say(opened);
        } else if (blind) {
            blind(opened);
        } else if (compare) {
            compare(opened);
        } else {
            list(opened);
        }
        return Commands.FINE;
    }

    private boolean speaks() {
        return !wants.isEmpty()
                || !questions.isEmpty()
                || !remarks.isEmpty()
                || withdrawn != null
                || compare && by != null;
    }

    private void say(OpenedJob opened) {
        if (by == null) {
            throw Failure.of("stopped.review.reviewWhoSaysAddName");
        }
        Reviewer reviewer = new Reviewer(around, opened, Given.words("--by", by));
        Optional<ReviewedPlace> place = Optional.ofNullable(where).map(words -> place(opened, words));
        List<Reviewer.Said> said = new ArrayList<>();
        wants.forEach(text -> said.add(said(What.WANTED, "--want", text, place)));
        questions.forEach(text -> said.add(said(What.QUESTION, "--question", text, place)));
        remarks.forEach(text -> said.add(said(What.REMARK, "--remark", text, place)));
        if (withdrawn != null) {
            said.add(new Reviewer.Said(What.WITHDRAWN, "", Optional.empty(), OptionalInt.of(withdrawn)));
        }
        if (compare) {
            said.add(new Reviewer.Said(What.SHOWN, "", Optional.empty(), OptionalInt.empty()));
        }
        reviewer.notices().forEach(around.err()::println);
        reviewer.keep(said).forEach(remark -> around.out().println("kept review " + remark.number()));
        if (compare) {
            compare(opened);
        }
    }

    private static Reviewer.Said said(What what, String option, String text, Optional<ReviewedPlace> place) {
        return new Reviewer.Said(what, Given.words(option, text), place, OptionalInt.empty());
    }

    private ReviewedPlace place(OpenedJob opened, String words) {
        try {
            return ReviewedPlace.of(words, opened.engine());
        } catch (Refusal refusal) {
            throw Failure.of("stopped.review.line", OneLine.quoted(words), refusal.why());
        }
    }

    private void blind(OpenedJob opened) {
        heading(opened);
        Words words = around.words();
        for (Logged logged : Blind.shown(opened.fold())) {
            print(words.say(
                    "review.blindEntry",
                    logged.number(),
                    logged.at(),
                    logged.by(),
                    logged.text(),
                    opened.fold().isVoid(logged.number())));
        }
        print(words.say("review.wantNext"));
    }

    private void heading(OpenedJob opened) {
        Words words = around.words();
        print(words.say(
                "review.heading",
                opened.engine().model().name(),
                opened.engine().model().id(),
                opened.beginning().serial(),
                opened.beginning().task()));
        print(words.say(
                "review.length",
                opened.journal().lines().size(),
                opened.journal().head()));
    }

    private void compare(OpenedJob opened) {
        Coverage coverage = opened.coverage();
        heading(opened);
        new CoverageText(around.words()).figures(coverage).forEach(this::print);
        for (ReviewRemark remark : opened.review().remarks()) {
            if (remark.what() == What.WANTED) {
                print(ReviewText.of(remark, around.words()));
                remark.place()
                        .flatMap(place -> CellsThere.of(coverage, place))
                        .ifPresent(there -> print("  " + around.words().say("review.theRecord", there.told())));
            }
        }
        worstFirst(opened.closing(coverage));
    }

    private void list(OpenedJob opened) {
        ClosingList closing = opened.closing(opened.coverage());
        if (json) {
            around.out().println(JsonText.of(json(opened, closing, around.words())));
            return;
        }
        heading(opened);
        worstFirst(closing);
        List<ReviewRemark> said = opened.review().remarks();
        List<Question> asked = Question.of(said, opened.fold());
        print(around.words().say(said.isEmpty() ? "review.nobody" : "review.saidBefore"));
        for (ReviewRemark remark : said) {
            print(ReviewText.of(remark, around.words()));
            asked.stream()
                    .filter(question -> question.asked().equals(remark))
                    .forEach(question -> print("  " + ReviewText.state(question, around.words())));
        }
    }

    private void worstFirst(ClosingList closing) {
        Words words = around.words();
        for (OpenItem item : Risk.worstFirst(closing)) {
            risked(Risk.of(item.kind()), ClosingText.line(item, words));
        }
        closing.told().forEach(item -> risked(Risk.of(item.kind()), ClosingText.told(item, words)));
        closing.accepted().forEach(accepted -> risked(Risk.RECORD, ClosingText.accepted(accepted, words)));
        print(ClosingText.count(closing, words));
    }

    private static ObjectNode json(OpenedJob opened, ClosingList closing, Words words) {
        ObjectNode json = ClosingJson.worstFirst(closing, words);
        json.put("head", opened.journal().head());
        json.put("entries", opened.journal().lines().size());
        List<ReviewRemark> said = opened.review().remarks();
        List<Question> asked = Question.of(said, opened.fold());
        ArrayNode remarks = json.putArray("review");
        for (ReviewRemark remark : said) {
            ObjectNode one = remarks.addObject()
                    .put("n", remark.number())
                    .put("at", remark.at().toString())
                    .put("by", remark.by())
                    .put("what", remark.what().word())
                    .put("text", remark.text())
                    .put("where", remark.place().map(ReviewedPlace::words).orElse(""))
                    .put("head", remark.head())
                    .put("entries", remark.entries());
            asked.stream().filter(question -> question.asked().equals(remark)).forEach(question -> {
                one.put("open", question.open());
                ArrayNode answers = one.putArray("answers");
                question.answers().forEach(answer -> answers.add(answer.number()));
            });
        }
        return json;
    }

    private void risked(Risk risk, String line) {
        print(around.words().say("review.risked", risk.number(), line));
    }

    private void print(String line) {
        around.out().println(OneLine.of(line));
    }
}
