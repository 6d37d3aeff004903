package everyblade.session.job;

import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.record.Review;
import everyblade.record.ReviewFile;
import everyblade.record.ReviewWriter;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Somebody who reviews a job, and what they say of it.
 *
 * @param job as it lies before them
 * @param name whose remarks they are
 */
public record Reviewer(Surroundings around, OpenedJob job, String name) {

    /**
     * Something to be said.
     *
     * @param what sort of remark
     * @param text in words; empty where the sort says it all
     * @param place where on the engine, if anywhere
     * @param of the number of the question that is taken back, if one is
     */
    public record Said(What what, String text, Optional<ReviewedPlace> place, OptionalInt of) {}

    /** What a person should be told before they review under this name, one line each. */
    public List<String> notices() {
        boolean own = job.beginning().by().equalsIgnoreCase(name)
                || job.fold().entries().stream().anyMatch(logged -> logged.by().equalsIgnoreCase(name));
        return own ? List.of(around.words().say("review.ownRecord", OneLine.of(name))) : List.of();
    }

    /**
     * Keeps remarks, all or none.
     *
     * @throws Failure if they cannot be kept; then nothing is
     */
    public List<ReviewRemark> keep(List<Said> said) {
        if (around.packed().holds(job.folder().path())) {
            throw Failure.of("stopped.reviewer.reviewJobOneFileNot");
        }
        said.forEach(this::requireOwnQuestion);
        ReviewFile.Writing writing = job.folder()
                .review()
                .write(name, around.clock().instant(), job.journal().firstHash());
        if (!(writing instanceof ReviewFile.Writable writable)) {
            throw new Failure(((ReviewFile.Refused) writing).problem());
        }
        try (ReviewWriter writer = writable.writer()) {
            List<ReviewWriter.Said> all = new ArrayList<>();
            for (Said one : said) {
                all.add(new ReviewWriter.Said(
                        around.clock().instant(),
                        name,
                        job.journal().head(),
                        job.journal().lines().size(),
                        one.what(),
                        one.text(),
                        one.place(),
                        one.of()));
            }
            ReviewWriter.Appended appended = writer.append(all);
            if (appended instanceof ReviewWriter.NotKept notKept) {
                throw new Failure(notKept.problem());
            }
            return ((ReviewWriter.Kept) appended).remarks();
        }
    }

    private void requireOwnQuestion(Said said) {
        if (said.what() != What.WITHDRAWN) {
            return;
        }
        int number = said.of().orElseThrow();
        Review review = job.review();
        boolean own = review.remarks().stream()
                .anyMatch(remark -> remark.number() == number
                        && remark.what() == What.QUESTION
                        && remark.by().equals(name));
        if (!own) {
            throw Failure.of("stopped.reviewer.reviewNoQuestionThatSent", number, OneLine.of(name));
        }
    }
}
