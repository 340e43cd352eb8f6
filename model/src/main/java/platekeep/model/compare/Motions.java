package platekeep.model.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/**
 * What was moved or mirrored between two plates: the whole picture, or single figures of it. All indexes are those of
 * the frame; rows of a motion are rows of the later plate.
 *
 * <p>A move is believed where it explains the later plate with far fewer leftovers than painting and erasing would.
 */
final class Motions {
    /** A figure smaller than this must have arrived exactly, and alone. */
    private static final int SMALL = 8;
    /** A figure that moved on its own is as much to tell as so many cables. */
    static final int TO_TELL = 3;
    /** So many motions of figures are tried on the whole picture. */
    private static final int MOST_WHOLE = 4;
    /** A figure smaller than this, in other colours elsewhere, is another one. */
    private static final int SMALLEST_RECOLOURED = 3;

    private final Grid before;
    private final Grid after;
    private final RowPairing pairing;
    private final Witnesses witnesses;
    private final boolean wentAndCame;
    private final boolean recoloured;
    private final Motion picture;
    private final Map<Integer, Motion> figures = new HashMap<>();
    private Labels labels;
    private Labels afterLabels;

    private Motions(Grid before, Grid after, RowPairing pairing, Witnesses witnesses, Motion sideways) {
        this.before = before;
        this.after = after;
        this.pairing = pairing;
        this.witnesses = witnesses;
        this.wentAndCame = cablesWentAndCame();
        this.recoloured = !wentAndCame && manyRecoloured();
        this.picture = find(sideways);
    }

    /**
     * @param before the earlier cells, renamed keys already followed
     * @param sideways the motion that the rows seem to have made together
     */
    static Motions of(Grid before, Grid after, RowPairing pairing, Witnesses witnesses, Motion sideways) {
        return new Motions(before, after, pairing, witnesses, sideways);
    }

    /** The motion that everything made, figures of their own aside. */
    Motion picture() {
        return picture;
    }

    /** The motion of each figure that moved on its own, by its label. */
    Map<Integer, Motion> figures() {
        return figures;
    }

    private Motion find(Motion sideways) {
        if (!sideways.isNone() && wholeMoved(sideways) && !anyFigureStayed(sideways)) {
            int missed = missed(sideways);
            if (missed == 0) {
                return sideways;
            }
            Motion together = byFigures();
            if (missed(together) + TO_TELL * figures.size() < missed) {
                return together;
            }
            figures.clear();
            return sideways;
        }
        return wentAndCame || recoloured || witnesses.any() ? wholeOrFigures(byFigures()) : Motion.NONE;
    }

    /** A figure may seem to have gone to the place of its like where the whole picture moved and was drawn on as well. */
    private Motion wholeOrFigures(Motion together) {
        if (figures.size() < 2) {
            return together;
        }
        Map<Integer, Motion> own = new HashMap<>(figures);
        int least = missed(together) + TO_TELL * own.size();
        Motion best = null;
        for (Motion whole : Stream.concat(
                        outermost(), own.values().stream().distinct().limit(MOST_WHOLE))
                .toList()) {
            figures.clear();
            int missed = missed(whole) + TO_TELL;
            if (missed < least) {
                least = missed;
                best = whole;
            }
        }
        if (best == null) {
            figures.putAll(own);
            return together;
        }
        return best;
    }

    /** Moved and mirrored sideways so that the outermost cables of the rows that are still there lie outermost again. */
    private Stream<Motion> outermost() {
        int[] was = {Integer.MAX_VALUE, -1};
        int[] is = {Integer.MAX_VALUE, -1};
        for (int i = 0; i < before.height(); i++) {
            int row = pairing.after(i);
            for (int k = 0; row >= 0 && k < before.frame().width(); k++) {
                if (before.at(i, k) != Row.EMPTY) {
                    was[0] = Math.min(was[0], k);
                    was[1] = Math.max(was[1], k);
                }
                if (after.at(row, k) != Row.EMPTY) {
                    is[0] = Math.min(is[0], k);
                    is[1] = Math.max(is[1], k);
                }
            }
        }
        boolean asWide = is[1] >= 0 && was[1] - was[0] == is[1] - is[0];
        return asWide
                ? Stream.of(Motion.shift(0, is[0] - was[0]), new Motion(1, 0, -1, is[0] + was[1]))
                : Stream.empty();
    }

    private Motion byFigures() {
        labels = before.figures();
        afterLabels = after.figures();
        findFigures();
        return allTogether();
    }

