package platekeep.model.plate;

import java.util.List;
import java.util.Optional;

/** How far a plate has come. */
public enum State {
    IDEA("idea"),
    CHARTED("charted"),
    TEST_STITCHED("test-stitched"),
    PUBLISHED("published");

    private static final List<State> ALL = List.of(values());

    private final String word;

    State(String word) {
        this.word = word;
    }

    /** The word in the text of a plate and on screen. */
    public String word() {
        return word;
    }

    public static Optional<State> of(String word) {
        for (State state : ALL) {
            if (state.word.equals(word)) {
                return Optional.of(state);
            }
        }
        return Optional.empty();
    }
}
