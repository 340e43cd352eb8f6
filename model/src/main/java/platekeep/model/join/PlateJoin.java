package platekeep.model.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Grid;
import platekeep.model.compare.Grid.Frame;
import platekeep.model.compare.Motion;
import platekeep.model.compare.Renaming;
import platekeep.model.plate.Age;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.Value;
import platekeep.model.stitch.Labels;

/** One join of one plate, step by step; used once. */
final class PlateJoin {
    private final Plate base;
    private final ClashList clashes;
    private Frame frame;
    private Grid grid;
    private Labels labels;
    private Side[] sides;
    private Layers layers = Layers.NONE;
    private Motion[] motions = {Motion.NONE};
    private int[] placedBy = {-1};
    private final List<FigureClash> figureClashes = new ArrayList<>();
    private Colours colours;
    private RowJoin rows;
    private CellJoin cells;
    private List<Optional<RowId>> ids = List.of();
    private Placing placing;

    /** A figure that the sides moved in two ways, with each one's move; rows up and pleats right. */
    private record FigureClash(int figure, Value mine, Value theirs) {}

    PlateJoin(Plate base, Plate mine, Plate theirs, Hands hands) {
        this.base = base;
        this.clashes = new ClashList(hands);
        lay(mine, theirs, Frame.around(base, mine, theirs));
        int room = room();
        if (room > 0) {
            lay(mine, theirs, new Frame(frame.from() - room, frame.width() + 2 * room));
        }
    }

    private void lay(Plate mine, Plate theirs, Frame newFrame) {
        frame = newFrame;
        Map<String, char[]> shared = new HashMap<>();
        grid = Grid.of(base, frame, shared);
        sides = new Side[] {Side.of(0, base, mine, grid, shared), Side.of(1, base, theirs, grid, shared)};
    }

    /** How far outside the charts sources may lie because somebody moved cables sideways. */
    private int room() {
        int room = 0;
        for (Side side : sides) {
            List<Motion> all = new ArrayList<>(side.figures().values());
            all.add(side.picture());
            for (Motion motion : all) {
                int shift = motion.positionSign() > 0
                        ? Math.abs(motion.positionShift())
                        : Math.abs(motion.positionShift() - frame.width() + 1);
                room = Math.max(room, shift);
            }
        }
        return Math.min(room, Pleats.MOST_POSITIONS);
    }

    /** What a side did to the earlier plate, as this join has read it. */
    Comparison comparison(int s, Plate side) {
        return sides[s].turnedOver()
                ? Comparison.of(base, side)
                : Comparison.of(base, side, grid, sides[s].grid(), sides[s].edit());
    }

    Plate joined() {
        labels = grid.figures();
        colours = new Colours(base, new Plate[] {sides[0].plate(), sides[1].plate()}, new Renaming[] {
            sides[0].edit().renaming(), sides[1].edit().renaming()
        });
        sortLayers();
        rows = new RowJoin(base, sides, new CellJoin(grid, labels, sides, layers, colours, motions, placedBy));
        decideMotions();
        cells = new CellJoin(grid, labels, sides, layers, colours, motions, placedBy);
        rows = rows.with(cells);
        rows.join();
        settleMirrors();
        cells.join(rows);
        Plate joined = assemble();
        boolean more = false;
        for (Clash clash : joined.clashes()) {
            more |= colours.keepNamed(clash.value().text());
        }
        for (Mark mark : joined.marks()) {
            more |= colours.keepNamed(String.valueOf(mark.colour()));
        }
        for (Line line : joined.lines()) {
            more |= colours.keepNamed(String.valueOf(line.colour()));
        }
        if (!more) {
            return joined;
        }
        clashes.clear();
        return assemble();
    }