    /** How many cables this motion of the picture, and those of its figures, leave to be told. */
    private int missed(Motion whole) {
        return new Unexplained(before, after, pairing, labels, figures, whole, Unexplained.sameLetters()).count();
    }

    private boolean wholeMoved(Motion motion) {
        int stay = 0;
        int go = 0;
        for (int i = 0; i < before.height(); i++) {
            int row = pairing.after(i);
            if (row < 0) {
                continue;
            }
            for (int k = 0; k < before.frame().width(); k++) {
                char c = before.at(i, k);
                stay += c != after.at(row, k) ? 1 : 0;
                go += c != Row.EMPTY && c != after.at(row, motion.position(k)) ? 1 : 0;
            }
        }
        return go * 3 < stay || go < stay && witnesses.tellOf(motion, (row, k) -> before.at(row, k) != Row.EMPTY);
    }

    /** Whether a figure lies where it lay, as it was, though the motion would have brought it elsewhere. */
    private boolean anyFigureStayed(Motion motion) {
        Labels figuresBefore = before.figures();
        boolean[] changed = new boolean[figuresBefore.count()];
        boolean[] missed = new boolean[figuresBefore.count()];
        for (int i = 0; i < before.height(); i++) {
            int row = pairing.after(i);
            for (int k = 0; k < before.frame().width(); k++) {
                int figure = figuresBefore.at(i, k);
                if (figure >= 0) {
                    char c = before.at(i, k);
                    changed[figure] |= row < 0 || c != after.at(row, k);
                    missed[figure] |= row >= 0 && c != after.at(row, motion.position(k));
                }
            }
        }
        for (int figure = 0; figure < changed.length; figure++) {
            if (!changed[figure] && missed[figure]) {
                return true;
            }
        }
        return false;
    }

    /** Where cables only went, or only came, or only changed colour, nothing moved unless a start or mark tells of it. */
    private boolean cablesWentAndCame() {
        boolean went = false;
        boolean came = false;
        for (int i = 0; i < before.height() && !(went && came); i++) {
            int row = pairing.after(i);
            if (row < 0 || before.row(i) == after.row(row)) {
                continue;
            }
            for (int k = 0; k < before.frame().width(); k++) {
                boolean was = before.at(i, k) != Row.EMPTY;
                boolean is = after.at(row, k) != Row.EMPTY;
                went |= was && !is;
                came |= !was && is;
            }
        }
        return went && came;
    }

    /**
     * Whether so many cables have another colour at their place that a figure of one outline may have been mirrored, and
     * the colours are much the same ones in all: mirroring only brings them elsewhere.
     */
    private boolean manyRecoloured() {
        int[] more = new int[128];
        int count = 0;
        for (int i = 0; i < before.height(); i++) {
            int row = pairing.after(i);
            for (int k = 0;
                    row >= 0
                            && before.row(i) != after.row(row)
                            && k < before.frame().width();
                    k++) {
                char was = before.at(i, k);
                char is = after.at(row, k);
                if (was != Row.EMPTY && is != Row.EMPTY && was != is) {
                    more[was]--;
                    more[is]++;
                    count++;
                }
            }
        }
        int others = Arrays.stream(more).map(Math::abs).sum() / 2;
        return count * 5 >= SMALL * 2 && others * 4 <= count;
    }

    private void findFigures() {
        Runs runs = new Runs();
        Runs outlines = new Runs();
        for (int j = 0; j < after.height(); j++) {
            int row = j;
            if (changed(j)) {
                Runs.forEach(after.row(j), (s, e) -> {
                    runs.add(new String(after.row(row), s, e - s), row, s);
                    outlines.add(e - s, row, s);
                });
            }
        }
        Map<Integer, List<Motion>> found = new HashMap<>();
        Map<Integer, Figure> touched = figuresTouched();
        touched.forEach((label, figure) -> {
            runs.clearVotes();
            figure.vote(runs);
            List<Motion> best = least(runs.best(), figure::costOf, figure.size / SMALL);
            if (best.isEmpty() && wentAndCame) {
                outlines.clearVotes();
                figure.voteByOutline(outlines);
                best = least(outlines.best(), figure::costOfMovedAndRecoloured, 0);
            }
            if (!best.isEmpty()) {
                List<Motion> told = best.stream()
                        .filter(m -> witnesses.tellOf(m, figure::has))
                        .toList();
                found.put(label, told.isEmpty() ? best : told);
            }
        });
        Map<Motion, Integer> shared = new HashMap<>();
        found.values().forEach(motions -> motions.forEach(m -> shared.merge(m, 1, Integer::sum)));
        found.forEach((label, motions) -> figures.put(
                label,
                motions.stream()
                        .min(Comparator.comparing((Motion m) -> -shared.get(m))
                                .thenComparing(m -> touched.get(label).doubted(m))
                                .thenComparing(Runs.PLAINEST))
                        .orElseThrow()));
    }

