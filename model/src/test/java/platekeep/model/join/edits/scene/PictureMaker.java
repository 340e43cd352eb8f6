package platekeep.model.join.edits.scene;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import platekeep.model.join.edits.change.Cell;
import platekeep.model.join.edits.change.Grid;
import platekeep.model.plate.Age;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.State;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** Makes one plate out of chance; all rows have ids, and at least one start stands on a cable. */
public final class PictureMaker {
    private final Random chance;
    private final Set<String> ids = new HashSet<>();

    private boolean startOnEach;

    public PictureMaker(Random chance) {
        this.chance = chance;
        this.startOnEach = chance.nextInt(5) < 3;
    }

    /** From now on every figure gets a start of its own. */
    public PictureMaker startOnEach() {
        startOnEach = true;
        return this;
    }

    /** A row id, or a remark's, that this maker has not given before. */
    public RowId freshId() {
        while (true) {
            StringBuilder id = new StringBuilder();
            for (int i = 0; i < RowId.LENGTH; i++) {
                id.append("0123456789abcdefghijklmnopqrstuvwxyz".charAt(chance.nextInt(36)));
            }
            if (ids.add(id.toString())) {
                return new RowId(id.toString());
            }
        }
    }

    /** A plate with so many figures side by side; some may touch in the end. */
    public Plate plate(int figures) {
        int[] size = size(figures);
        int width = size[0];
        int height = size[1];
        int from = chance.nextInt(4) == 0 ? chance.nextInt(41) - 20 : 1;
        Palette palette = palette();
        char[][] cells = new char[height][width];
        for (char[] row : cells) {
            Arrays.fill(row, Row.EMPTY);
        }
        int slot = width / figures;
        for (int f = 0; f < figures; f++) {
            new Shape(chance, palette).draw(cells, f * slot + 1, (f + 1) * slot - 2);
        }
        List<Row> rows = new ArrayList<>();
        for (char[] row : cells) {
            rows.add(new Row(Optional.of(freshId()), new String(row)));
        }
        UUID id = new UUID(chance.nextLong(), chance.nextLong());
        Draft draft =
                new Draft(id.toString(), "Plate " + chance.nextInt(1000) + " of " + Words.any(Words.THEMES, chance));
        draft.palette(palette)
                .pleats(Optional.of(new Pleats(from, from + width)))
                .rows(rows);
        facts(draft);
        Plate plate = draft.build();
        Grid grid = Grid.of(plate);
        draft.starts(starts(grid));
        draft.marks(marks(grid, palette));
        draft.remarks(remarks(grid));
        draft.lines(lines(palette, plate));
        return draft.build();
    }

    private int[] size(int figures) {
        return switch (chance.nextInt(10)) {
            case 0 -> new int[] {8 * figures + chance.nextInt(4), 4 + chance.nextInt(4)};
            case 1 -> new int[] {Math.max(40, 18 * figures) + chance.nextInt(20), 25 + chance.nextInt(15)};
            default -> new int[] {13 * figures + chance.nextInt(10), 7 + chance.nextInt(9)};
        };
    }

    private Palette palette() {
        TreeMap<Character, Colour> entries = new TreeMap<>();
        int n = 2 + chance.nextInt(6);
        for (int i = 0; i < n; i++) {
            entries.put(
                    Palette.KEYS.charAt(chance.nextInt(5) == 0 ? 26 + chance.nextInt(36) : i), Words.colour(chance));
        }
        return new Palette(entries);
    }

    private List<Start> starts(Grid grid) {
        List<Start> out = new ArrayList<>();
        List<Set<Cell>> figures = new ArrayList<>(grid.figures());
        figures.sort((a, b) -> lowest(grid, b) - lowest(grid, a));
        for (Set<Cell> figure : figures) {
            if (startOnEach || out.isEmpty()) {
                out.add(start(grid, figure));
            }
        }
        return out;
    }

    private static int lowest(Grid grid, Set<Cell> figure) {
        return figure.stream().mapToInt(c -> grid.indexOf(c.row())).max().orElse(-1);
    }

    private Start start(Grid grid, Set<Cell> figure) {
        List<Cell> cells = new ArrayList<>(figure);
        int lowest = lowest(grid, figure);
        Cell cell = chance.nextInt(3) == 0
                ? Words.any(cells, chance)
                : cells.stream()
                        .filter(c -> grid.indexOf(c.row()) == lowest)
                        .min((a, b) -> a.position() - b.position())
                        .orElseThrow();
        CableKind kind = chance.nextBoolean() ? CableKind.DOWN : CableKind.UP;
        Optional<String> on = chance.nextInt(3) == 0 ? Optional.of((1 + chance.nextInt(7)) + " 1/2") : Optional.empty();
        return new Start(cell.row(), cell.position(), kind, on, Unknown.NONE);
    }

