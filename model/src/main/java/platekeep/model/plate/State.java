package platekeep.model.plate;

import java.util.Arrays;
import java.util.Optional;

/** How far a plate has come. */
public enum State {
    IDEA("idea"),
    CHARTED("charted"),
    TEST_STITCHED("test-stitched"),
    PUBLISHED("published");

    private final String word;

    State(String word) {
        this.word = word;
    }

    /** The word in the text of a plate and on screen. */
    public String word() {
        return word;
    }

    public static Optional<State> of(String word) {
        return Arrays.stream(values()).filter(state -> state.word.equals(word)).findFirst();
    }
}