    private void sortLayers() {
        boolean mineFollows = sides[0].isBetterReadAsMovedBy(sides[1], grid, labels);
        boolean theirsFollows = sides[1].isBetterReadAsMovedBy(sides[0], grid, labels);
        if (mineFollows != theirsFollows) {
            sides[mineFollows ? 0 : 1].follow(sides[mineFollows ? 1 : 0]);
        }
        Apart apart = new Apart(base, grid, sides);
        layers = Layers.of(sides, apart.any());
        if (layers.count() > Layers.MOST) {
            forgetMotions();
        }
        for (Side side : sides) {
            side.sort(layers, labels, grid, apart);
        }
        if (!sides[0].allHaveSources() || !sides[1].allHaveSources()) {
            forgetMotions();
        }
        motions = new Motion[layers.count()];
        Arrays.fill(motions, Motion.NONE);
        placedBy = new int[layers.count()];
        Arrays.fill(placedBy, -1);
    }

    private void forgetMotions() {
        for (Side side : sides) {
            side.forgetMotions();
        }
        layers = Layers.NONE;
    }

    /** What a side did to a figure as a whole. */
    private record Move(Motion motion, int up) {}

    /** Moves by cables and moves by rows are told apart: one of each kind are both done, two of a kind must agree. */
    private void decideMotions() {
        int mineUp = rows.rotation(0).up();
        int theirsUp = rows.rotation(1).up();
        boolean heightTorn = mineUp != 0 && theirsUp != 0 && mineUp != theirsUp;
        for (int figure = 0; figure < labels.count(); figure++) {
            Motion m = sides[0].motionOf(figure);
            Motion t = sides[1].motionOf(figure);
            if (heightTorn || torn(m, t)) {
                figureClashes.add(new FigureClash(
                        figure, value(figure, 0, new Move(m, mineUp)), value(figure, 1, new Move(t, theirsUp))));
            }
        }
        for (int layer = 0; layer < layers.count(); layer++) {
            Motion m = sides[0].motion(layer);
            Motion t = sides[1].motion(layer);
            boolean clash = torn(m, t) || heightTorn && layer == 0;
            motions[layer] = clash ? Motion.NONE : m.isNone() ? t : m;
            placedBy[layer] = clash || m.equals(t) ? -1 : m.isNone() ? 1 : 0;
        }
        if (heightTorn) {
            rows.undoRotations();
        }
    }

    private static boolean torn(Motion mine, Motion theirs) {
        return !mine.isNone() && !theirs.isNone() && !mine.equals(theirs);
    }

    /** The row of the joined plate about which a mirroring top to bottom turns moves with the rows put in and taken out. */
    private void settleMirrors() {
        for (int layer = 0; layer < layers.count(); layer++) {
            Motion motion = motions[layer];
            if (motion.rowSign() > 0) {
                continue;
            }
            int s = placedBy[layer] < 0 ? 0 : placedBy[layer];
            int[] there = span(layer, sides[s].edit().pairing()::after);
            List<Integer> order = rows.order();
            int[] here = span(layer, order::indexOf);
            int axis = here[0] + here[1] + motion.rowShift() - there[0] - there[1];
            motions[layer] = new Motion(-1, axis, motion.positionSign(), motion.positionShift());
        }
    }

    /** The topmost and lowest row that a layer's earlier cables have, as rows are numbered by {@code row}. */
    private int[] span(int layer, IntUnaryOperator row) {
        int top = Integer.MAX_VALUE;
        int bottom = -1;
        for (int i = 0; i < grid.height(); i++) {
            int r = row.applyAsInt(i);
            for (int k = 0; r >= 0 && k < frame.width(); k++) {
                if (labels.at(i, k) >= 0 && (layer == 0 || layers.of(labels.at(i, k)) == layer)) {
                    top = Math.min(top, r);
                    bottom = Math.max(bottom, r);
                }
            }
        }
        return bottom < 0 ? new int[] {0, 0} : new int[] {top, bottom};
    }

