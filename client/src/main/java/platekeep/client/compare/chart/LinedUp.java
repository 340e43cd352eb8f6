package platekeep.client.compare.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import platekeep.client.compare.chart.Line.Edited;
import platekeep.client.compare.chart.Line.Fate;
import platekeep.model.compare.CarriedPicture;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.RowPair;
import platekeep.model.compare.Side;

/**
 * The rows of two plates on lines, top first, so that each plate's own rows stay in order: rows that are the same row
 * share a line, a row that was put in, taken out or moved has a line of its own with a gap beside it. Where most rows
 * were moved (a picture turned upside down) moved rows share a line all the same; where hardly a row is the same (two
 * different plates) rows of one number, counted from the bottom, share one.
 */
public final class LinedUp {
    /** Of the smaller plate's rows so many in a hundred must be paired; else rows are lined up by number. */
    private static final int LEAST_PAIRED = 20;

    private final List<Line> lines;
    private final int[] ofBefore;
    private final int[] ofAfter;
    private final boolean isByNumber;

    private LinedUp(Comparison comparison, CarriedPicture carried) {
        ofBefore = new int[comparison.before().rows().size()];
        ofAfter = new int[comparison.after().rows().size()];
        isByNumber = hardlyPaired(comparison.rows());
        List<Line> made = isByNumber ? byNumber() : byPair(comparison.rows(), carried);
        number(made);
        lines = List.copyOf(made);
    }

    /** Lines two plates up. */
    public static LinedUp of(Comparison comparison, CarriedPicture carried) {
        return new LinedUp(comparison, carried);
    }

    private boolean hardlyPaired(List<RowPair> pairs) {
        long paired = pairs.stream()
                .filter(p -> p.before().isPresent() && p.after().isPresent())
                .count();
        int least = Math.min(ofBefore.length, ofAfter.length);
        return paired * 100 < (long) least * LEAST_PAIRED;
    }

    private List<Line> byNumber() {
        int all = Math.max(ofBefore.length, ofAfter.length);
        List<Line> made = new ArrayList<>();
        for (int line = 0; line < all; line++) {
            int before = Math.max(Line.NONE, line - (all - ofBefore.length));
            int after = Math.max(Line.NONE, line - (all - ofAfter.length));
            made.add(new Line(before, after, Fate.BESIDE, Edited.NO, Line.NONE));
        }
        return made;
    }

    private List<Line> byPair(List<RowPair> pairs, CarriedPicture carried) {
        long moved = pairs.stream().filter(p -> p.kind() == RowPair.Kind.MOVED).count();
        boolean mostMoved = moved * 2 > Math.min(ofBefore.length, ofAfter.length);
        int[] movedTo = new int[ofBefore.length];
        Arrays.fill(movedTo, Line.NONE);
        List<Line> made = new ArrayList<>();
        for (RowPair pair : pairs) {
            int i = pair.before().orElse(Line.NONE);
            int j = pair.after().orElse(Line.NONE);
            Edited edited = j == Line.NONE || carried.after(j).isEmpty() ? Edited.NO : Edited.YES;
            if (pair.kind() == RowPair.Kind.MOVED && !mostMoved) {
                made.add(new Line(Line.NONE, j, Fate.CAME, edited, i));
                movedTo[i] = j;
            } else {
                made.add(new Line(i, j, fate(pair.kind()), edited, Line.NONE));
            }
        }
        return mostMoved ? made : withLeftPlaces(made, movedTo);
    }

    private static Fate fate(RowPair.Kind kind) {
        return switch (kind) {
            case ADDED -> Fate.ADDED;
            case REMOVED -> Fate.REMOVED;
            default -> Fate.STAYED;
        };
    }

    /** Puts a line where each moved row stood, above the row that followed it. */
    private static List<Line> withLeftPlaces(List<Line> lines, int[] movedTo) {
        List<Line> made = new ArrayList<>();
        int next = 0;
        for (Line line : lines) {
            if (line.before() != Line.NONE) {
                next = leave(movedTo, next, line.before(), made);
            }
            made.add(line);
        }
        leave(movedTo, next, movedTo.length, made);
        return made;
    }

    private static int leave(int[] movedTo, int from, int to, List<Line> made) {
        for (int i = from; i < to; i++) {
            if (movedTo[i] != Line.NONE) {
                made.add(new Line(i, Line.NONE, Fate.LEFT, Edited.NO, movedTo[i]));
            }
        }
        return Math.max(from, to);
    }

    /** Numbers the rows by line; until then a moved row's mate is its other row. */
    private void number(List<Line> made) {
        for (int line = 0; line < made.size(); line++) {
            if (made.get(line).before() != Line.NONE) {
                ofBefore[made.get(line).before()] = line;
            }
            if (made.get(line).after() != Line.NONE) {
                ofAfter[made.get(line).after()] = line;
            }
        }
        made.replaceAll(line -> switch (line.fate()) {
            case LEFT ->
                mated(line, ofAfter[line.mate()], made.get(ofAfter[line.mate()]).edited());
            case CAME -> mated(line, ofBefore[line.mate()], line.edited());
            default -> line;
        });
    }

    private static Line mated(Line line, int mate, Edited edited) {
        return new Line(line.before(), line.after(), line.fate(), edited, mate);
    }

    public int size() {
        return lines.size();
    }

    public Line line(int line) {
        return lines.get(line);
    }

    public List<Line> lines() {
        return lines;
    }

    /** The line that a row stands on. */
    public int of(Side side, int row) {
        return side == Side.BEFORE ? ofBefore[row] : ofAfter[row];
    }

    /** Whether hardly a row is the same, so that lines mean nothing but the number from the bottom. */
    public boolean isByNumber() {
        return isByNumber;
    }
}
