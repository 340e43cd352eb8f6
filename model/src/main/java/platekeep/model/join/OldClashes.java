package platekeep.model.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import platekeep.model.compare.Grid;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/**
 * Clashes that were open before the join. One that a side settled is settled; one that is still open stays; one that is
 * met again in the same place becomes one clash with it, with the earliest base and all distinct sides.
 */
final class OldClashes {
    private final Plate base;
    private final Side[] sides;
    private final Colours colours;
    private final CellJoin cells;
    private final Placing placing;
    private final RowJoin rows;
    private final List<Optional<RowId>> ids;
    private final Grid grid;
    private final Optional<Pleats> pleats;
    private final ClashList clashes;
    /** The earlier plate's clashes by what they are in the joined one. */
    private final Map<Clash, Clash> asItWas = new HashMap<>();
    /** Clashes, but for those of rows, that were settled in two ways: as they are in the joined plate, and as they were in the earlier one. */
    private final Map<Clash, Clash> thingsSettledTwice = new LinkedHashMap<>();

    OldClashes(
            Plate base,
            Side[] sides,
            Colours colours,
            CellJoin cells,
            Placing placing,
            RowJoin rows,
            List<Optional<RowId>> ids,
            Grid grid,
            Optional<Pleats> pleats,
            ClashList clashes) {
        this.base = base;
        this.sides = sides;
        this.colours = colours;
        this.cells = cells;
        this.placing = placing;
        this.rows = rows;
        this.ids = ids;
        this.grid = grid;
        this.pleats = pleats;
        this.clashes = clashes;
    }

    private Plate plate(int s) {
        return s < 0 ? base : sides[s].plate();
    }

    /** Settles what was open, and declares what both sides changed in cables. */
    void join() {
        joinCables();
        joinOthers();
    }

    // ---- cables

    /**
     * A stretch of a row of the joined plate that clashes or clashed.
     *
     * @param from index of the frame, included
     * @param to index of the frame, excluded
     * @param owner -1 a clash of the earlier plate, 0 and 1 of a side, 2 a new one
     */
    private record Stretch(int from, int to, int owner, Optional<Clash> clash) {}

    private void joinCables() {
        TreeMap<Integer, List<Stretch>> byRow = new TreeMap<>();
        cells.torn().forEach((row, torn) -> newStretches(torn, byRow.computeIfAbsent(row, r -> new ArrayList<>())));
        for (int s = -1; s < 2; s++) {
            for (Clash clash : plate(s).clashes()) {
                if (clash.what() == Clash.What.CABLES) {
                    oldStretch(s, clash, byRow);
                }
            }
        }
        byRow.forEach(this::joinRow);
    }

    private static void newStretches(TreeMap<Integer, CellJoin.TornCell> torn, List<Stretch> out) {
        int from = -1;
        int last = -2;
        for (int k : torn.keySet()) {
            if (k != last + 1) {
                if (from >= 0) {
                    out.add(new Stretch(from, last + 1, 2, Optional.empty()));
                }
                from = k;
            }
            last = k;
        }
        if (from >= 0) {
            out.add(new Stretch(from, last + 1, 2, Optional.empty()));
        }
    }

    private void oldStretch(int s, Clash clash, TreeMap<Integer, List<Stretch>> byRow) {
        Optional<Placing.Spot> spot = row(s, clash, clash.numberAt("from").orElse(0));
        Optional<Integer> row = spot.flatMap(placing::resultRow);
        if (row.isEmpty()) {
            return;
        }
        int from = grid.frame().index(placing.position(spot.get()));
        int length = clash.numberAt("to").orElse(0) - clash.numberAt("from").orElse(0) + 1;
        Clash now = clash;
        if (isMirrored(s, clash, spot.get())) {
            from -= length - 1;
            now = turned(clash);
        }
        byRow.computeIfAbsent(row.get(), r -> new ArrayList<>())
                .add(new Stretch(from, from + length, s, Optional.of(relettered(s, now))));
    }

    private boolean isMirrored(int s, Clash clash, Placing.Spot from) {
        int a = clash.numberAt("from").orElse(0);
        int b = clash.numberAt("to").orElse(0);
        Optional<Placing.Spot> to = row(s, clash, b);
        return b > a && to.isPresent() && placing.position(to.get()) < placing.position(from);
    }

