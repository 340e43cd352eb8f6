package platekeep.model.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/**
 * What somebody did to the chart of a plate, read from how it was and how it is: which row is which, which key became
 * which, what was moved or mirrored. What is left, cable by cable, follows from these.
 *
 * @param turnedOver whether the rows stand in the opposite order, each taking its id along
 * @param pairing which row is which; row indexes of {@code after} are those of the later plate as it is
 * @param picture the motion of the whole picture in the frame, by cells (a move by rows that takes the ids along is in
 *     the pairing)
 * @param figures the motions of single figures by their label ({@link Labels} of the earlier cells)
 * @param renaming what became of the keys
 */
public record PlateEdit(
        boolean turnedOver, RowPairing pairing, Motion picture, Map<Integer, Motion> figures, Renaming renaming) {

    /** So many more cables must be explained, for each figure that moved, before rows of another likeness are taken for the same. */
    private static final int FAR_MORE = 8;
    /** In charts of more cables only the likest rows are looked at: every other reading would cost as much again. */
    private static final long LARGE = 250_000;

    /** Reads the edit between two plates whose cells lie in one frame. */
    public static PlateEdit of(Plate before, Plate after, Grid beforeCells, Grid afterCells) {
        return of(before, after, beforeCells, afterCells, Direction.ANY);
    }

    /** The same for a later plate of which it is known that its rows are not turned upside down, or turned back. */
    public static PlateEdit upright(Plate before, Plate after, Grid beforeCells, Grid afterCells) {
        return of(before, after, beforeCells, afterCells, Direction.UPRIGHT);
    }

    /** Whether a chart may have been turned upside down. */
    private enum Direction {
        ANY,
        UPRIGHT
    }

    private static PlateEdit of(Plate before, Plate after, Grid beforeCells, Grid afterCells, Direction direction) {
        Map<Character, Character> sure = Renaming.fromEntries(before.palette(), after.palette());
        Map<Character, Character> exchanged = Renaming.exchanged(before.palette(), after.palette());
        PlateEdit plain = of(before, after, beforeCells, afterCells, sure, direction);
        if (exchanged.isEmpty()) {
            return plain;
        }
        exchanged.putAll(sure);
        PlateEdit followed = of(before, after, beforeCells, afterCells, exchanged, direction);
        return followed.words(beforeCells, afterCells) < plain.words(beforeCells, afterCells) ? followed : plain;
    }

    /** @param letters what the keys are taken to be named now while rows are paired and moves are looked for */
    private static PlateEdit of(
            Plate before,
            Plate after,
            Grid beforeCells,
            Grid afterCells,
            Map<Character, Character> letters,
            Direction direction) {
        Grid followed = follow(beforeCells, letters);
        Motion sideways = PictureMotion.sideways(followed, afterCells);
        Grid moved = followed.movedSideways(sideways);
        RowPairing pairing = RowPairing.of(before, after, moved, afterCells, RowPairing.By.LIKENESS);
        boolean turned = direction == Direction.ANY && pairing.isTurnedOver();
        Reader reader = new Reader(before, after, beforeCells, afterCells, followed, sideways);
        PlateEdit read = reader.read(turned, pairing);
        if (turned || !pairing.restsOnLikeness()) {
            return read;
        }
        PlateEdit plainest = reader.plainest(read, moved);
        if (direction == Direction.UPRIGHT) {
            return plainest;
        }
        return reader.turned(moved)
                .filter(other -> other.isPlainer(plainest, beforeCells, afterCells, moved))
                .orElse(plainest);
    }

    /** Whether a reading as turned over tells more plainly what another one tells; rows take cables along where they can. */
    private boolean isPlainer(PlateEdit other, Grid before, Grid after, Grid moved) {
        boolean mirrored = other.picture().rowSign() < 0
                || other.figures().values().stream().anyMatch(motion -> motion.rowSign() < 0);
        int equal = pairing.pairedEqual(moved, after);
        return equal > 1
                && equal * 2 >= drawn(moved)
                && equal >= other.pairing().pairedEqual(moved, after)
                && words(before, after) < other.words(before, after) + (mirrored ? 1 : 0);
    }

    /** Reads what else happened once it is said which row is which. */
    private record Reader(
            Plate before, Plate after, Grid beforeCells, Grid afterCells, Grid followed, Motion sideways) {

        PlateEdit read(boolean turned, RowPairing pairing) {
            Witnesses witnesses = new Witnesses(before, after, pairing, beforeCells.frame());
            Motions motions = Motions.of(followed, afterCells, pairing, witnesses, sideways);
            Renaming renaming =
                    Renaming.of(before.palette(), after.palette(), counts(beforeCells, afterCells, pairing, motions));
            return new PlateEdit(turned, pairing, motions.picture(), Map.copyOf(motions.figures()), renaming);
        }

        /** The picture taken to be turned upside down, rows and all, if they then stand in the opposite order. */
        Optional<PlateEdit> turned(Grid moved) {
            RowPairing pairing = RowPairing.of(
                            turnedOver(before), after, moved.turnedOver(), afterCells, RowPairing.By.LIKENESS)
                    .turnedOver();
            return pairing.isTurnedOver() ? Optional.of(read(true, pairing)) : Optional.empty();
        }

        /**
         * Where likeness alone says which row is which, another pairing may tell the edit in fewer words: a row that
         * moved past others much like it, or figures that were lifted within rows that all stayed. Of equally plain
         * readings the first.
         */
        PlateEdit plainest(PlateEdit first, Grid moved) {
            if ((long) before.rows().size() * beforeCells.frame().width() > LARGE) {
                return first;
            }
            int words = first.words(beforeCells, afterCells);
            if (words == 0) {
                return first;
            }
            int equal = first.pairing().pairedEqual(moved, afterCells);
            PlateEdit best = others(first.pairing(), moved).stream()
                    .filter(pairing -> pairing.pairedEqual(moved, afterCells) >= equal)
                    .map(pairing -> read(false, pairing))
                    .min(Comparator.comparingInt(read -> read.words(beforeCells, afterCells)))
                    .orElse(first);
            boolean plainer = best.words(beforeCells, afterCells) < words;
            if (!plainer && first.pairing().leavesRowsOnBothSides()) {
                PlateEdit recoloured =
                        read(false, RowPairing.of(before, after, moved, afterCells, RowPairing.By.SHAPE));
                if (2 * recoloured.words(beforeCells, afterCells) < words
                        && recoloured.pairing().pairedEqual(moved, afterCells) >= equal) {
                    return recoloured;
                }
            }
            PlateEdit read = plainer ? best : first;
            return before.rows().size() != after.rows().size() ? read : plainestInPlace(read, plainer);
        }

        /** Other ways to pair the rows, where this one leaves something to be said for them. */
        private List<RowPairing> others(RowPairing plain, Grid moved) {
            List<RowPairing> others = new ArrayList<>();
            if (plain.leavesEqualsApart(moved, afterCells)) {
                others.add(RowPairing.of(before, after, moved, afterCells, RowPairing.By.EQUALS));
                others.addAll(plain.withRowsMoved(before, after, moved, afterCells));
            }
            return others;
        }

        /** @param told whether the reading is one that told the edit in fewer words than the likest rows do */
        private PlateEdit plainestInPlace(PlateEdit first, boolean told) {
            int words = first.words(beforeCells, afterCells);
            Grid moved = followed.movedSideways(sideways);
            PlateEdit inPlace = read(false, RowPairing.of(before, after, moved, afterCells, RowPairing.By.PLACE));
            Motion across = inPlace.picture().across();
            if (!across.isNone() && !across.equals(sideways)) {
                Grid there = followed.movedSideways(across);
                RowPairing rows = RowPairing.of(before, after, there, afterCells, RowPairing.By.LIKENESS);
                Reader aside = new Reader(before, after, beforeCells, afterCells, followed, across);
                PlateEdit read = aside.read(false, rows);
                if (2 * read.words(beforeCells, afterCells) < words) {
                    return read;
                }
            }
            boolean lifted = !inPlace.figures().isEmpty()
                    && inPlace.picture().equals(first.picture())
                    && inPlace.renaming().equals(first.renaming());
            int saved = first.unexplained(beforeCells, afterCells) - inPlace.unexplained(beforeCells, afterCells);
            boolean plainer = (told || !first.figures().isEmpty())
                    && inPlace.words(beforeCells, afterCells) < words
                    && inPlace.pairing().pairedEqual(moved, afterCells)
                            >= first.pairing().pairedEqual(moved, afterCells);
            return lifted && (plainer || saved >= FAR_MORE * inPlace.figures().size()) ? inPlace : first;
        }
    }

    /** How much there is to tell of this reading: cables that it leaves unexplained, rows and figures that it moves. */
    private int words(Grid before, Grid after) {
        RowPairing rows = turnedOver ? pairing.turnedOver() : pairing;
        return unexplained(before, after)
                + rows.rowsToTell(turnedOver ? before.turnedOver() : before, after)
                + (turnedOver ? 3 : 0)
                + Motions.TO_TELL * figures.size()
                + (picture.isNone() ? 0 : 3);
    }

    private int unexplained(Grid before, Grid after) {
        char[] letters = new char[128];
        for (char c = 0; c < letters.length; c++) {
            letters[c] = renaming.letter(c).orElse(Row.EMPTY);
        }
        Labels labels = figures.isEmpty() ? null : before.figures();
        return new Unexplained(before, after, pairing, labels, figures, picture, letters).count();
    }

    private static Plate turnedOver(Plate plate) {
        List<Row> rows = new ArrayList<>(plate.rows());
        Collections.reverse(rows);
        return plate.edit().rows(rows).build();
    }

    private static int drawn(Grid grid) {
        return (int) IntStream.range(0, grid.height())
                .filter(i -> !Grid.isBlank(grid.row(i)))
                .count();
    }

    private static Grid follow(Grid cells, Map<Character, Character> letters) {
        if (letters.isEmpty()) {
            return cells;
        }
        char[] table = new char[128];
        for (char c = 0; c < table.length; c++) {
            table[c] = letters.getOrDefault(c, c);
        }
        return cells.mapped(table);
    }

    private static Renaming.Counts counts(Grid before, Grid after, RowPairing pairing, Motions motions) {
        Renaming.Counts counts = new Renaming.Counts();
        Labels labels = motions.figures().isEmpty() ? null : before.figures();
        for (int i = 0; i < before.height(); i++) {
            int row = pairing.after(i);
            for (int k = 0; row >= 0 && k < before.frame().width(); k++) {
                char c = before.at(i, k);
                if (c != Row.EMPTY) {
                    Motion motion = labels == null
                            ? motions.picture()
                            : motions.figures().getOrDefault(labels.at(i, k), motions.picture());
                    counts.add(c, after.at(motion.row(row), motion.position(k)));
                }
            }
        }
        return counts;
    }

    /** The motion of a figure, or of the picture where it made none of its own. */
    public Motion motionOf(int figure) {
        return figures.getOrDefault(figure, picture);
    }

    /** Whether anything moved by cells. */
    public boolean moves() {
        return !picture.isNone() || !figures.isEmpty();
    }
}
