package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** Rows in and out, and the cables in them. */
final class RowsTogether {
    private final Together both;
    private final Grid before;
    private final List<RowId> order;
    private final Set<RowId> inDoubt = new java.util.HashSet<>();

    RowsTogether(Together both) {
        this.both = both;
        this.before = Grid.of(both.base);
        this.order = before.order();
    }

    void join() {
        order.forEach(this::row);
        movedRows();
        both.joined.settled.addAll(both.mine.settled);
        both.joined.settled.addAll(both.theirs.settled);
        Set<Integer> gaps = new TreeSet<>(both.mine.added.keySet());
        gaps.addAll(both.theirs.added.keySet());
        gaps.forEach(this::gap);
        checkPlaces();
    }

    private void row(RowId row) {
        boolean m = both.mine.gone.contains(row);
        boolean t = both.theirs.gone.contains(row);
        if (m && t) {
            both.joined.gone.add(row);
        } else if (m) {
            goneOrEdited(row, both.theirs);
        } else if (t) {
            goneOrEdited(row, both.mine);
        } else {
            cables(row);
        }
    }

    private void goneOrEdited(RowId row, Change editor) {
        if (editor.moved.containsKey(row)) {
            throw new Undetermined("taken out here, moved there");
        }
        if (!editor.paint.containsKey(row)) {
            both.joined.gone.add(row);
            return;
        }
        if (hasThings(row) || !editor.figures.isEmpty() || cutsOff(row)) {
            throw new Undetermined("what becomes of the things on a row in doubt");
        }
        inDoubt.add(row);
        both.joined.paint.put(row, new TreeMap<>(editor.paint.get(row)));
        TreeMap<Integer, Character> was = new TreeMap<>(before.row(row));
        both.clashes.add(f -> {
            return Together.clash(
                    Clash.What.ROW,
                    OpenClashes.place("row", row.text()),
                    Value.of(f.rowText(row, was)),
                    Value.NOTHING,
                    Value.of(f.rowText(row, f.ground.row(row))));
        });
    }

    private boolean hasThings(RowId row) {
        return both.base.starts().stream().anyMatch(s -> s.row().equals(row))
                || both.base.marks().stream().anyMatch(x -> x.row().equals(row))
                || both.base.remarks().stream().anyMatch(r -> r.row().equals(Optional.of(row)))
                || both.base.clashes().stream().anyMatch(c -> c.textAt("row").equals(Optional.of(row.text())));
    }

    private boolean cutsOff(RowId row) {
        int from = both.joined.from.orElse(Integer.MIN_VALUE);
        int to = both.joined.to.orElse(Integer.MAX_VALUE);
        return before.row(row).keySet().stream().anyMatch(p -> p < from || p >= to);
    }

    private void cables(RowId row) {
        TreeMap<Integer, Character> m = both.mine.paint.getOrDefault(row, new TreeMap<>());
        TreeMap<Integer, Character> t = both.theirs.paint.getOrDefault(row, new TreeMap<>());
        TreeSet<Integer> differ = new TreeSet<>();
        TreeMap<Integer, Character> out = new TreeMap<>(m);
        t.forEach((p, ink) -> {
            if (m.containsKey(p) && !m.get(p).equals(ink)) {
                differ.add(p);
                out.remove(p);
            } else {
                out.put(p, ink);
            }
        });
        if (!out.isEmpty()) {
            both.joined.paint.put(row, out);
        }
        runs(differ).forEach(run -> {
            String base = Grid.text(before.row(row), run[0], run[1] + 1);
            Clash plain = Together.clash(
                    Clash.What.CABLES,
                    OpenClashes.place("row", row.text(), "from", run[0], "to", run[1]),
                    Value.of(base),
                    Value.of(Grid.text(m, run[0], run[1] + 1)),
                    Value.of(Grid.text(t, run[0], run[1] + 1)));
            overlap(row, run);
            both.clashes.add(f -> inChart(OpenClashes.cables(plain, f), f));
        });
    }

    private static Clash inChart(Clash clash, Finished f) {
        if (clash.numberAt("from").orElseThrow() < f.pleats.from()
                || clash.numberAt("to").orElseThrow() >= f.pleats.to()) {
            throw new Undetermined("a clash where the chart was cut off");
        }
        return clash;
    }

    private void overlap(RowId row, int[] run) {
        boolean open = both.base.clashes().stream()
                .filter(c -> c.textAt("row").equals(Optional.of(row.text())))
                .anyMatch(c -> c.what() != Clash.What.CABLES
                        || c.numberAt("from").orElseThrow() <= run[1] + 1
                                && c.numberAt("to").orElseThrow() >= run[0] - 1);
        if (open) {
            throw new Undetermined("clashing again beside an open clash");
        }
    }

    static List<int[]> runs(TreeSet<Integer> positions) {
        List<int[]> runs = new ArrayList<>();
        for (int p : positions) {
            if (!runs.isEmpty() && runs.get(runs.size() - 1)[1] == p - 1) {
                runs.get(runs.size() - 1)[1] = p;
            } else {
                runs.add(new int[] {p, p});
            }
        }
        return runs;
    }