    private static Clash turned(Clash clash) {
        return mapped(clash, text -> new StringBuilder(text).reverse().toString());
    }

    private static Clash mapped(Clash clash, UnaryOperator<String> change) {
        return clash.withValues(value -> onText(value, change));
    }

    private static Value onText(Value value, UnaryOperator<String> change) {
        if (value instanceof Value.Items list) {
            return new Value.Items(
                    list.items().stream().map(item -> onText(item, change)).toList());
        }
        return value instanceof Value.Text t ? Value.of(change.apply(t.string())) : value;
    }

    private Optional<Placing.Spot> row(int s, Clash clash, int position) {
        Optional<RowId> id = clash.textAt("row").filter(RowId::isRowId).map(RowId::new);
        if (id.isPresent()) {
            return Optional.of(placing.position(s, id.get(), position)).filter(spot -> spot.handle() >= 0);
        }
        return clash.numberAt("row").map(n -> {
            int handle = NumberedRows.handle(n, s, rows);
            int own = s < 0 || handle < 0 ? handle : rows.row(s, handle);
            return own < 0
                    ? new Placing.Spot(Optional.empty(), handle, 0, position)
                    : placing.positionAt(s, own, position);
        });
    }

    private Clash relettered(int s, Clash clash) {
        return mapped(clash, text -> lettered(s, text));
    }

    private String lettered(int s, String cellText) {
        StringBuilder out = new StringBuilder();
        for (char c : cellText.toCharArray()) {
            char id = c == Row.EMPTY || c >= 128 ? c : s < 0 ? c : colours.identity(s, c);
            out.append(id == Row.EMPTY ? id : letterOf(id, c));
        }
        return out.toString();
    }

    private char letterOf(char identity, char old) {
        char letter = colours.letter(identity);
        return letter == Row.EMPTY ? old : letter;
    }

    private void joinRow(int row, List<Stretch> stretches) {
        stretches.sort(Comparator.comparingInt(Stretch::from)
                .thenComparingInt(Stretch::to)
                .thenComparingInt(Stretch::owner));
        List<Stretch> group = new ArrayList<>();
        int end = -1;
        for (Stretch stretch : stretches) {
            if (!group.isEmpty() && stretch.from() >= end) {
                joinGroup(row, group);
                group = new ArrayList<>();
                end = -1;
            }
            group.add(stretch);
            end = Math.max(end, stretch.to());
        }
        if (!group.isEmpty()) {
            joinGroup(row, group);
        }
    }

    private static Stream<Stretch> of(List<Stretch> group, int owner) {
        return group.stream().filter(s -> s.owner() == owner);
    }

    private void joinGroup(int row, List<Stretch> group) {
        boolean before = of(group, -1).findAny().isPresent();
        boolean mine = of(group, 0).findAny().isPresent();
        boolean theirs = of(group, 1).findAny().isPresent();
        boolean torn = of(group, 2).findAny().isPresent();
        if (!torn && before && !(mine && theirs)) {
            if (!mine && !theirs) {
                joinDecisions(row, group);
            }
            return;
        }
        boolean metAgain = !before && mine != theirs && !torn && paintedIn(mine ? 1 : 0, row, group);
        List<Stretch> open =
                group.stream().filter(s -> s.owner() == 0 || s.owner() == 1).toList();
        int from = group.stream().mapToInt(Stretch::from).min().orElse(0);
        int to = group.stream().mapToInt(Stretch::to).max().orElse(0);
        List<Clash.Side> answers = new ArrayList<>();
        open.forEach(s -> s.clash().get().sides().forEach(side -> answers.add(widened(row, s, from, to, side))));
        if (torn || metAgain) {
            List<Clash.Side> both = clashes.sides(asSide(0, row, from, to), asSide(1, row, from, to));
            if (torn) {
                answers.addAll(both);
            } else {
                answers.add(both.get(mine ? 1 : 0));
            }
            stand(row, from, to);
        }
        Value earliest = earliestBase(row, group, from, to);
        declare(row, from, to, earliest, distinct(answers));
    }

