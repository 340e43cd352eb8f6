package platekeep.client.join;

import java.util.Optional;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Value;

/**
 * What the one side changed of a row that the other took out.
 *
 * @param from the first cell that changed, counted from the row's left end
 * @param to the last one
 * @param cells what the cells from the first to the last became
 */
record RowChange(int from, int to, String cells) {

    /** Empty where nothing was changed, or the rows are not equally long. */
    static Optional<RowChange> of(Clash clash) {
        return clash.sides().stream()
                .flatMap(side -> of(clash.base(), side.value()).stream())
                .findFirst();
    }

    /** What a row became. */
    static Optional<RowChange> of(Value base, Value value) {
        if (!(base instanceof Value.Text was)
                || !(value instanceof Value.Text is)
                || was.string().length() != is.string().length()
                || was.equals(is)) {
            return Optional.empty();
        }
        int from = 0;
        int to = was.string().length() - 1;
        while (was.string().charAt(from) == is.string().charAt(from)) {
            from++;
        }
        while (was.string().charAt(to) == is.string().charAt(to)) {
            to--;
        }
        return Optional.of(new RowChange(from, to, is.string().substring(from, to + 1)));
    }
}
