package platekeep.model.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.compare.Difference.About;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/** The change of the chart in words: moves first, then rows, then cables by regions. */
final class ChartWords {
    /** More regions than this are told as one. */
    private static final int MOST_REGIONS = 24;

    private final Comparison comparison;
    private final Plate before;
    private final Plate after;
    private final PlateEdit edit;
    private final Labels labels;
    private final Rotation rotation;
    private final List<Difference> out = new ArrayList<>();

    ChartWords(Comparison comparison) {
        this.comparison = comparison;
        before = comparison.before();
        after = comparison.after();
        edit = comparison.edit();
        labels = edit.figures().isEmpty() ? null : comparison.beforeCells().figures();
        rotation = Rotation.of(before, after, edit.pairing(), handles());
    }

    private int[] handles() {
        int[] handles = new int[after.rows().size()];
        for (int j = 0; j < handles.length; j++) {
            int i = edit.pairing().before(j);
            handles[j] = i < 0 ? before.rows().size() + j : i;
        }
        return handles;
    }

    List<Difference> differences() {
        if (edit.turnedOver()) {
            out.add(new Difference("picture mirrored top to bottom", About.MOTION, everything()));
        }
        moved();
        width();
        rowsPutInAndTakenOut();
        cables();
        return out;
    }

    private List<Place> everything() {
        List<Place> places = new ArrayList<>();
        after.pleats().ifPresent(p -> {
            for (int j = 0; j < after.rows().size(); j++) {
                places.add(new Place(Side.AFTER, j, p.from(), p.to() - 1));
            }
        });
        return places;
    }

    // ---- moves

    private void moved() {
        Motion picture = edit.picture();
        if (!picture.isNone() || !rotation.isNone()) {
            int[] box = box(-1);
            out.add(new Difference("picture " + motionWords(picture, rotation.up(), box), About.MOTION, everything()));
        }
        edit.figures().keySet().stream().sorted().forEach(figure -> {
            int[] box = box(figure);
            Motion motion = edit.figures().get(figure);
            String where = "figure at " + rows(before, box[0], box[1]) + ", " + pleats(box[2], box[3]) + " ";
            out.add(new Difference(where + motionWords(motion, 0, box), About.MOTION, placesOf(figure, motion)));
        });
    }

    private List<Place> placesOf(int figure, Motion motion) {
        int[] box = box(figure);
        Grid.Frame frame = comparison.beforeCells().frame();
        List<Place> places = new ArrayList<>();
        for (int i = box[0]; i <= box[1]; i++) {
            places.add(new Place(Side.BEFORE, i, frame.position(box[2]), frame.position(box[3])));
            int row = edit.pairing().after(i);
            int to = row < 0 ? -1 : motion.row(row);
            if (to >= 0 && to < after.rows().size()) {
                int a = motion.position(box[2]);
                int b = motion.position(box[3]);
                places.add(new Place(Side.AFTER, to, frame.position(Math.min(a, b)), frame.position(Math.max(a, b))));
            }
        }
        return places;
    }

    /** Top and bottom row, first and last index of a figure of the earlier plate, or of all of it (-1). */
    private int[] box(int figure) {
        Grid grid = comparison.beforeCells();
        int[] box = {Integer.MAX_VALUE, -1, Integer.MAX_VALUE, -1};
        for (int i = 0; i < grid.height(); i++) {
            for (int k = 0; k < grid.frame().width(); k++) {
                if (figure < 0 ? grid.at(i, k) != Row.EMPTY : labels.at(i, k) == figure) {
                    box[0] = Math.min(box[0], i);
                    box[1] = Math.max(box[1], i);
                    box[2] = Math.min(box[2], k);
                    box[3] = Math.max(box[3], k);
                }
            }
        }
        return box;
    }

    private String motionWords(Motion m, int up, int[] box) {
        List<String> parts = new ArrayList<>();
        int rowsUp = up;
        int right = m.positionShift();
        if (m.positionSign() < 0) {
            parts.add("mirrored left to right");
            right -= box[2] + box[3];
        }
        if (m.rowSign() < 0) {
            parts.add("mirrored top to bottom");
            int top = edit.pairing().after(box[0]);
            int bottom = edit.pairing().after(box[1]);
            rowsUp += top < 0 || bottom < 0 ? 0 : top + bottom - m.rowShift();
        } else {
            rowsUp -= m.rowShift();
        }
        List<String> moves = new ArrayList<>();
        if (rowsUp != 0) {
            moves.add(count(Math.abs(rowsUp), "row") + (rowsUp > 0 ? " up" : " down"));
        }
        if (right != 0) {
            moves.add(count(Math.abs(right), "pleat") + (right > 0 ? " right" : " left"));
        }
        if (!moves.isEmpty()) {
            parts.add("moved " + String.join(" and ", moves));
        }
        return String.join(" and ", parts);
    }