    /** How a side moved a figure, for a clash: rows up, pleats right, and how it was mirrored. */
    private Value value(int figure, int s, Move move) {
        int[] box = box(figure, s);
        Motion m = move.motion();
        int rowsUp = m.rowSign() > 0 ? -m.rowShift() : box[0] + box[1] - m.rowShift();
        int right = m.positionSign() > 0 ? m.positionShift() : m.positionShift() - box[2] - box[3];
        String mirrored = m.positionSign() < 0
                ? m.rowSign() < 0 ? "both" : "left to right"
                : m.rowSign() < 0 ? "top to bottom" : "";
        return new Value.Builder()
                .put("rows", rowsUp + move.up())
                .put("pleats", right)
                .put("mirrored", mirrored.isEmpty() ? Value.of(false) : Value.of(mirrored))
                .build();
    }

    /** Top and bottom row (a side's), first and last index of a figure of the earlier plate. */
    private int[] box(int figure, int s) {
        int[] box = {Integer.MAX_VALUE, -1, Integer.MAX_VALUE, -1};
        for (int i = 0; i < grid.height(); i++) {
            int row = sides[s].edit().pairing().after(i);
            for (int k = 0; row >= 0 && k < frame.width(); k++) {
                if (labels.at(i, k) == figure) {
                    box[0] = Math.min(box[0], row);
                    box[1] = Math.max(box[1], row);
                    box[2] = Math.min(box[2], k);
                    box[3] = Math.max(box[3], k);
                }
            }
        }
        return box;
    }

    private Plate assemble() {
        Optional<Pleats> pleats = new PleatsJoin(base, sides, cells, frame.from(), clashes).join();
        Palette palette = joinPalette(pleats);
        ids = JoinedIds.of(rows, cells);
        placing = new Placing(base, sides, grid, labels, layers, rows, motions, ids);
        Plate mine = sides[0].plate();
        Plate theirs = sides[1].plate();
        Draft out = new Draft(base.id(), mine.title());
        new FieldJoin(base, mine, theirs, clashes).into(out);
        out.uses(ListJoin.set(base.uses(), mine.uses(), theirs.uses()));
        out.themes(ListJoin.set(base.themes(), mine.themes(), theirs.themes()));
        out.ages(ages(mine, theirs));
        out.designers(ListJoin.texts(base.designers(), mine.designers(), theirs.designers()));
        out.notes(ListJoin.texts(base.notes(), mine.notes(), theirs.notes()));
        PlacedJoin placed = new PlacedJoin(base, sides, colours, placing, rows, clashes);
        out.lines(placed.lines())
                .marks(placed.marks())
                .notions(placed.notions())
                .remarks(placed.remarks());
        out.starts(new StartJoin(
                        base,
                        sides,
                        grid,
                        labels,
                        placing,
                        new StrayStarts(sides, placing, cells),
                        clashes,
                        turnedOver())
                .join());
        if (pleats.isPresent()) {
            new RowClashes(colours, cells, rows, ids, frame, pleats.get(), clashes).declare();
            declareFigures();
        }
        OldClashes old = new OldClashes(base, sides, colours, cells, placing, rows, ids, grid, pleats, clashes);
        old.join();
        out.palette(palette).pleats(pleats).rows(rowsOf(pleats));
        Plate unkept = old.standing(out.build());
        out = unkept.edit();
        out.starts(withMissing(unkept, pleats));
        out.clashes(clashes.sorted());
        if (turnedOver()) {
            out.rows(Side.reversed(unkept.rows()));
            out.starts(Side.turned(out.build().starts()));
            out.clashes(clashes.sortedTurned(IntStream.range(0, ids.size())
                    .mapToObj(row -> JoinedIds.name(ids, row))
                    .toList()));
        }
        return out.build();
    }

    /** Whether somebody turned the whole chart upside down, rows and all. */
    private boolean turnedOver() {
        return sides[0].turnedOver() || sides[1].turnedOver();
    }

    private List<Age> ages(Plate mine, Plate theirs) {
        List<String> joined = ListJoin.set(words(base), words(mine), words(theirs));
        return joined.stream().map(word -> Age.of(word).orElseThrow()).toList();
    }

