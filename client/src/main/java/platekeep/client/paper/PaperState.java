package platekeep.client.paper;

import java.util.List;
import java.util.Optional;
import platekeep.client.ui.PictureSource;

/**
 * What the Paper screen shows.
 *
 * @param lines the plates in order
 * @param current which of them is in front, from 0; -1 when there are none
 * @param facts what the form holds: those of the one in front, or nothing where many are chosen
 * @param offered whether what is said of the paper in {@code facts} is only offered, as the one before has it
 * @param before what was taken last, for the themes and ages of the next
 * @param shared what many that are chosen have
 * @param changed how many are changed and in no version yet
 * @param isReading whether plates are still being read
 */
public record PaperState(
        List<Line> lines,
        int current,
        Facts facts,
        boolean offered,
        Optional<Facts> before,
        Shared shared,
        int changed,
        boolean isReading) {

    /** Nothing to fill in. */
    static final PaperState NOTHING =
            new PaperState(List.of(), -1, Facts.NOTHING, false, Optional.empty(), Shared.NONE, 0, false);

    public PaperState {
        lines = List.copyOf(lines);
    }

    /**
     * A plate.
     *
     * @param key tells it from all others
     * @param missing what is not said yet, in words; empty when all is
     * @param library the name of its library; empty where there is only one
     * @param picture its scan or photo, else its chart; empty where it has neither
     * @param isChanged whether it is changed and in no version yet
     */
    public record Line(
            String key,
            String title,
            String missing,
            String library,
            Optional<PictureSource> picture,
            boolean isChanged) {}

    /** How many are chosen, if more than one. */
    public int many() {
        return shared.count();
    }

    /** The plate in front. */
    public Optional<Line> line() {
        return current < 0 ? Optional.empty() : Optional.of(lines.get(current));
    }
}