    private void width() {
        Optional<Pleats> was = before.pleats();
        Optional<Pleats> is = after.pleats();
        if (was.isEmpty() || is.isEmpty()) {
            if (!was.equals(is)) {
                String words = is.map(p -> "chart begun, pleats " + p.from() + " to " + p.to())
                        .orElse("chart taken out");
                out.add(new Difference(words, About.WIDTH, List.of()));
            }
            return;
        }
        end("left", was.get().from() - is.get().from());
        end("right", is.get().to() - was.get().to());
    }

    private void end(String where, int wider) {
        if (wider != 0) {
            String how = wider > 0 ? "widened" : "narrowed";
            String words = "chart " + how + " at the " + where + " by " + count(Math.abs(wider), "pleat");
            out.add(new Difference(words, About.WIDTH, List.of()));
        }
    }

    // ---- rows

    private void rowsPutInAndTakenOut() {
        List<Integer> added = new ArrayList<>();
        List<Integer> removed = new ArrayList<>();
        List<Integer> movedRows = new ArrayList<>();
        for (RowPair pair : comparison.rows()) {
            switch (pair.kind()) {
                case ADDED -> added.add(pair.after().orElseThrow());
                case REMOVED -> removed.add(pair.before().orElseThrow());
                case MOVED -> movedRows.add(pair.after().orElseThrow());
                default -> {
                    // same and edited rows stay where they are
                }
            }
        }
        if (!rotation.isNone()) {
            leaveOutRotation(added, removed, movedRows);
        }
        if (edit.turnedOver()) {
            movedRows.clear();
        }
        runs(added)
                .forEach(run -> out.add(new Difference(addedWords(run), About.ROWS_ADDED, wholeRows(Side.AFTER, run))));
        runs(removed)
                .forEach(run ->
                        out.add(new Difference(removedWords(run), About.ROWS_REMOVED, wholeRows(Side.BEFORE, run))));
        runs(movedRows)
                .forEach(run -> out.add(new Difference(movedWords(run), About.ROWS_MOVED, wholeRows(Side.AFTER, run))));
    }

    private void leaveOutRotation(List<Integer> added, List<Integer> removed, List<Integer> movedRows) {
        int n = after.rows().size();
        int k = Math.abs(rotation.up());
        int first = rotation.up() > 0 ? n - k : 0;
        added.removeIf(j -> j >= first && j < first + k);
        movedRows.removeIf(j -> j >= first && j < first + k);
        removed.removeAll(rotation.gone());
    }

    private static List<int[]> runs(List<Integer> rows) {
        List<int[]> runs = new ArrayList<>();
        for (int row : rows.stream().sorted().toList()) {
            if (!runs.isEmpty() && runs.get(runs.size() - 1)[1] == row - 1) {
                runs.get(runs.size() - 1)[1] = row;
            } else {
                runs.add(new int[] {row, row});
            }
        }
        return runs;
    }

    private String addedWords(int[] run) {
        String many = count(run[1] - run[0] + 1, "row") + " added ";
        int below = run[1] + 1;
        if (below < after.rows().size()) {
            return many + "above row " + after.numberFromBottom(below);
        }
        return run[0] == 0 ? many.strip() : many + "below row " + after.numberFromBottom(run[0] - 1);
    }

    private String removedWords(int[] run) {
        return rows(before, run[0], run[1]) + " removed";
    }

    private String movedWords(int[] run) {
        int was = edit.pairing().before(run[1]);
        int wasTop = edit.pairing().before(run[0]);
        String who = was - wasTop == run[1] - run[0] ? rows(before, wasTop, was) : count(run[1] - run[0] + 1, "row");
        return who + " moved to " + rows(after, run[0], run[1]);
    }

    private List<Place> wholeRows(Side side, int[] run) {
        Plate plate = side == Side.BEFORE ? before : after;
        List<Place> places = new ArrayList<>();
        for (int r = run[0]; r <= run[1]; r++) {
            places.add(new Place(side, r, plate.from(), plate.from() + plate.positions() - 1));
        }
        return places;
    }

    // ---- cables

    /** Neighbouring cables of one row that changed in the same way. */
    private record Run(int row, int from, int to, char was, char is) {
        boolean touches(Run other) {
            return Math.abs(row - other.row) == 1 && from <= other.to && other.from <= to
                    || row == other.row && (from == other.to + 1 || other.from == to + 1);
        }

        int length() {
            return to - from + 1;
        }
    }