    /** Settled by both: where they did so in two ways it is open again, and what stood before stands. */
    private void joinDecisions(int row, List<Stretch> group) {
        int first = group.stream().mapToInt(Stretch::from).min().orElse(0);
        int last = group.stream().mapToInt(Stretch::to).max().orElse(0);
        int from = Math.max(start(), first);
        int to = Math.min(end(), last);
        if (from >= to) {
            return;
        }
        int handle = rows.order().get(row);
        Value mine = asSide(0, row, from, to);
        Value theirs = asSide(1, row, from, to);
        if (rows.row(0, handle) >= 0 && rows.row(1, handle) >= 0 && !mine.equals(theirs)) {
            stand(row, from, to);
            String earliest = ((Value.Text) earliestBase(row, group, first, last)).string();
            Value before = Value.of(earliest.substring(from - first, to - first));
            declare(row, from, to, before, clashes.sides(mine, theirs));
        }
    }

    /** Each answer once; answers alike but for the hand are one where a hand is unknown. */
    private static List<Clash.Side> distinct(List<Clash.Side> answers) {
        Map<String, Clash.Side> out = new LinkedHashMap<>();
        answers.forEach(a -> out.putIfAbsent(a.value().text() + "|" + a.by().orElse(""), a));
        out.values()
                .removeIf(a -> a.by().isEmpty()
                        && out.values().stream()
                                .anyMatch(o -> o != a && o.value().equals(a.value())));
        return List.copyOf(out.values());
    }

    private boolean paintedIn(int s, int row, List<Stretch> group) {
        return group.stream().anyMatch(g -> {
            for (int k = g.from(); k < g.to(); k++) {
                if (asIdentities(s, row)[k] != asIdentities(-1, row)[k]) {
                    return true;
                }
            }
            return false;
        });
    }

    private char[] asIdentities(int s, int row) {
        return cells.rowAs(s, rows.order().get(row));
    }

    private Value asSide(int s, int row, int from, int to) {
        char[] own = asIdentities(s, row);
        TreeMap<Integer, CellJoin.TornCell> torn = cells.torn().getOrDefault(row, new TreeMap<>());
        char[] out = own.clone();
        torn.forEach((k, cell) -> out[k] = cell.of(s));
        return Value.of(colours.letters(out, from, to));
    }

    private Clash.Side widened(int row, Stretch s, int from, int to, Clash.Side side) {
        return new Clash.Side(inside(row, s, from, to, side.value()), side.by(), side.unknown());
    }

    private Value inside(int row, Stretch s, int from, int to, Value value) {
        if (!(value instanceof Value.Text t) || t.string().length() != s.to() - s.from()) {
            return value;
        }
        String around = colours.letters(asIdentities(-1, row), from, to);
        return Value.of(around.substring(0, s.from() - from) + t.string() + around.substring(s.to() - from));
    }

    private Value earliestBase(int row, List<Stretch> group, int from, int to) {
        char[] standing = colours.letters(standingRow(row), from, to).toCharArray();
        for (int owner : new int[] {1, 0, -1}) {
            of(group, owner).forEach(s -> {
                if (s.clash().get().base() instanceof Value.Text t && t.string().length() == s.to() - s.from()) {
                    t.string().getChars(0, t.string().length(), standing, s.from() - from);
                }
            });
        }
        return Value.of(new String(standing));
    }

    private char[] standingRow(int row) {
        char[] out = asIdentities(-1, row);
        TreeMap<Integer, CellJoin.TornCell> torn = cells.torn().getOrDefault(row, new TreeMap<>());
        torn.forEach((k, cell) -> out[k] = cell.base());
        return out;
    }

    /** What stood before stands. */
    private void stand(int row, int from, int to) {
        System.arraycopy(standingRow(row), from, cells.picture()[row], from, to - from);
    }

    private void declare(int row, int from, int to, Value before, List<Clash.Side> answers) {
        Value.Entries place = new Value.Builder()
                .put("row", JoinedIds.name(ids, row))
                .put("from", grid.frame().position(from))
                .put("to", grid.frame().position(to - 1))
                .build();
        clashes.add(new Clash(Clash.What.CABLES, place, before, answers), row);
    }

    // ---- all others

