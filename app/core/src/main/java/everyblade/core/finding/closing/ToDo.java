package everyblade.core.finding.closing;

import everyblade.fact.Fact;

/** What closes an open thing; {@code entry} is the line that does, or how it begins, without blanks at its ends. */
public sealed interface ToDo extends Fact {

    record DrawOut(String entry) implements ToDo {}

    record PutBack(String entry) implements ToDo {}

    record Shut(String entry) implements ToDo {}

    record SayOpen(String entry) implements ToDo {}

    /** @param beyond whether it is beyond the limits, so that no further look helps */
    record Decide(boolean beyond, String entry) implements ToDo {}

    record Enter(String entry) implements ToDo {}

    record State(String entry) implements ToDo {}

    record Reply(String entry) implements ToDo {}

    record Settle(Step step, String entry) implements ToDo {}

    /** What is to be done before it is settled. */
    enum Step implements Fact {
        LOOK_AGAIN,
        ENTER_REPEAT,
        FIND,
        GET_ANSWER
    }

    /** @param advice an {@link Advice}, or to ask for all of a row */
    record Answer(Fact advice, String entry) implements ToDo {}

    /** What a person may do or say about a thing that is told for an answer. */
    enum Advice implements Fact {
        IDENTIFY_AGAIN,
        LOOK_AGAIN_BETWEEN,
        SAY_ANEW,
        SAY_WHEN,
        SAY_HOW_LONG,
        NAME_RIGHT_PICTURE,
        LOOK_THERE
    }

    record AskAll(String entry) implements Fact {}

    /** @param number of the entry that answers with nothing */
    record AnswerAnew(int number) implements ToDo {}

    /** @param number of the entry that is to be settled with a reason */
    record SettleAnew(int number) implements ToDo {}

    record SayAnew(String entry) implements ToDo {}

    /** What no single entry closes. */
    enum Look implements ToDo {
        WATCH_AGAIN,
        SEE_OR_ACCEPT,
        LOOK_THERE_AGAIN,
        TAKE_OVER,
        ACCEPT_ANEW
    }
}