    /**
     * The motions that leave least unexplained, or a little more; none where no motion is to be believed. A figure that is its own mirror
     * image has several: what it did is then told by what lay on it, or by what the others did.
     */
    private static List<Motion> least(List<Motion> motions, ToIntFunction<Motion> costOf, int more) {
        Map<Motion, Integer> costs = new LinkedHashMap<>();
        motions.forEach(motion -> costs.put(motion, costOf.applyAsInt(motion)));
        int least = costs.values().stream().min(Comparator.naturalOrder()).orElse(Integer.MAX_VALUE);
        return least == Integer.MAX_VALUE
                ? List.of()
                : motions.stream().filter(m -> costs.get(m) <= least + more).toList();
    }

    private boolean changed(int afterRow) {
        int i = pairing.before(afterRow);
        return i < 0 || !Arrays.equals(before.row(i), after.row(afterRow));
    }

    private Map<Integer, Figure> figuresTouched() {
        Map<Integer, Figure> all = new HashMap<>();
        for (int i = 0; i < before.height(); i++) {
            int row = i;
            Runs.forEach(
                    before.row(i),
                    (s, e) ->
                            all.computeIfAbsent(labels.at(row, s), Figure::new).add(row, s, e));
        }
        all.values().removeIf(figure -> figure.changedCells() == 0);
        return all;
    }

    /** If every figure that is still there made one motion, the picture made it. */
    private Motion allTogether() {
        Motion common = figures.values().stream().findFirst().orElse(Motion.NONE);
        if (common.isNone() || figures.values().stream().anyMatch(m -> !m.equals(common))) {
            return Motion.NONE;
        }
        for (int i = 0; i < before.height(); i++) {
            int row = pairing.after(i);
            for (int k = 0; row >= 0 && k < before.frame().width(); k++) {
                int figure = labels.at(i, k);
                if (figure >= 0 && !figures.containsKey(figure) && after.at(row, k) == before.at(i, k)) {
                    return Motion.NONE;
                }
            }
        }
        figures.clear();
        return common;
    }

    /** One figure of the earlier plate by its stretches. */
    private final class Figure {
        private final int label;
        private final List<int[]> stretches = new ArrayList<>();
        private int size;

        Figure(int label) {
            this.label = label;
        }

        void add(int row, int start, int end) {
            stretches.add(new int[] {row, start, end});
            size += end - start;
        }

        int changedCells() {
            int changed = 0;
            for (int[] s : stretches) {
                int row = pairing.after(s[0]);
                for (int k = s[1]; k < s[2]; k++) {
                    changed += row >= 0 && before.at(s[0], k) != after.at(row, k) ? 1 : 0;
                }
            }
            return changed;
        }

        void vote(Runs runs) {
            for (int[] s : stretches) {
                int row = pairing.after(s[0]);
                if (row >= 0) {
                    runs.vote(new String(before.row(s[0]), s[1], s[2] - s[1]), row, s[1]);
                }
            }
        }

        void voteByOutline(Runs outlines) {
            for (int[] s : stretches) {
                int row = pairing.after(s[0]);
                if (row >= 0) {
                    outlines.vote(s[2] - s[1], row, s[1]);
                }
            }
        }

        /**
         * What a motion with which every colour of the figure became one other leaves unexplained. It is believed where
         * the figure arrived whole and alone and coloured anew in place would explain far less.
         */
        int costOfMovedAndRecoloured(Motion motion) {
            if (motion.isNone() || size < SMALLEST_RECOLOURED) {
                return Integer.MAX_VALUE;
            }
            Recolouring moved = new Recolouring();
            Recolouring stayed = new Recolouring();
            int leftBehind = 0;
            for (int[] s : stretches) {
                int row = pairing.after(s[0]);
                for (int k = s[1]; row >= 0 && k < s[2]; k++) {
                    char c = before.at(s[0], k);
                    moved.add(c, after.at(motion.row(row), motion.position(k)));
                    stayed.add(c, after.at(row, k));
                    leftBehind += after.at(row, k) == c && !isInImage(motion, row, k) ? 1 : 0;
                }
            }
            int missed = moved.missed() + leftBehind;
            boolean arrived = size < SMALL ? missed == 0 && arrivedAlone(motion) : missed * 8 <= size;
            return arrived && missed * 3 < stayed.missed() ? missed : Integer.MAX_VALUE;
        }

