package platekeep.client.task;

import java.util.function.Function;

/** What came of work: a value, a failure, or nothing because it was cancelled. "None" and "cancelled" differ. */
public sealed interface Outcome<T> {

    /** Answers for each case; a forgotten case does not compile. */
    <R> R fold(Function<Done<T>, R> done, Function<Failed<T>, R> failed, Function<Cancelled<T>, R> cancelled);

    /** The work came to an end; its value may be {@code null} where the work has none. */
    record Done<T>(T value) implements Outcome<T> {
        @Override
        public <R> R fold(
                Function<Done<T>, R> done, Function<Failed<T>, R> failed, Function<Cancelled<T>, R> cancelled) {
            return done.apply(this);
        }
    }

    /**
     * The work failed.
     *
     * @param why a checked exception says what to tell the user; an unchecked one is our bug and has been logged
     */
    record Failed<T>(Exception why) implements Outcome<T> {
        @Override
        public <R> R fold(
                Function<Done<T>, R> done, Function<Failed<T>, R> failed, Function<Cancelled<T>, R> cancelled) {
            return failed.apply(this);
        }
    }

    /** The work was cancelled; everything is as it was. */
    record Cancelled<T>() implements Outcome<T> {
        @Override
        public <R> R fold(
                Function<Done<T>, R> done, Function<Failed<T>, R> failed, Function<Cancelled<T>, R> cancelled) {
            return cancelled.apply(this);
        }
    }
}
