package platekeep.client.join;

import java.util.List;
import java.util.Optional;
import platekeep.model.draw.Drawing;

/**
 * One plate on the Join screen, with everything worked out that it takes to show it.
 *
 * @param drawing the joined plate as decided so far
 * @param matters what was found: the clashes, then what was settled by itself
 * @param selected the index of the matter that is looked at; -1 when there is none
 * @param answers the answers to it
 * @param open how many clashes are open yet
 * @param total of how many
 * @param faults what the check says of the joined plate, new faults first
 * @param undo the step that can be taken back
 * @param redo the step that can be done again
 * @param isJoined whether the join stands; false when she went back to before it
 * @param changed whether there is something to save
 * @param isComplete whether findings and answers are worked out; those of a large plate come a little later
 */
record Board(
        Drawing drawing,
        List<Matter> matters,
        int selected,
        List<Answer> answers,
        int open,
        int total,
        List<Faults.Fault> faults,
        Optional<String> undo,
        Optional<String> redo,
        boolean isJoined,
        boolean changed,
        boolean isComplete) {

    Board {
        matters = List.copyOf(matters);
        answers = List.copyOf(answers);
        faults = List.copyOf(faults);
    }

    /**
     * Something that was found.
     *
     * @param group the heading that it stands under
     * @param words what it is
     * @param standing how it stands, in a word or two
     * @param state the same, for the sign beside it
     * @param area where it is on the chart; empty for what is not on it
     * @param meanwhile what holds while it is open, and how it can be decided; an empty text for what was settled
     */
    record Matter(String group, String words, String standing, State state, Optional<Area> area, String meanwhile) {}

    /** How a matter stands. */
    enum State {
        OPEN,
        DECIDED,
        IN,
        PARTLY,
        OUT,
        /** It holds, and can be taken back only with all the rest. */
        WHOLE
    }

    /**
     * An answer, with the spot of the chart as it would be.
     *
     * @param who whose it is
     * @param detail name and day, or what it means
     * @param words the value in words
     * @param stands whether it is what was decided
     * @param spot the place with its surroundings; empty for what is not on the chart
     * @param shade the shade as {@code 0xRRGGBB}, where it is about a colour that is still there then
     */
    record Answer(
            String who, String detail, String words, boolean stands, Optional<Spotted> spot, Optional<Integer> shade) {}

    /**
     * A spot of a drawing.
     *
     * @param window what is shown
     * @param area the place in it that is meant
     */
    record Spotted(Drawing drawing, Area window, Area area) {}

    /** The matter that is looked at. */
    Optional<Matter> matter() {
        return selected < 0 || selected >= matters.size() ? Optional.empty() : Optional.of(matters.get(selected));
    }

    /** {@code 2 of 5 open}. */
    String counter() {
        if (!isJoined) {
            return "Before the join";
        }
        if (total == 0) {
            return "No clash";
        }
        return open == 0 ? "All " + total + " decided" : open + " of " + total + " open";
    }
}