    private void cables() {
        List<Run> changed = changedRuns();
        if (changed.isEmpty()) {
            return;
        }
        List<List<Run>> regions = regions(changed);
        if (regions.size() > MOST_REGIONS) {
            regions = List.of(changed);
        }
        List<Difference> told = new ArrayList<>();
        for (List<Run> region : regions) {
            told.addAll(tell(region));
        }
        told.sort(Comparator.comparingInt((Difference d) -> d.words().length()));
        out.addAll(told);
    }

    /** What is left when moves, renamed keys and rows put in or out are accounted for. */
    private List<Run> changedRuns() {
        List<Run> runs = new ArrayList<>();
        Grid expected = new ExpectedCells(comparison, labels).grid();
        for (int j = 0; j < after.rows().size(); j++) {
            if (edit.pairing().before(j) < 0 && !wasMovedHere(expected, j)) {
                continue;
            }
            char[] was = expected.row(j);
            char[] is = comparison.afterCells().row(j);
            int k = was == is ? was.length : 0;
            while (k < was.length) {
                int end = k + 1;
                if (was[k] != is[k]) {
                    while (end < was.length && was[end] == was[k] && is[end] == is[k]) {
                        end++;
                    }
                    runs.add(new Run(j, k, end - 1, was[k], is[k]));
                }
                k = end;
            }
        }
        return runs;
    }

    private boolean wasMovedHere(Grid expected, int row) {
        return !Grid.isBlank(expected.row(row));
    }

    private static List<List<Run>> regions(List<Run> runs) {
        int[] group = new int[runs.size()];
        int top = 0;
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
            while (runs.get(top).row() < runs.get(i).row() - 1) {
                top++;
            }
            for (int k = top; k < i; k++) {
                if (runs.get(k).touches(runs.get(i))) {
                    group[root(group, i)] = root(group, k);
                }
            }
        }
        Map<Integer, List<Run>> regions = new LinkedHashMap<>();
        for (int i = 0; i < group.length; i++) {
            regions.computeIfAbsent(root(group, i), g -> new ArrayList<>()).add(runs.get(i));
        }
        return List.copyOf(regions.values());
    }

    private static int root(int[] group, int i) {
        int r = i;
        while (group[r] != r) {
            group[r] = group[group[r]];
            r = group[r];
        }
        return r;
    }

    private List<Difference> tell(List<Run> region) {
        int rows = (int) region.stream().mapToInt(Run::row).distinct().count();
        if (rows == 1 && region.size() <= 4) {
            return region.stream()
                    .map(r -> new Difference(
                            "row " + after.numberFromBottom(r.row()) + ": " + pleats(r.from(), r.to()) + " "
                                    + how(r.was(), r.is()),
                            About.CABLES,
                            places(List.of(r))))
                    .toList();
        }
        int top = region.stream().mapToInt(Run::row).min().orElse(0);
        int bottom = region.stream().mapToInt(Run::row).max().orElse(0);
        int from = region.stream().mapToInt(Run::from).min().orElse(0);
        int to = region.stream().mapToInt(Run::to).max().orElse(0);
        int cables = region.stream().mapToInt(Run::length).sum();
        Map<String, Integer> hows = new LinkedHashMap<>();
        region.forEach(r -> hows.merge(how(r.was(), r.is()), r.length(), Integer::sum));
        String what = hows.size() <= 2 ? String.join("; ", hows.keySet()) : "redrawn";
        return List.of(new Difference(
                rows(after, top, bottom) + ", " + pleats(from, to) + ": " + what + " (" + count(cables, "cable") + ")",
                About.CABLES,
                places(region)));
    }

    private List<Place> places(List<Run> runs) {
        Grid.Frame frame = comparison.afterCells().frame();
        return runs.stream()
                .map(r -> new Place(Side.AFTER, r.row(), frame.position(r.from()), frame.position(r.to())))
                .toList();
    }

    private String how(char was, char is) {
        if (is == Row.EMPTY) {
            return name(was) + " taken out";
        }
        return was == Row.EMPTY ? name(is) + " put in" : name(is) + " instead of " + name(was);
    }

    private String name(char letter) {
        return after.palette()
                .get(letter)
                .or(() -> before.palette().get(letter))
                .map(Colour::name)
                .orElse("colour " + letter);
    }

    // ---- words

    private static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    private static String rows(Plate plate, int top, int bottom) {
        return top == bottom
                ? "row " + plate.numberFromBottom(top)
                : "rows " + plate.numberFromBottom(bottom) + " to " + plate.numberFromBottom(top);
    }

    /** Positions by index as the pleats that a stitcher counts. */
    private String pleats(int from, int to) {
        Grid.Frame frame = comparison.afterCells().frame();
        return "pleats " + frame.position(from) + " to " + (frame.position(to) + 1);
    }
}