    private static List<String> words(Plate plate) {
        return plate.ages().stream().map(Age::word).toList();
    }

    /** Joins the entries of the palette and gives each colour its letter. */
    private Palette joinPalette(Optional<Pleats> pleats) {
        Set<Character> needed = new HashSet<>(cells.paintedThoughTakenOut());
        needed.addAll(PlacedJoin.usedThoughTakenOut(base, sides, colours));
        Set<Character> shown = shownByTornCables(pleats);
        SortedMap<Character, Colour> entries = new TreeMap<>();
        List<Character> torn = new ArrayList<>();
        for (char id : colours.all()) {
            Optional<Colour> b = colours.baseEntry(id);
            Optional<Colour> m = colours.entry(0, id);
            Optional<Colour> t = colours.entry(1, id);
            Optional<Colour> joined;
            if (b.isEmpty()) {
                joined = m.or(() -> t);
            } else if (needed.contains(id)) {
                torn.add(id);
                joined = b;
            } else if (m.equals(t) || t.equals(b)) {
                joined = m;
            } else if (m.equals(b)) {
                joined = t;
            } else {
                torn.add(id);
                joined = b;
            }
            if (joined.isEmpty() && (shown.contains(id) || colours.isNamed(id))) {
                joined = b;
            }
            joined.ifPresent(colour -> entries.put(id, colour));
        }
        Palette palette = colours.assign(entries);
        torn.forEach(this::declareColour);
        colours.all().stream()
                .filter(colours::renamedTwice)
                .filter(entries::containsKey)
                .forEach(this::declareColour);
        return palette;
    }

    private void declareColour(char id) {
        clashes.add(
                Clash.What.COLOUR,
                ClashList.place("key", Value.of(String.valueOf(colours.letter(id)))),
                value(colours.baseEntry(id)),
                value(colours.entry(0, id)),
                value(colours.entry(1, id)),
                ClashList.NO_ROW);
    }

    private static Value value(Optional<Colour> colour) {
        return colour.map(c -> (Value) c.value()).orElse(Value.NOTHING);
    }

    /** Identities that stand, or are wanted, where both sides changed a cable. */
    private Set<Character> shownByTornCables(Optional<Pleats> pleats) {
        Set<Character> shown = new HashSet<>();
        cells.torn()
                .values()
                .forEach(row -> row.values().forEach(cell -> {
                    shown.add(cell.base());
                    shown.add(cell.mine());
                    shown.add(cell.theirs());
                }));
        for (int handle : rows.keptThoughTakenOut()) {
            for (int s = -1; s < 2; s++) {
                if (s < 0 || rows.row(s, handle) >= 0) {
                    for (char c : cells.rowAs(s, handle)) {
                        shown.add(c);
                    }
                }
            }
        }
        for (int s = 0; s < 2; s++) {
            int side = s;
            sides[s].plate().clashes().stream()
                    .flatMap(clash -> clash.sides().stream())
                    .forEach(answer -> addLetters(shown, side, answer.value()));
        }
        int from = pleats.map(p -> frame.index(p.from())).orElse(0);
        int to = pleats.map(p -> frame.index(p.to())).orElse(0);
        boolean[] inPicture = new boolean[256];
        for (char[] row : cells.picture()) {
            for (int k = from; k < to; k++) {
                inPicture[row[k]] = true;
            }
        }
        IntStream.range(0, inPicture.length).filter(c -> inPicture[c]).forEach(c -> shown.add((char) c));
        return shown;
    }

    private void addLetters(Set<Character> shown, int side, Value value) {
        if (value instanceof Value.Text t) {
            t.string().chars().filter(c -> c < 128).forEach(c -> shown.add(colours.identity(side, (char) c)));
        }
    }