    private void joinOthers() {
        Map<String, Clash> before = others(-1);
        Map<String, Clash> mine = others(0);
        Map<String, Clash> theirs = others(1);
        Map<String, Clash> keys = new LinkedHashMap<>(before);
        mine.forEach(keys::putIfAbsent);
        theirs.forEach(keys::putIfAbsent);
        keys.forEach((key, any) -> joinOther(any, before.get(key), mine.get(key), theirs.get(key)));
    }

    private void joinOther(Clash any, Clash before, Clash mine, Clash theirs) {
        Optional<Clash> again = clashes.take(any.what(), any.place());
        boolean settled = before != null && (mine == null || theirs == null);
        if (settled && again.isEmpty()) {
            if (mine == null && theirs == null) {
                joinOtherDecisions(any, before);
            }
            return;
        }
        List<Clash.Side> answers = new ArrayList<>();
        Stream.of(mine, theirs).filter(c -> c != null && !settled).forEach(c -> answers.addAll(c.sides()));
        again.ifPresent(c -> answers.addAll(c.sides()));
        Value earliest = before != null ? before.base() : any.base();
        Optional<Integer> row =
                any.place().entries().containsKey("row") ? resultRow(any) : Optional.of(ClashList.NO_ROW);
        if (row.isPresent()) {
            clashes.add(new Clash(any.what(), any.place(), earliest, distinct(answers), any.unknown()), row.get());
        }
    }

    private void joinOtherDecisions(Clash any, Clash before) {
        Clash raw = asItWas.get(before);
        Optional<TwoDecisions.Decided> decided =
                switch (any.what()) {
                    case ROW, ROWS -> rowDecisions(any, TwoDecisions.rows(base, raw));
                    case COLOUR ->
                        raw.textAt("key")
                                .map(key -> key.charAt(0))
                                .flatMap(id -> TwoDecisions.of(colours.entry(0, id), colours.entry(1, id)));
                    default -> TwoDecisions.of(any, plate(0), plate(1));
                };
        decided.ifPresent(two -> {
            if (any.what() != Clash.What.ROW && any.what() != Clash.What.ROWS) {
                thingsSettledTwice.put(before, raw);
            }
            int row = resultRow(any).orElse(ClashList.NO_ROW);
            clashes.add(
                    new Clash(
                            any.what(),
                            any.place(),
                            before.base(),
                            clashes.sides(two.mine(), two.theirs()),
                            any.unknown()),
                    row);
            if (any.what() == Clash.What.ROW) {
                stand(row, 0, grid.frame().width());
            }
        });
    }

    /** What each side kept of the rows that a clash is about, where the two differ. */
    private Optional<TwoDecisions.Decided> rowDecisions(Clash clash, List<Integer> handles) {
        Value mine = kept(0, clash, handles);
        Value theirs = kept(1, clash, handles);
        boolean here = handles.stream().allMatch(h -> rows.order().contains(h));
        boolean sameRows = clash.what() == Clash.What.ROWS
                && handles.stream().allMatch(h -> rows.row(0, h) >= 0 == rows.row(1, h) >= 0);
        boolean edited = clash.what() == Clash.What.ROW
                && handles.stream().anyMatch(h -> isNoAnswer(0, h, clash) || isNoAnswer(1, h, clash));
        return handles.isEmpty() || !here || sameRows || edited || mine.equals(theirs)
                ? Optional.empty()
                : Optional.of(new TwoDecisions.Decided(mine, theirs));
    }

    /** Whether a side has a row that is none of the clash's answers: it was drawn on since, which is joined by cables. */
    private boolean isNoAnswer(int s, int handle, Clash clash) {
        int row = rows.row(s, handle);
        if (row < 0) {
            return false;
        }
        Value now = Value.of(sides[s].plate().rows().get(row).cells());
        return !now.equals(clash.base())
                && clash.sides().stream().noneMatch(side -> side.value().equals(now));
    }

    private Value kept(int s, Clash clash, List<Integer> handles) {
        List<Value> lines = new ArrayList<>();
        for (int handle : handles) {
            if (rows.row(s, handle) >= 0) {
                String cellText = inJoinedChart(cells.rowAs(s, handle));
                lines.add(
                        clash.what() == Clash.What.ROW
                                ? Value.of(cellText)
                                : TwoDecisions.line(base.rows().get(handle), cellText));
            }
        }
        if (clash.what() == Clash.What.ROW) {
            return lines.isEmpty() ? Value.NOTHING : lines.get(0);
        }
        return new Value.Items(lines);
    }