    private void movedRows() {
        Map<RowId, Optional<Integer>> m = new HashMap<>();
        Map<RowId, Optional<Integer>> t = new HashMap<>();
        Map<RowId, Optional<Integer>> joined = new HashMap<>();
        both.mine.moved.forEach((r, gap) -> m.put(r, Optional.of(gap)));
        both.theirs.moved.forEach((r, gap) -> t.put(r, Optional.of(gap)));
        Together.each(m, t, joined, (row, a, b) -> {
            int at = before.indexOf(row);
            if (Math.abs(at - a.get()) < 3 || Math.abs(at - b.get()) < 3) {
                throw new Undetermined("which row moved");
            }
            both.clashes.add(f -> Together.clash(
                    Clash.What.ORDER, OpenClashes.place("row", row.text()), above(at), above(a.get()), above(b.get())));
            return Optional.empty();
        });
        if (m.size() + t.size() > 0 && joined.size() > 1) {
            throw new Undetermined("two rows moved");
        }
        joined.forEach((r, gap) -> both.joined.moved.put(r, gap.orElseThrow()));
    }

    private Value above(int gap) {
        return gap == 0 ? Value.NOTHING : Value.of(order.get(gap - 1).text());
    }

    private void gap(int gap) {
        List<NewRow> m = both.mine.added.getOrDefault(gap, List.of());
        List<NewRow> t = both.theirs.added.getOrDefault(gap, List.of());
        if (m.isEmpty() || t.isEmpty() || m.equals(t)) {
            both.joined.added.put(gap, m.isEmpty() ? t : m);
            return;
        }
        List<NewRow> first = m.get(0).id().compareTo(t.get(0).id()) < 0 ? m : t;
        if (m.stream()
                .map(NewRow::cells)
                .toList()
                .equals(t.stream().map(NewRow::cells).toList())) {
            both.joined.added.put(
                    gap,
                    IntStream.range(0, m.size())
                            .mapToObj(i -> m.get(i).id().compareTo(t.get(i).id()) < 0 ? m.get(i) : t.get(i))
                            .toList());
            return;
        }
        boolean shared = m.stream()
                .anyMatch(a -> t.stream()
                        .anyMatch(b -> a.id().equals(b.id()) || a.cells().equals(b.cells())));
        if (shared) {
            throw new Undetermined("some of the rows put in are the same");
        }
        List<NewRow> rows = new ArrayList<>(first);
        rows.addAll(first == m ? t : m);
        both.joined.added.put(gap, rows);
        both.clashes.add(f -> rowsClash(m, t, rows.get(0).id(), f));
    }

    private Clash rowsClash(List<NewRow> m, List<NewRow> t, RowId top, Finished f) {
        int at = f.grid.indexOf(top);
        if (f.change.motion.upsideDown()) {
            throw new Undetermined("rows in doubt, upside down");
        }
        return Together.clash(
                Clash.What.ROWS,
                OpenClashes.place(
                        "after",
                        at == 0
                                ? Value.NOTHING
                                : Value.of(f.grid.order().get(at - 1).text())),
                Value.NOTHING,
                texts(m, f),
                texts(t, f));
    }

    private static Value texts(List<NewRow> rows, Finished f) {
        return Value.ofTexts(rows.stream()
                .map(r -> new Row(Optional.of(r.id()), f.rowText(r.id(), r.cells())).text())
                .toList());
    }

    /** Whether rows that came, went or moved side by side leave it open what stands where. */
    private void checkPlaces() {
        for (int gap = 0; gap <= order.size(); gap = lastOf(gap) + 1) {
            List<Integer> gaps = new ArrayList<>();
            for (int g = gap; g <= lastOf(gap); g++) {
                gaps.add(g);
            }
            boolean m = gaps.stream().anyMatch(g -> arrives(both.mine, g));
            boolean t = gaps.stream().anyMatch(g -> arrives(both.theirs, g));
            boolean same = gaps.stream()
                    .allMatch(g -> Optional.ofNullable(both.mine.added.get(g))
                            .equals(Optional.ofNullable(both.theirs.added.get(g))));
            if (m && t && gaps.size() > 1 && !same) {
                throw new Undetermined("rows put in on both sides beside rows taken out");
            }
            boolean doubt = gaps.subList(0, gaps.size() - 1).stream().anyMatch(g -> inDoubt.contains(order.get(g)));
            if (doubt && gaps.stream().anyMatch(g -> arrives(both.mine, g) || arrives(both.theirs, g))) {
                throw new Undetermined("rows put in beside a row in doubt");
            }
        }
        if (Collections.disjoint(both.mine.moved.values(), both.theirs.added.keySet())
                && Collections.disjoint(both.theirs.moved.values(), both.mine.added.keySet())) {
            return;
        }
        throw new Undetermined("a row moved to where rows were put in");
    }

    /** The last of the gaps that fall together when the rows between them that went are not counted. */
    private int lastOf(int gap) {
        int g = gap;
        while (g < order.size() && (left(both.mine, g) || left(both.theirs, g))) {
            g++;
        }
        return g;
    }

    private boolean left(Change side, int i) {
        return side.gone.contains(order.get(i)) || side.moved.containsKey(order.get(i));
    }

    private static boolean arrives(Change side, int gap) {
        return side.added.containsKey(gap) || side.moved.containsValue(gap);
    }
}
