package platekeep.model.text;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What came of reading a text: the thing it says, or all that is wrong with it. */
public sealed interface Reading<T> {

    /** Answers for each case; a forgotten case does not compile. */
    <R> R fold(Function<Good<T>, R> good, Function<Bad<T>, R> bad);

    /** The thing read, if the text was good. */
    default Optional<T> value() {
        return fold(good -> Optional.of(good.read()), bad -> Optional.empty());
    }

    /**
     * The text was good.
     *
     * @param read what it says
     * @param mended what the reader put right on the way (order, spacing, doubles), in order of place
     */
    record Good<T>(T read, List<Problem> mended) implements Reading<T> {
        public Good {
            mended = List.copyOf(mended);
        }

        @Override
        public <R> R fold(Function<Good<T>, R> good, Function<Bad<T>, R> bad) {
            return good.apply(this);
        }
    }

    /**
     * The text is refused.
     *
     * @param problems all that is wrong, in order of place
     */
    record Bad<T>(List<Problem> problems) implements Reading<T> {
        public Bad {
            problems = List.copyOf(problems);
        }

        @Override
        public <R> R fold(Function<Good<T>, R> good, Function<Bad<T>, R> bad) {
            return bad.apply(this);
        }
    }
}
