package platekeep.model.join;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import platekeep.model.compare.Grid;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Start;
import platekeep.model.plate.Value;
import platekeep.model.stitch.Labels;
import platekeep.model.stitch.RowIds;

/**
 * Joins the starts. Two versions' starts are one if row and pleat agree, else if each is alone in the same figure of the
 * earlier plate. Row, pleat, kind and gathering row are one value.
 */
final class StartJoin {
    private final Plate base;
    private final Side[] sides;
    private final Grid grid;
    private final Labels labels;
    private final Placing placing;
    private final StrayStarts stray;
    private final ClashList clashes;
    private final boolean turnedOver;
    private final Labels[] sideLabels = new Labels[2];

    /** @param turnedOver whether the whole chart is turned upside down at the end, so that values show the other kind */
    StartJoin(
            Plate base,
            Side[] sides,
            Grid grid,
            Labels labels,
            Placing placing,
            StrayStarts stray,
            ClashList clashes,
            boolean turnedOver) {
        this.stray = stray;
        this.turnedOver = turnedOver;
        this.base = base;
        this.sides = sides;
        this.grid = grid;
        this.labels = labels;
        this.placing = placing;
        this.clashes = clashes;
    }

    /** A start as its own plate has it, with where it lies when nothing is moved, and its kind there. */
    private record Placed(Start own, Placing.Spot spot, Start start, int figure) {
        String key() {
            return spot.handle() + "|" + spot.named() + "|" + spot.layer() + "|" + spot.place();
        }
    }

    List<Start> join() {
        List<Placed> b = before();
        List<Placed> m = placed(0, sides[0].plate());
        List<Placed> t = placed(1, sides[1].plate());
        Map<String, String> names = new HashMap<>();
        match(b, m, names);
        match(b, t, names);
        match(m, t, names);
        Map<String, Placed> before = byName(b, names);
        Map<String, Placed> mine = byName(m, names);
        Map<String, Placed> theirs = byName(t, names);
        Set<String> keys = new LinkedHashSet<>(before.keySet());
        keys.addAll(mine.keySet());
        keys.addAll(theirs.keySet());
        List<Start> out = new ArrayList<>();
        List<Start> strayed = new ArrayList<>();
        for (String key : keys) {
            Optional<Placed> m0 = Optional.ofNullable(mine.get(key));
            Optional<Placed> t0 = Optional.ofNullable(theirs.get(key));
            Optional<Start> joined = joinOne(Optional.ofNullable(before.get(key)), m0, t0);
            if (joined.isPresent() && isStray(joined.get(), m0, t0)) {
                int s = m0.map(this::result).equals(joined) ? 0 : 1;
                stray.moved(s, (s == 0 ? m0 : t0).orElseThrow().own()).ifPresent(strayed::add);
            } else {
                joined.ifPresent(out::add);
            }
        }
        strayed.stream()
                .filter(start -> out.stream().noneMatch(there -> isAtPlaceOf(there, start)))
                .forEach(out::add);
        return out;
    }

    private static boolean isAtPlaceOf(Start one, Start other) {
        return one.row().equals(other.row()) && one.pleat() == other.pleat();
    }

    /** Whether a start lost its cable only because two edits came together. */
    private boolean isStray(Start joined, Optional<Placed> mine, Optional<Placed> theirs) {
        Optional<Placed> from = mine.filter(m -> result(m).equals(joined))
                .or(() -> theirs.filter(t -> result(t).equals(joined)));
        return from.isPresent()
                && from.get().spot().handle() >= 0
                && !stray.hasCable(from.get().spot())
                && mine.map(m -> stray.standsOn(0, m.own())).orElse(true)
                && theirs.map(t -> stray.standsOn(1, t.own())).orElse(true);
    }

    /**
     * The earlier plate's starts. Where it has none and both sides do, the one that it counts as having: whoever first
     * saved the plate wrote it down.
     */
    private List<Placed> before() {
        boolean writtenDown = base.starts().isEmpty()
                && Stream.of(sides).noneMatch(side -> side.plate().starts().isEmpty());
        if (!writtenDown) {
            return placed(-1, base);
        }
        Plate given = RowIds.given(base);
        return given.starts().stream()
                .map(start -> {
                    int row = given.indexOf(start.row());
                    return new Placed(
                            start,
                            placing.positionAt(-1, row, start.pleat()),
                            start,
                            labels.at(row, grid.frame().index(start.pleat())));
                })
                .filter(placed -> placing.hasName(placed.spot()))
                .toList();
    }

