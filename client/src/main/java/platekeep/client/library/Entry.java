package platekeep.client.library;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import platekeep.model.plate.Plate;
import platekeep.model.text.Problem;

/** A plate file of a library as it stands at one version: a plate, or a file that is damaged. */
public sealed interface Entry {

    /** Where the file lies in the library, with {@code /} between folders. */
    String path();

    /** The id of the content, the same for the same bytes. */
    String content();

    /** Answers for each case; a forgotten case does not compile. */
    <T> T fold(Function<Good, T> good, Function<Damaged, T> damaged);

    /** The plate, if the file can be read. */
    default Optional<Plate> plate() {
        return fold(good -> Optional.of(good.read()), damaged -> Optional.empty());
    }

    /** A file that reads as a plate. */
    record Good(String path, String content, Plate read) implements Entry {
        @Override
        public <T> T fold(Function<Good, T> good, Function<Damaged, T> damaged) {
            return good.apply(this);
        }
    }

    /** A file that does not, and why. */
    record Damaged(String path, String content, List<Problem> problems) implements Entry {
        public Damaged {
            problems = List.copyOf(problems);
        }

        @Override
        public <T> T fold(Function<Good, T> good, Function<Damaged, T> damaged) {
            return damaged.apply(this);
        }
    }
}
