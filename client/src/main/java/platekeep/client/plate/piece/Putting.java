package platekeep.client.plate.piece;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.client.plate.piece.Piece.Held;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.GatheringRow;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleat;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.stitch.KeptKinds;
import platekeep.model.stitch.Kinds;

/**
 * Lifting a piece off a plate and putting one down: the cables of the piece, and those of the plate beside them, keep
 * their kinds. Where the piece touches a figure that cannot agree with it, some must turn; how many is told.
 */
public final class Putting {
    /** Stacked rows to one gathering space where a plate does not say: common practice, no source. */
    private static final int STACKED_ROWS = 5;

    private final Piece piece;
    private final Plate ground;
    private final Spot corner;
    private final Map<Character, Character> keys;
    private final Kinds was;

    /**
     * What came of it.
     *
     * @param turned how many cables are not what they were
     */
    public record Put(Plate plate, int turned) {}

    private Putting(Piece piece, Plate ground, Spot corner, Map<Character, Character> keys) {
        this.piece = piece;
        this.ground = ground;
        this.corner = corner;
        this.keys = keys;
        this.was = Kinds.of(ground);
    }

    /** The plate without the cables of an area, the single stitches on them and what was remarked there. */
    public static Plate lifted(Plate plate, Area area) {
        return lift(plate, area).map(Lift::ground).orElse(plate);
    }

    /**
     * What was lifted, and what is left.
     *
     * @param corner where its top left corner lay
     */
    public record Lift(Piece piece, Spot corner, Plate ground) {}

    /** Lifts the cables of an area off with all that belongs to them; empty where none lies. */
    public static Optional<Lift> lift(Plate plate, Area area) {
        return area.cables(plate).map(cables -> {
            Kinds kinds = Kinds.of(plate);
            Piece piece = Piece.of(plate, kinds, cables);
            return new Lift(piece, new Spot(cables.top(), cables.left()), without(plate, kinds, cables, piece));
        });
    }

    private static Plate without(Plate plate, Kinds kinds, Area cables, Piece piece) {
        List<Row> rows = new ArrayList<>(plate.rows());
        for (int row = cables.top(); row <= cables.bottom(); row++) {
            char[] cells = rows.get(row).cells().toCharArray();
            for (int i = cables.next(row, cables.left()); i >= 0; i = cables.next(row, i + 1)) {
                cells[i] = Row.EMPTY;
            }
            rows.set(row, changed(rows.get(row), cells));
        }
        Set<Mark> marks = new HashSet<>();
        piece.marks().forEach(held -> marks.add(held.what()));
        Set<Remark> remarks = new HashSet<>();
        piece.remarks().forEach(held -> remarks.add(held.what()));
        Plate without = plate.edit()
                .rows(rows)
                .starts(plate.starts().stream()
                        .filter(s -> !isOnCable(plate, cables, s))
                        .toList())
                .marks(plate.marks().stream().filter(m -> !marks.contains(m)).toList())
                .remarks(plate.remarks().stream()
                        .filter(r -> !remarks.contains(r))
                        .toList())
                .build();
        return KeptKinds.after(plate, kinds, without);
    }

    private static Row changed(Row row, char[] cells) {
        String text = String.valueOf(cells);
        return row.cells().equals(text) ? row : row.withCells(text);
    }

    private static boolean isOnCable(Plate plate, Area area, Start start) {
        int row = plate.indexOf(start.row());
        return area.has(new Spot(row, start.pleat() - plate.from())) && plate.cellAt(row, start.pleat()) != Row.EMPTY;
    }

    /** Whether a piece with its top left corner there lies on the chart with all of its cables. */
    public static boolean fits(Piece piece, Plate ground, Spot corner) {
        return corner.row() >= 0
                && corner.index() >= 0
                && corner.row() + piece.height() <= ground.rows().size()
                && corner.index() + piece.width() <= ground.positions();
    }

    /**
     * Puts a piece down over what is there. Colours that the plate has go by what they are, whatever their key; others
     * are added to its palette.
     *
     * @param corner where its top left corner comes; the piece must {@link #fits fit}
     * @return empty where the palette has no room for its colours
     */
    public static Optional<Put> down(Piece piece, Plate ground, Spot corner) {
        Palette palette = ground.palette();
        Map<Character, Character> keys = new HashMap<>();
        for (Map.Entry<Character, Colour> entry : piece.palette().entries().entrySet()) {
            Optional<Character> key = keyOf(palette, entry.getKey(), entry.getValue());
            if (key.isEmpty()) {
                Optional<Character> free =
                        palette.has(entry.getKey()) ? palette.freeKey() : Optional.of(entry.getKey());
                if (free.isEmpty()) {
                    return Optional.empty();
                }
                palette = palette.with(free.get(), entry.getValue());
                key = free;
            }
            keys.put(entry.getKey(), key.get());
        }
        Putting putting = new Putting(piece, ground, corner, keys);
        Put put = putting.put(palette, ground.starts());
        return Optional.of(put.turned() == 0 ? put : putting.fewer(put, putting.put(palette, putting.obeyed())));
    }