    private String inJoinedChart(char[] identities) {
        return colours.letters(identities, start(), end());
    }

    /** Index of the joined chart's first position. */
    private int start() {
        return pleats.map(p -> grid.frame().index(p.from())).orElse(0);
    }

    /** Index after the joined chart's last position. */
    private int end() {
        return pleats.map(p -> grid.frame().index(p.to())).orElse(0);
    }

    /** The joined plate with what stood before in the place of fields and things that were settled in two ways. */
    Plate standing(Plate joined) {
        Plate out = joined;
        for (Map.Entry<Clash, Clash> clash : thingsSettledTwice.entrySet()) {
            Optional<Value> stood = TwoDecisions.shown(base, clash.getValue());
            out = stood.isPresent() ? Settling.put(out, clash.getKey(), stood.get()) : out;
        }
        return out;
    }

    private Optional<Integer> resultRow(Clash clash) {
        Value name = clash.place().entries().get("row");
        for (int row = 0; row < ids.size(); row++) {
            if (JoinedIds.name(ids, row).equals(name)) {
                return Optional.of(row);
            }
        }
        return Optional.empty();
    }

    private Map<String, Clash> others(int s) {
        Map<String, Clash> out = new LinkedHashMap<>();
        for (Clash clash : plate(s).clashes()) {
            if (clash.what() != Clash.What.CABLES) {
                Clash now = translated(s, clash);
                out.put(now.what() + now.place().text(), now);
                if (s < 0) {
                    asItWas.put(now, clash);
                }
            }
        }
        return out;
    }

    /** A side's clash in the letters, rows and pleats of the joined plate. */
    private Clash translated(int s, Clash clash) {
        return switch (clash.what()) {
            case ROW, TWINS -> {
                Optional<RowId> row = clash.textAt("row").filter(RowId::isRowId).map(RowId::new);
                yield mapped(renamedRow(s, clash), cellText -> refitted(s, row, cellText));
            }
            case ROWS -> mapped(clash, line -> refittedLine(s, line));
            case COLOUR ->
                clash.textAt("key")
                        .map(key -> clash.withPlace(ClashList.place("key", Value.of(lettered(s, key)))))
                        .orElse(clash);
            default -> clash;
        };
    }

    private Clash renamedRow(int s, Clash clash) {
        if (clash.numberAt("row").isEmpty()) {
            return clash;
        }
        int handle = NumberedRows.handle(clash.numberAt("row").get(), s, rows);
        Value name = placing.resultRow(new Placing.Spot(Optional.empty(), handle, 0, 0))
                .map(r -> JoinedIds.name(ids, r))
                // a name that no row has
                .orElse(Value.of(-1 - handle));
        return clash.withPlace(ClashList.place("row", name));
    }

    /** A row as a line of a plate's text: its id, if it has one, and its cells. */
    private String refittedLine(int s, String line) {
        int space = line.indexOf(' ');
        Optional<RowId> id = Optional.of(line)
                .filter(l -> space > 0)
                .map(l -> l.substring(0, space))
                .filter(RowId::isRowId)
                .map(RowId::new);
        return line.substring(0, space + 1) + refitted(s, id, line.substring(space + 1));
    }

    /** A whole row's cells, in the joined letters and width, moved along with what lies there. */
    private String refitted(int s, Optional<RowId> row, String cellText) {
        if (pleats.isEmpty() || cellText.length() != plate(s).positions()) {
            return lettered(s, cellText);
        }
        int first = pleats.get().from();
        char[] out = new char[pleats.get().to() - first];
        Arrays.fill(out, Row.EMPTY);
        String now = lettered(s, cellText);
        for (int i = 0; i < now.length(); i++) {
            if (now.charAt(i) != Row.EMPTY) {
                int p = plate(s).from() + i;
                int to = row.map(id -> placing.position(placing.position(s, id, p)))
                                .orElse(p)
                        - first;
                if (to >= 0 && to < out.length) {
                    out[to] = now.charAt(i);
                }
            }
        }
        return new String(out);
    }
}