        private boolean isInImage(Motion motion, int row, int k) {
            Motion back = motion.inverse();
            int fromRow = back.row(row);
            int i = fromRow >= 0 && fromRow < after.height() ? pairing.before(fromRow) : -1;
            return i >= 0 && labels.at(i, back.position(k)) == label;
        }

        /** What the motion leaves unexplained; the greatest number where it is not to be believed. */
        int costOf(Motion motion) {
            if (motion.isNone() || size < 2) {
                return Integer.MAX_VALUE;
            }
            int missed = 0;
            int leftBehind = 0;
            int painted = 0;
            for (int[] s : stretches) {
                int row = pairing.after(s[0]);
                if (row < 0) {
                    continue;
                }
                for (int k = s[1]; k < s[2]; k++) {
                    char c = before.at(s[0], k);
                    int toRow = motion.row(row);
                    int to = motion.position(k);
                    missed += after.at(toRow, to) != c ? 1 : 0;
                    leftBehind += after.at(row, k) == c && !isImage(motion, row, k, c) ? 1 : 0;
                    painted += after.at(toRow, to) == c && beforeAt(toRow, to) != c ? 1 : 0;
                }
            }
            int cost = missed + leftBehind;
            if (missed * 4 <= size && cost < changedCells() && witnesses.tellOf(motion, this::has)) {
                return cost;
            }
            boolean arrived = size < SMALL ? missed == 0 && arrivedAlone(motion) : missed * 4 <= size;
            boolean mirroredInPlace =
                    recoloured && missed == 0 && size >= SMALL && changedCells() * 5 >= size * 2 && staysInside(motion);
            return (wentAndCame || mirroredInPlace) && arrived && cost * 3 < changedCells() + painted
                    ? cost
                    : Integer.MAX_VALUE;
        }

        /** What a motion leaves unexplained, and how many cables it brings to where other figures had the very same before. */
        int doubted(Motion motion) {
            int stood = Math.min(costOf(motion), size);
            for (int[] s : stretches) {
                int own = pairing.after(s[0]);
                int row = own < 0 ? -1 : motion.row(own);
                int i = row >= 0 && row < after.height() ? pairing.before(row) : -1;
                for (int k = s[1]; i >= 0 && k < s[2]; k++) {
                    int to = motion.position(k);
                    stood += before.at(i, to) == before.at(s[0], k) && labels.at(i, to) != label ? 1 : 0;
                }
            }
            return stood;
        }

        private boolean has(int row, int k) {
            return labels.at(row, k) == label;
        }

        private boolean isImage(Motion motion, int row, int k, char c) {
            Motion back = motion.inverse();
            int fromRow = back.row(row);
            int i = fromRow >= 0 && fromRow < after.height() ? pairing.before(fromRow) : -1;
            return i >= 0 && before.at(i, back.position(k)) == c && labels.at(i, back.position(k)) == label;
        }

        /** Whether all its cables come to lie where others of its own lay. */
        private boolean staysInside(Motion motion) {
            for (int[] s : stretches) {
                int row = pairing.after(s[0]);
                int to = row < 0 ? -1 : motion.row(row);
                int i = to >= 0 && to < after.height() ? pairing.before(to) : -1;
                for (int k = s[1]; k < s[2]; k++) {
                    if (i < 0 || labels.at(i, motion.position(k)) != label) {
                        return false;
                    }
                }
            }
            return true;
        }

        private boolean arrivedAlone(Motion motion) {
            int[] first = stretches.get(0);
            int row = pairing.after(first[0]);
            int arrived = row < 0 ? -1 : afterLabels.at(motion.row(row), motion.position(first[1]));
            return arrived >= 0 && afterLabels.cells(arrived) == size;
        }
    }

    /** Which colours came to lie where others were, and how many cables no colouring by colours explains. */
    private static final class Recolouring {
        private final Map<Character, Map<Character, Integer>> counts = new HashMap<>();
        private int all;

        void add(char was, char is) {
            all++;
            if (is != Row.EMPTY) {
                counts.computeIfAbsent(was, c -> new HashMap<>()).merge(is, 1, Integer::sum);
            }
        }

        int missed() {
            return all
                    - counts.values().stream()
                            .mapToInt(is -> Collections.max(is.values()))
                            .sum();
        }
    }

    private char beforeAt(int afterRow, int index) {
        int i = afterRow >= 0 && afterRow < after.height() ? pairing.before(afterRow) : -1;
        return i < 0 ? Row.EMPTY : before.at(i, index);
    }
}