    private static Optional<Character> keyOf(Palette palette, char key, Colour colour) {
        if (palette.get(key).filter(colour::equals).isPresent()) {
            return Optional.of(key);
        }
        return palette.entries().entrySet().stream()
                .filter(e -> e.getValue().srgb().equals(colour.srgb())
                        && e.getValue().name().equals(colour.name()))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private Put fewer(Put one, Put other) {
        return other.turned() < one.turned() ? other : one;
    }

    /** The plate's starts, those that others on their figures overrule saying what their cables are. */
    private List<Start> obeyed() {
        return ground.starts().stream()
                .map(s -> was.at(ground.indexOf(s.row()), s.pleat())
                        .map(kind -> s.at(s.row(), s.pleat(), kind))
                        .orElse(s))
                .toList();
    }

    private Put put(Palette palette, List<Start> groundStarts) {
        List<Row> rows = new ArrayList<>(ground.rows());
        char[] newKey = newKeys();
        for (int r = 0; r < piece.height(); r++) {
            Row row = rows.get(corner.row() + r);
            char[] cells = row.cells().toCharArray();
            for (int i = 0; i < piece.width(); i++) {
                char cell = piece.cell(r, i);
                if (cell != Row.EMPTY) {
                    cells[corner.index() + i] = newKey[cell & 127];
                }
            }
            rows.set(corner.row() + r, changed(row, cells));
        }
        List<Mark> marks = new ArrayList<>(ground.marks());
        piece.marks().forEach(held -> marks.add(moved(held)));
        List<Remark> remarks = new ArrayList<>(ground.remarks());
        piece.remarks().forEach(held -> remarks.add(movedRemark(held)));
        Plate painted = ground.edit()
                .palette(palette)
                .rows(rows)
                .starts(starts(groundStarts))
                .marks(marks)
                .remarks(remarks)
                .build();
        Kinds kinds = Kinds.of(painted, was);
        Plate held = KeptKinds.holding(painted, kinds, this::wanted);
        return new Put(held, turned(held, held == painted ? kinds : Kinds.of(held, kinds)));
    }

    private char[] newKeys() {
        char[] newKey = new char[128];
        for (char key = 0; key < newKey.length; key++) {
            newKey[key] = keys.getOrDefault(key, key);
        }
        return newKey;
    }

    private Optional<CableKind> wanted(int row, int position) {
        return ofPiece(row, position).or(() -> was.at(row, position));
    }

    private Optional<CableKind> ofPiece(int row, int position) {
        int r = row - corner.row();
        int i = position - ground.from() - corner.index();
        boolean isThere = r >= 0 && r < piece.height() && i >= 0 && i < piece.width() && piece.cell(r, i) != Row.EMPTY;
        return isThere ? Optional.of(piece.kind(r, i)) : Optional.empty();
    }

    private int turned(Plate plate, Kinds is) {
        int turned = 0;
        boolean[] wanted = new boolean[plate.positions()];
        boolean[] isUp = new boolean[plate.positions()];
        for (int row = 0; row < plate.rows().size(); row++) {
            int r = row - corner.row();
            boolean isBeside = r < 0 || r >= piece.height();
            if (isBeside && is.hasRowOf(was, row)) {
                continue;
            }
            was.writeUp(row, wanted);
            for (int i = 0; i < piece.width() && !isBeside; i++) {
                if (piece.cell(r, i) != Row.EMPTY) {
                    wanted[corner.index() + i] = piece.isUp(r, i);
                }
            }
            is.writeUp(row, isUp);
            String cells = plate.rows().get(row).cells();
            for (int i = 0; i < isUp.length; i++) {
                turned += cells.charAt(i) != Row.EMPTY && isUp[i] != wanted[i] ? 1 : 0;
            }
        }
        return turned;
    }

    /** The plate's starts, but for those whose cable is covered by one of another kind, and the piece's. */
    private List<Start> starts(List<Start> groundStarts) {
        List<Start> starts = new ArrayList<>();
        Set<List<Object>> places = new HashSet<>();
        for (Held<Start> held : piece.starts()) {
            Start start = moved(held.what(), corner.row() + held.row(), (int) held.from());
            starts.add(start);
            places.add(List.of(start.row(), start.pleat()));
        }
        for (Start start : groundStarts) {
            Optional<CableKind> over = ofPiece(ground.indexOf(start.row()), start.pleat());
            boolean stays = over.isEmpty() || over.get() == start.cable();
            if (stays && !places.contains(List.<Object>of(start.row(), start.pleat()))) {
                starts.add(start);
            }
        }
        return starts;
    }

    private Start moved(Start start, int row, int index) {
        int before = ground.indexOf(start.row());
        Optional<String> on = before < 0 ? Optional.empty() : start.on().flatMap(text -> lower(text, row - before));
        return new Start(idOf(row), pleat(index), start.cable(), on, start.unknown());
    }

    /** The gathering row so many stacked rows further down; empty where that is none. */
    private Optional<String> lower(String on, int rows) {
        return GatheringRow.lower(
                on, rows, ground.cloth().stackedRows().filter(n -> n > 0).orElse(STACKED_ROWS));
    }

    private Mark moved(Held<Mark> held) {
        Mark mark = held.what()
                .withColour(keys.getOrDefault(held.what().colour(), held.what().colour()));
        double place = ground.from() + corner.index() + held.from();
        return mark.at(idOf(corner.row() + held.row()), Pleat.text(place));
    }

    private Remark movedRemark(Held<Remark> held) {
        return held.what().at(idOf(corner.row() + held.row()), pleat((int) held.from()), pleat((int) held.to()));
    }

    private int pleat(int index) {
        return ground.from() + corner.index() + index;
    }

    private RowId idOf(int row) {
        return ground.rows().get(row).id().orElseThrow();
    }
}