    private List<Placed> placed(int s, Plate plate) {
        List<Placed> out = new ArrayList<>();
        for (Start start : plate.starts()) {
            Placing.Spot spot = placing.position(s, start.row(), start.pleat());
            Start kind = placing.turned(spot, s)
                    ? start.at(start.row(), start.pleat(), start.cable().turned())
                    : start;
            out.add(new Placed(start, spot, kind, figure(s, start, spot)));
        }
        return out;
    }

    /** The figure of the earlier plate that a start stands on, or that its own figure grew from; -1 for none. */
    private int figure(int s, Start start, Placing.Spot spot) {
        int k = grid.frame().index((int) spot.place());
        if (spot.handle() >= 0 && spot.handle() < grid.height() && labels.at(spot.handle(), k) >= 0) {
            return labels.at(spot.handle(), k);
        }
        return s < 0 ? -1 : figureGrownFrom(s, start);
    }

    private int figureGrownFrom(int s, Start start) {
        Grid own = sides[s].grid();
        if (sideLabels[s] == null) {
            sideLabels[s] = own.figures();
        }
        int row = sides[s].plate().indexOf(start.row());
        int label = row < 0 ? -1 : sideLabels[s].at(row, own.frame().index(start.pleat()));
        for (int j = 0; label >= 0 && j < own.height(); j++) {
            int i = sides[s].edit().pairing().before(j);
            for (int k = 0; i >= 0 && k < own.frame().width(); k++) {
                if (sideLabels[s].at(j, k) == label && labels.at(i, k) >= 0) {
                    return labels.at(i, k);
                }
            }
        }
        return -1;
    }

    /** Gives the starts of the second list the names of those of the first that they are one with. */
    private static void match(List<Placed> first, List<Placed> second, Map<String, String> names) {
        Set<String> keys = new HashSet<>();
        first.forEach(p -> keys.add(p.key()));
        Set<String> met = new HashSet<>();
        second.stream().map(Placed::key).filter(keys::contains).forEach(met::add);
        for (Placed p : second) {
            if (!met.contains(p.key()) && !names.containsKey(p.key()) && p.figure() >= 0) {
                List<Placed> there =
                        first.stream().filter(q -> q.figure() == p.figure()).toList();
                long own = second.stream().filter(q -> q.figure() == p.figure()).count();
                if (there.size() == 1 && own == 1 && !met.contains(there.get(0).key())) {
                    names.put(
                            p.key(),
                            names.getOrDefault(there.get(0).key(), there.get(0).key()));
                }
            }
        }
    }

    private static Map<String, Placed> byName(List<Placed> list, Map<String, String> names) {
        Map<String, Placed> out = new LinkedHashMap<>();
        list.forEach(p -> out.putIfAbsent(names.getOrDefault(p.key(), p.key()), p));
        return out;
    }

    private Optional<Start> joinOne(Optional<Placed> before, Optional<Placed> mine, Optional<Placed> theirs) {
        Optional<Start> b = before.map(this::result);
        Optional<Start> m = mine.map(this::result);
        Optional<Start> t = theirs.map(this::result);
        if (m.equals(t) || t.equals(b)) {
            return m;
        }
        if (m.equals(b)) {
            return t;
        }
        Placed at = before.or(() -> lower(mine, theirs)).orElseThrow();
        Start named = result(at);
        clashes.add(
                Clash.What.START,
                new Value.Builder()
                        .put("row", named.row().text())
                        .put("pleat", named.pleat())
                        .build(),
                value(b),
                value(m),
                value(t),
                placing.resultRow(at.spot()).orElse(ClashList.NO_ROW));
        return m.isEmpty() ? t : t.isEmpty() ? m : b;
    }

    /** Of two new starts the one that comes first from the bottom, then from the left: it names their clash. */
    private Optional<Placed> lower(Optional<Placed> mine, Optional<Placed> theirs) {
        Comparator<Placed> fromBottom = Comparator.comparing(
                        (Placed p) -> -placing.resultRow(p.spot()).orElse(ClashList.NO_ROW))
                .thenComparing(p -> placing.position(p.spot()))
                .thenComparing(p -> result(p).value().text());
        return Stream.of(mine, theirs).flatMap(Optional::stream).min(fromBottom);
    }

    private Start result(Placed placed) {
        return placed.start()
                .at(
                        placing.row(placed.spot()),
                        placing.position(placed.spot()),
                        placed.start().cable());
    }

    private Value value(Optional<Start> start) {
        return start.map(s -> turnedOver ? Side.turned(List.of(s)).get(0) : s)
                .map(s -> (Value) s.value())
                .orElse(Value.NOTHING);
    }
}
