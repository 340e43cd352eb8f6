package platekeep.client.compare.chart;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import platekeep.model.compare.Side;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Knot;
import platekeep.model.draw.Spot;
import platekeep.model.draw.Strand;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;

/** What of the geometric lines, single stitches and starts stands on one side only, as each side draws it. */
public record ChangedStitches(
        List<Strand> strandsBefore,
        List<Strand> strandsAfter,
        List<Knot> knotsBefore,
        List<Knot> knotsAfter,
        List<Spot> startsBefore,
        List<Spot> startsAfter) {
    public ChangedStitches {
        strandsBefore = List.copyOf(strandsBefore);
        strandsAfter = List.copyOf(strandsAfter);
        knotsBefore = List.copyOf(knotsBefore);
        knotsAfter = List.copyOf(knotsAfter);
        startsBefore = List.copyOf(startsBefore);
        startsAfter = List.copyOf(startsAfter);
    }

    static ChangedStitches of(Plate before, Plate after) {
        if (before.lines().equals(after.lines()) && before.marks().equals(after.marks())) {
            return new ChangedStitches(
                    List.of(), List.of(), List.of(), List.of(), starts(before, after), starts(after, before));
        }
        Drawing was = only(before, after);
        Drawing is = only(after, before);
        return new ChangedStitches(
                was.strands(), is.strands(), was.knots(), is.knots(), starts(before, after), starts(after, before));
    }

    private static List<Spot> starts(Plate plate, Plate other) {
        return plate.starts().stream()
                .filter(start -> !other.starts().contains(start) && plate.indexOf(start.row()) >= 0)
                .map(start -> new Spot(plate.indexOf(start.row()), start.pleat() - plate.from()))
                .toList();
    }

    /** A drawing of a plate with those lines and single stitches alone that another plate lacks. */
    private static Drawing only(Plate plate, Plate other) {
        Set<Mark> marks = new HashSet<>(other.marks());
        return Drawing.of(plate.edit()
                .lines(plate.lines().stream()
                        .filter(line -> !other.lines().contains(line))
                        .toList())
                .marks(plate.marks().stream()
                        .filter(mark -> !marks.contains(mark))
                        .toList())
                .build());
    }

    /** Of one side, in pleats and rows of its own chart. */
    public List<Strand> strands(Side side) {
        return side == Side.BEFORE ? strandsBefore : strandsAfter;
    }

    /** Of one side, in pleats and rows of its own chart. */
    public List<Knot> knots(Side side) {
        return side == Side.BEFORE ? knotsBefore : knotsAfter;
    }

    /** The starts of one side that the other lacks, by the cable that they stand on. */
    public List<Spot> starts(Side side) {
        return side == Side.BEFORE ? startsBefore : startsAfter;
    }
}