    private void declareFigures() {
        for (FigureClash clash : figureClashes) {
            for (int row = rows.order().size() - 1; row >= 0; row--) {
                int handle = rows.order().get(row);
                int first = -1;
                int last = -1;
                for (int k = 0; handle < grid.height() && k < frame.width(); k++) {
                    if (labels.at(handle, k) == clash.figure()) {
                        first = first < 0 ? k : first;
                        last = k;
                    }
                }
                if (first >= 0) {
                    Value.Entries place = new Value.Builder()
                            .put("row", JoinedIds.name(ids, row))
                            .put("from", frame.position(first))
                            .put("to", frame.position(last))
                            .build();
                    clashes.add(Clash.What.FIGURE, place, Value.NOTHING, clash.mine(), clash.theirs(), row);
                    break;
                }
            }
        }
    }

    private List<Row> rowsOf(Optional<Pleats> pleats) {
        List<Row> out = new ArrayList<>();
        if (pleats.isEmpty()) {
            return out;
        }
        int from = frame.index(pleats.get().from());
        int to = frame.index(pleats.get().to());
        for (int r = 0; r < cells.picture().length; r++) {
            out.add(new Row(ids.get(r), colours.letters(cells.picture()[r], from, to)));
        }
        if (out.size() > Plate.MOST_ROWS) {
            throw new JoinTrouble("Joined, the plate would have more than " + Plate.MOST_ROWS
                    + " rows; take rows out of one of the two first.");
        }
        return out;
    }

    private List<Start> withMissing(Plate unkept, Optional<Pleats> pleats) {
        boolean oneDrew = leftAlone(sides[0].plate()) || leftAlone(sides[1].plate());
        return pleats.isEmpty() || rows.order().isEmpty() || oneDrew
                ? unkept.starts()
                : new KindsKept(unkept, base, sides, new Origins()).starts();
    }

    private boolean leftAlone(Plate side) {
        return side.rows().equals(base.rows()) && side.starts().equals(base.starts());
    }

    private final class Origins implements KindsKept.Origins {
        /** Layers are told by trying each. */
        @Override
        public Optional<KindsKept.Cable> ofJoined(int s, int row, int position) {
            int k = frame.index(position);
            for (int layer = layers.count() - 1; layer >= 0; layer--) {
                Motion back = motions[layer].inverse();
                int r = back.row(row);
                int c = back.position(k);
                if (r < 0 || r >= rows.order().size() || c < 0 || c >= frame.width()) {
                    continue;
                }
                int handle = rows.order().get(r);
                if (s < 0) {
                    if (isOf(layer, handle, c)) {
                        return Optional.of(
                                new KindsKept.Cable(handle, frame.position(c), motions[layer].rowSign() < 0));
                    }
                    continue;
                }
                int own = rows.row(s, handle);
                Motion there = sides[s].motion(layer);
                if (own >= 0 && sides[s].layerAt(there.row(own), there.position(c)) == layer) {
                    boolean turned = motions[layer].rowSign() != there.rowSign();
                    return Optional.of(new KindsKept.Cable(there.row(own), frame.position(there.position(c)), turned));
                }
            }
            return Optional.empty();
        }

        @Override
        public Optional<KindsKept.Cable> ofSide(int s, int row, int position) {
            int k = frame.index(position);
            int layer = sides[s].layerAt(row, k);
            Motion back = sides[s].motion(layer).inverse();
            int r = back.row(row);
            int c = back.position(k);
            if (r < 0 || r >= sides[s].plate().rows().size() || c < 0 || c >= frame.width()) {
                return Optional.empty();
            }
            int handle = rows.handle(s, r);
            return isOf(layer, handle, c)
                    ? Optional.of(new KindsKept.Cable(handle, frame.position(c), back.rowSign() < 0))
                    : Optional.empty();
        }

        /** Whether a cable of the earlier plate lies here and belongs to the layer. */
        private boolean isOf(int layer, int handle, int c) {
            return handle < grid.height() && labels.at(handle, c) >= 0 && layers.of(labels.at(handle, c)) == layer;
        }
    }
}
