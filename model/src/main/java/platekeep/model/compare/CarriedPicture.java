package platekeep.model.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import platekeep.model.compare.CableChange.How;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/**
 * The earlier picture carried over into the later plate: every cable lies where the moves, and the rows put in and taken
 * out, have brought it. Where it then differs from the later plate, somebody changed cables. Made in time linear in the
 * cells; the changes of a row are found when they are asked for, in time linear in its width.
 */
public final class CarriedPicture {
    private final Comparison comparison;
    private final Optional<Labels> labels;
    private final char[][] carried;

    private CarriedPicture(Comparison comparison) {
        this.comparison = comparison;
        PlateEdit edit = comparison.edit();
        labels = edit.figures().isEmpty()
                ? Optional.empty()
                : Optional.of(comparison.beforeCells().figures());
        carried = new char[comparison.after().rows().size()][comparison.frame().width()];
        for (char[] row : carried) {
            Arrays.fill(row, Row.EMPTY);
        }
        new ExpectedCells(comparison, labels.orElse(null)).forEach((row, index, key) -> carried[row][index] = key);
    }

    /** Carries the earlier picture over. */
    public static CarriedPicture of(Comparison comparison) {
        return new CarriedPicture(comparison);
    }

    /**
     * The cable of the earlier plate that was carried to a place of the later one.
     *
     * @param row a row of the later plate, top row 0
     * @param position the position there
     * @return its key in the earlier plate, {@link Row#EMPTY} for none
     */
    public char was(int row, int position) {
        int index = comparison.frame().index(position);
        return index < 0 || index >= carried[row].length ? Row.EMPTY : carried[row][index];
    }

    /** Whether something happened to the cable at a place of the later plate. */
    public boolean isChanged(int row, int position) {
        int index = comparison.frame().index(position);
        return comparison.followed(wasAt(row, index)) != comparison.afterCells().at(row, index);
    }

    /** What happened to the cables of a row of the later plate, from the left; nothing for a row that was put in. */
    public List<CableChange> after(int row) {
        char[] is = comparison.afterCells().row(row);
        char[] was = carried[row];
        return isNew(row) ? List.of() : runs(is.length, k -> how(was[k], is[k]));
    }

    private boolean isNew(int row) {
        return comparison.edit().pairing().before(row) < 0 && Grid.isBlank(carried[row]);
    }

    /**
     * What happened to the cables of a row of the earlier plate, from the left, at the positions where they lay; nothing
     * for a row that was taken out.
     */
    public List<CableChange> before(int row) {
        int paired = comparison.edit().pairing().after(row);
        if (paired < 0) {
            return List.of();
        }
        char[] was = comparison.beforeCells().row(row);
        return runs(was.length, k -> {
            Motion motion = motionAt(row, k);
            int to = motion.position(k);
            char is = comparison.afterCells().at(motion.row(paired), to);
            boolean isOtherCable = was[k] == Row.EMPTY && wasAt(motion.row(paired), to) != Row.EMPTY;
            return isOtherCable ? Optional.empty() : how(was[k], is);
        });
    }

    private Motion motionAt(int row, int index) {
        return labels.map(l -> comparison.edit().motionOf(l.at(row, index)))
                .orElse(comparison.edit().picture());
    }

    private char wasAt(int row, int index) {
        boolean isInside = row >= 0 && row < carried.length && index >= 0 && index < carried[row].length;
        return isInside ? carried[row][index] : Row.EMPTY;
    }

    private Optional<How> how(char was, char is) {
        if (comparison.followed(was) == is) {
            return Optional.empty();
        }
        if (was == Row.EMPTY) {
            return Optional.of(How.PUT_IN);
        }
        return Optional.of(is == Row.EMPTY ? How.TAKEN_OUT : How.RECOLOURED);
    }

    private interface HowAt {
        Optional<How> at(int index);
    }

    private List<CableChange> runs(int width, HowAt hows) {
        List<CableChange> runs = new ArrayList<>();
        int k = 0;
        while (k < width) {
            Optional<How> how = hows.at(k);
            int end = k + 1;
            while (end < width && hows.at(end).equals(how)) {
                end++;
            }
            if (how.isPresent()) {
                Grid.Frame frame = comparison.frame();
                runs.add(new CableChange(frame.position(k), frame.position(end - 1), how.get()));
            }
            k = end;
        }
        return runs;
    }
}
