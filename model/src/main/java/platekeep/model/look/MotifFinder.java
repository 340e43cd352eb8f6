package platekeep.model.look;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Kinds;

/**
 * Finds the places at which a motif occurs in plates, in whatever colours. A cable may come to lie at any row and
 * position, so all places are tried; what falls up there follows from the figure in which it lies.
 *
 * <p>Of each way to mirror the motif the row with most changes of colour is taken as its anchor. Along it, 64 places of
 * a chart are compared at once: where cables lie, and where a cable has the colour of its left neighbour, which holds
 * whatever the colours are. Only where both agree are the cells themselves gone through. Linear in the cells of a
 * chart as a rule; in a chart where the anchor fits everywhere, times the cells of the motif.
 */
public final class MotifFinder {
    private final Wanted wanted;
    private final List<Pattern> patterns;

    public MotifFinder(Motif motif, Wanted wanted) {
        this.wanted = wanted;
        this.patterns = patterns(wanted.colours() == Wanted.Colours.SAME ? motif.inColours() : motif, wanted);
    }

    /** A motif that is its own mirror image is looked for once. */
    private static List<Pattern> patterns(Motif motif, Wanted wanted) {
        List<Pattern> patterns = new ArrayList<>();
        Set<List<String>> seen = new HashSet<>();
        for (Mirror mirror : Mirror.values()) {
            Motif turned = motif.mirrored(mirror);
            boolean isWanted = mirror == Mirror.NONE || wanted.mirrors() == Wanted.Mirrors.ALL;
            boolean isNew = seen.add(turned.cells());
            if (isWanted && (isNew || wanted.kinds() == Wanted.Kind.SAME)) {
                patterns.add(new Pattern(turned, mirror, wanted));
            }
        }
        return patterns;
    }

    /**
     * The places in a plate, from the top, then from the left, unmirrored ones first of those at one place.
     *
     * @param most where there are more, any so many of them
     */
    public List<Occurrence> in(Plate plate, int most) {
        List<Occurrence> found = new ArrayList<>();
        ChartBits chart = null;
        Set<Long> places = new HashSet<>();
        Kinds kinds = null;
        for (Pattern pattern : patterns) {
            if (pattern.isLargerThan(plate)) {
                continue;
            }
            chart = chart == null ? ChartBits.of(plate, wanted.colours()) : chart;
            kinds = kinds == null && pattern.isIn(chart) ? Kinds.of(plate) : kinds;
            if (kinds != null) {
                pattern.collect(chart, kinds, places, most, found);
            }
        }
        found.sort(Comparator.comparingInt(Occurrence::row).thenComparingInt(Occurrence::position));
        return found;
    }

    /** Whether the motif may be in the chart that left a trace; what is denied is not. */
    public boolean mayBeIn(Trace trace) {
        return patterns.stream().anyMatch(pattern -> trace.hasAll(pattern.traces));
    }

    /** The motif in one way to mirror it. */
    private static final class Pattern {
        private static final int KEYS = 128;

        private final Motif motif;
        private final Mirror mirror;
        private final Wanted wanted;
        private final Set<Integer> traces;
        private final byte[] cells;
        private final int width;
        private final int height;
        private int anchor;
        private int anchorFrom;
        private long cables;
        private long cablesCount;
        private long same;
        private long sameCount;

        Pattern(Motif motif, Mirror mirror, Wanted wanted) {
            this.motif = motif;
            this.mirror = mirror;
            this.wanted = wanted;
            this.width = motif.width();
            this.height = motif.height();
            this.traces = Trace.of(motif, wanted.gaps());
            this.cells = new byte[width * height];
            for (int at = 0; at < cells.length; at++) {
                cells[at] = (byte) motif.at(at / width, at % width);
            }
            chooseAnchor();
        }

        boolean isLargerThan(Plate plate) {
            return width > plate.positions() || height > plate.rows().size();
        }

        private void chooseAnchor() {
            int best = -1;
            for (int r = 0; r < height; r++) {
                for (int from = 0; from == 0 || from + Long.SIZE <= width; from += Long.SIZE / 2) {
                    int worth = worth(r, from);
                    if (worth > best) {
                        best = worth;
                        anchor = r;
                        anchorFrom = from;
                    }
                }
            }
            for (int i = 0; i < Long.SIZE && anchorFrom + i < width; i++) {
                ask(i, anchor * width + anchorFrom + i);
            }
        }

        /** A change of colour is rarer than a run of one. */
        private int worth(int row, int from) {
            int worth = 0;
            for (int i = from; i < Math.min(width, from + Long.SIZE); i++) {
                boolean isCable = cells[row * width + i] != Row.EMPTY;
                boolean changes = i > from && cells[row * width + i] != cells[row * width + i - 1];
                worth += (isCable ? 1 : 0) + (changes && asksAt(row * width + i) ? 8 : 0);
            }
            return worth;
        }