    private List<Mark> marks(Grid grid, Palette palette) {
        Map<String, Mark> out = new TreeMap<>();
        for (int i = chance.nextInt(5); i > 1; i--) {
            Mark mark = mark(grid, palette);
            out.put(mark.stitch() + mark.row() + mark.pleat(), mark);
        }
        return List.copyOf(out.values());
    }

    /** A mark on some cable of the picture. */
    public Mark mark(Grid grid, Palette palette) {
        Cell cell = Words.any(List.copyOf(Words.any(grid.figures(), chance)), chance);
        char colour = Words.any(List.copyOf(palette.entries().keySet()), chance);
        String pleat = cell.position() + (chance.nextBoolean() ? " 1/2" : "");
        return new Mark(Words.any(Words.STITCHES, chance), cell.row(), pleat, colour, Unknown.NONE);
    }

    private List<Remark> remarks(Grid grid) {
        List<Remark> out = new ArrayList<>();
        for (int i = chance.nextInt(4); i > 1; i--) {
            out.add(remark(grid));
        }
        return out;
    }

    /** A remark about a place, or about the whole plate. */
    public Remark remark(Grid grid) {
        boolean placed = chance.nextBoolean();
        Cell cell = Words.any(List.copyOf(Words.any(grid.figures(), chance)), chance);
        return new Remark(
                freshId(),
                placed ? Optional.of(cell.row()) : Optional.empty(),
                placed ? Optional.of(cell.position()) : Optional.empty(),
                placed ? Optional.of(cell.position()) : Optional.empty(),
                chance.nextBoolean() ? "Wenna Tarrow" : "Isolde Marsh",
                LocalDate.of(2026, 1 + chance.nextInt(12), 1 + chance.nextInt(28)),
                Words.sentence(chance),
                false,
                Unknown.NONE);
    }

    private List<Line> lines(Palette palette, Plate plate) {
        Map<String, Line> out = new TreeMap<>();
        for (int i = chance.nextInt(5); i > 1; i--) {
            Line line = line(palette, plate);
            out.put(line.on() + line.toRow() + line.from(), line);
        }
        return List.copyOf(out.values());
    }

    /** A line of geometric smocking across the chart. */
    public Line line(Palette palette, Plate plate) {
        boolean travels = chance.nextBoolean();
        return new Line(
                String.valueOf(1 + chance.nextInt(9)),
                travels ? Optional.of((1 + chance.nextInt(9)) + " 1/2") : Optional.empty(),
                travels ? "trellis" : Words.any(Words.LINES, chance),
                travels ? Optional.of(2 + chance.nextInt(4)) : Optional.empty(),
                Words.any(List.copyOf(palette.entries().keySet()), chance),
                3,
                plate.from(),
                plate.from() + plate.positions(),
                chance.nextBoolean() ? CableKind.DOWN : CableKind.UP,
                Unknown.NONE);
    }

    public Notion notion() {
        return new Notion(
                Words.any(Words.NOTIONS, chance),
                chance.nextBoolean() ? Optional.of((3 + chance.nextInt(9)) + " mm") : Optional.empty(),
                1 + chance.nextInt(4),
                Unknown.NONE);
    }

    private void facts(Draft draft) {
        draft.themes(some(Words.THEMES));
        draft.uses(some(Words.USES));
        draft.ages(EnumSet.allOf(Age.class).stream()
                .filter(a -> chance.nextBoolean())
                .toList());
        draft.designers(List.of("Wenna Tarrow"));
        List<String> notes = new ArrayList<>();
        for (int i = chance.nextInt(4); i > 0; i--) {
            notes.add(Words.sentence(chance));
        }
        draft.notes(notes.stream().distinct().toList());
        Map<String, Notion> notions = new TreeMap<>();
        for (int i = chance.nextInt(3); i > 0; i--) {
            Notion notion = notion();
            notions.put(notion.kind() + notion.size(), notion);
        }
        draft.notions(List.copyOf(notions.values()));
        if (chance.nextBoolean()) {
            draft.number(Optional.of("H-" + chance.nextInt(100)));
            draft.state(Optional.of(State.CHARTED));
            draft.origin(new Origin(
                    Optional.of("own"),
                    Optional.empty(),
                    Optional.of("binder 3"),
                    Optional.of("publish"),
                    Unknown.NONE));
            draft.cloth(new Cloth(
                    Optional.of(7),
                    Optional.of(new BigDecimal("9.5")),
                    Optional.of(5),
                    Optional.empty(),
                    List.of("1", "7"),
                    Unknown.NONE));
        }
        if (chance.nextInt(4) == 0) {
            draft.repeat(Optional.of(new Repeat(30 + chance.nextInt(10), 3, Unknown.NONE)));
        }
        if (chance.nextInt(3) == 0) {
            draft.unknown(new Unknown(Map.of("hoop", Value.of("round"), "weight", Value.of(12))));
        }
    }

    private List<String> some(List<String> words) {
        return words.stream().filter(w -> chance.nextInt(4) == 0).toList();
    }
}