        /** Whether a place and its left neighbour are known to have one colour, or two. */
        private boolean asksAt(int at) {
            boolean isCable = cells[at] != Row.EMPTY;
            boolean wasCable = cells[at - 1] != Row.EMPTY;
            return isCable && wasCable || isCable != wasCable && wanted.gaps() != Wanted.Gaps.ANY;
        }

        private void ask(int bit, int at) {
            long here = 1L << bit;
            if (cells[at] != Row.EMPTY) {
                cables |= here;
                cablesCount |= here;
            } else if (wanted.gaps() == Wanted.Gaps.OPEN) {
                cablesCount |= here;
            }
            if (bit > 0 && asksAt(at)) {
                sameCount |= here;
                same |= cells[at] == cells[at - 1] ? here : 0;
            }
        }

        boolean isIn(ChartBits chart) {
            return find(chart, 0, 0) >= 0;
        }

        void collect(ChartBits chart, Kinds kinds, Set<Long> places, int most, List<Occurrence> into) {
            int columns = chart.width() - width + 1;
            for (int at = find(chart, 0, 0);
                    at >= 0 && into.size() < most;
                    at = find(chart, (at + 1) / columns, (at + 1) % columns)) {
                int row = at / columns;
                int place = at % columns;
                Occurrence.Kinds fall = fall(chart, kinds, row, place);
                boolean isWanted = wanted.kinds() == Wanted.Kind.ANY || fall == Occurrence.Kinds.SAME;
                if (isWanted && places.add((long) row << Integer.SIZE | place)) {
                    into.add(new Occurrence(row, chart.from() + place, mirror, fall));
                }
            }
        }

        /** The first place from one on, as row times the number of columns plus column; -1 for none. */
        private int find(ChartBits chart, int fromRow, int fromPlace) {
            int columns = chart.width() - width + 1;
            int place = fromPlace;
            for (int row = fromRow; row <= chart.height() - height; row++) {
                for (; place < columns; place++) {
                    int at = place + anchorFrom;
                    if (((chart.cables(row + anchor, at) ^ cables) & cablesCount) == 0
                            && ((chart.same(row + anchor, at) ^ same) & sameCount) == 0
                            && fits(chart, row, place)) {
                        return row * columns + place;
                    }
                }
                place = 0;
            }
            return -1;
        }

        private boolean fits(ChartBits chart, int row, int place) {
            byte[] stands = new byte[KEYS];
            byte[] standsFor = new byte[KEYS];
            for (int r = 0; r < height; r++) {
                for (int i = 0; i < width; i++) {
                    byte asked = cells[r * width + i];
                    byte there = chart.at(row + r, place + i);
                    if (asked == Row.EMPTY) {
                        if (wanted.gaps() == Wanted.Gaps.OPEN && there != Row.EMPTY) {
                            return false;
                        }
                    } else if (there == Row.EMPTY || !takes(stands, asked, there) || !takes(standsFor, there, asked)) {
                        return false;
                    }
                }
            }
            return (wanted.gaps() != Wanted.Gaps.APART || isApart(chart, row, place, standsFor))
                    && (wanted.colours() == Wanted.Colours.ANY || isSame(chart, stands));
        }

        private static boolean takes(byte[] stands, byte asked, byte there) {
            if (stands[asked] == 0) {
                stands[asked] = there;
            }
            return stands[asked] == there;
        }

        private boolean isApart(ChartBits chart, int row, int place, byte[] standsFor) {
            for (int at = 0; at < cells.length; at++) {
                if (cells[at] == Row.EMPTY && standsFor[chart.at(row + at / width, place + at % width)] != 0) {
                    return false;
                }
            }
            return true;
        }

        private boolean isSame(ChartBits chart, byte[] stands) {
            for (int key = 0; key < KEYS; key++) {
                if (stands[key] != 0
                        && !chart.isSeenAs((char) stands[key], motif.palette().get((char) key))) {
                    return false;
                }
            }
            return true;
        }

        private Occurrence.Kinds fall(ChartBits chart, Kinds kinds, int row, int place) {
            boolean isSame = false;
            boolean isTurned = false;
            for (int at = 0; at < cells.length; at++) {
                if (cells[at] != Row.EMPTY) {
                    boolean up = kinds.isUp(row + at / width, chart.from() + place + at % width);
                    boolean agrees = up == motif.isUp(at / width, at % width);
                    isSame |= agrees;
                    isTurned |= !agrees;
                }
            }
            return isSame && isTurned
                    ? Occurrence.Kinds.MIXED
                    : isSame ? Occurrence.Kinds.SAME : Occurrence.Kinds.TURNED;
        }
    }
}
