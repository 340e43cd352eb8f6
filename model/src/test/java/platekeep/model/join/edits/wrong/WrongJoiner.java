package platekeep.model.join.edits.wrong;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/**
 * The ways to be wrong. Some join by themselves; the others are handed the right answer and spoil just one thing in it, so
 * that nothing but that one thing can give them away.
 */
public enum WrongJoiner {
    TAKES_MINE((base, mine, theirs, right) -> mine),
    TAKES_THEIRS((base, mine, theirs, right) -> theirs),
    TAKES_BASE((base, mine, theirs, right) -> base),
    FIELD_BY_FIELD((base, mine, theirs, right) -> Naive.fieldByField(base, mine, theirs)),
    BY_ROW_NUMBER((base, mine, theirs, right) -> Naive.byRowNumber(base, mine, theirs)),
    BY_ID_MINE_FIRST((base, mine, theirs, right) -> Naive.byIdMineFirst(base, mine, theirs)),
    NEVER_CLASHES(spoiling(p -> p.edit().clashes(List.of()).build())),
    SETTLES_FOR_MINE(WrongJoiner::settlesForMine),
    REOPENS_WHAT_WAS_SETTLED((base, mine, theirs, right) -> {
        List<Clash> all = new ArrayList<>(right.clashes());
        base.clashes().stream().filter(c -> !all.contains(c)).forEach(all::add);
        return right.edit().clashes(all).build();
    }),
    CLASH_TOO_WIDE(spoiling(p -> clashes(p, WrongJoiner::wider))),
    CLASH_AS_A_WHOLE_ROW(spoiling(p -> clashes(p, WrongJoiner::wholeRow))),
    CLASH_WITHOUT_BASE(spoiling(
            p -> clashes(p, c -> new Clash(c.what(), c.place(), Value.NOTHING, c.sides(), c.unknown())))),
    CLASH_WITH_ONE_SIDE(spoiling(p ->
            clashes(p, c -> new Clash(c.what(), c.place(), c.base(), c.sides().subList(0, 1), c.unknown())))),
    NEEDLESS_CLASH_OVER_THE_TITLE(WrongJoiner::needless),
    DROPS_NOTES((base, mine, theirs, right) -> right.edit().notes(base.notes()).build()),
    DROPS_DESIGNERS((base, mine, theirs, right) ->
            right.edit().designers(base.designers()).build()),
    DROPS_THEMES(
            (base, mine, theirs, right) -> right.edit().themes(base.themes()).build()),
    DROPS_MARKS((base, mine, theirs, right) -> right.edit().marks(base.marks()).build()),
    DROPS_REMARKS(
            (base, mine, theirs, right) -> right.edit().remarks(base.remarks()).build()),
    DROPS_LINES((base, mine, theirs, right) -> right.edit().lines(base.lines()).build()),
    DROPS_NOTIONS(
            (base, mine, theirs, right) -> right.edit().notions(base.notions()).build()),
    DROPS_WHAT_IT_DOES_NOT_KNOW(spoiling(p -> p.edit().unknown(Unknown.NONE).build())),
    KEEPS_ALL_THEMES((base, mine, theirs, right) -> {
        List<String> all = new ArrayList<>(right.themes());
        all.addAll(base.themes());
        return right.edit().themes(all).build();
    }),
    LOSES_UNUSED_COLOURS(spoiling(WrongJoiner::withoutUnused)),
    FORGETS_RECOLOURED_THREADS((base, mine, theirs, right) -> {
        TreeMap<Character, Colour> entries = new TreeMap<>(right.palette().entries());
        base.palette().entries().forEach((key, colour) -> entries.computeIfPresent(key, (k, c) -> colour));
        return right.edit().palette(new Palette(entries)).build();
    }),
    FORGETS_STARTS(
            (base, mine, theirs, right) -> right.edit().starts(base.starts()).build()),
    TURNS_A_START(spoiling(p -> p.edit()
            .starts(p.starts().stream().map(WrongJoiner::turned).toList())
            .build())),
    FORGETS_THE_NEW_WIDTH(
            (base, mine, theirs, right) -> right.edit().pleats(base.pleats()).build()),
    IGNORES_MOVED_ROWS((base, mine, theirs, right) -> inOrderOf(base, right)),
    JUMPS_TO_A_TWIN(spoiling(WrongJoiner::twins)),
    GIVES_ROWS_NEW_IDS(spoiling(p -> p.edit()
            .rows(p.rows().stream().map(r -> Row.bare(r.cells())).toList())
            .build())),
    INVENTS_A_CABLE(spoiling(WrongJoiner::invented));

    /** What it does, with the right answer at hand. */
    interface Way {
        Plate join(Plate base, Plate mine, Plate theirs, Plate right);
    }

    private final Way way;

    WrongJoiner(Way way) {
        this.way = way;
    }

    public Plate join(Plate base, Plate mine, Plate theirs, Plate right) {
        return way.join(base, mine, theirs, right);
    }

    private static Way spoiling(UnaryOperator<Plate> spoil) {
        return (base, mine, theirs, right) -> spoil.apply(right);
    }

    private static Plate clashes(Plate plate, UnaryOperator<Clash> change) {
        return plate.edit()
                .clashes(plate.clashes().stream().map(change).toList())
                .build();
    }

    private static Plate settlesForMine(Plate base, Plate mine, Plate theirs, Plate right) {
        return right.hasClashes()
                ? right.edit()
                        .rows(mine.rows())
                        .pleats(mine.pleats())
                        .clashes(List.of())
                        .build()
                : right;
    }

    private static Plate needless(Plate base, Plate mine, Plate theirs, Plate right) {
        if (mine.title().equals(base.title()) && theirs.title().equals(base.title())) {
            return right;
        }
        Clash clash = new Clash(
                Clash.What.FIELD,
                new Value.Builder().put("field", "title").build(),
                Value.of(base.title()),
                List.of(
                        new Clash.Side(Value.of(mine.title()), Optional.empty()),
                        new Clash.Side(Value.of(theirs.title()), Optional.empty())));
        return right.edit().clashes(List.of(clash)).title(base.title()).build();
    }

    private static Clash wider(Clash c) {
        if (c.what() != Clash.What.CABLES) {
            return c;
        }
        int to = c.numberAt("to").orElseThrow() + 1;
        return new Clash(
                c.what(),
                new Value.Builder()
                        .put("row", c.textAt("row").orElse("0000"))
                        .put("from", c.numberAt("from").orElseThrow())
                        .put("to", to)
                        .build(),
                longer(c.base()),
                c.sides().stream()
                        .map(s -> new Clash.Side(longer(s.value()), s.by()))
                        .toList());
    }

    private static Value longer(Value value) {
        return value instanceof Value.Text text ? Value.of(text.string() + Row.EMPTY) : value;
    }

    private static Clash wholeRow(Clash c) {
        return c.what() == Clash.What.CABLES
                ? new Clash(
                        Clash.What.ROW,
                        new Value.Builder()
                                .put("row", c.textAt("row").orElse("0000"))
                                .build(),
                        c.base(),
                        c.sides())
                : c;
    }

    private static Plate withoutUnused(Plate p) {
        TreeMap<Character, Colour> entries = new TreeMap<>(p.palette().entries());
        entries.keySet()
                .removeIf(k -> p.rows().stream().noneMatch(r -> r.cells().indexOf(k) >= 0));
        return p.edit().palette(new Palette(entries)).build();
    }

    private static Start turned(Start s) {
        return s.at(s.row(), s.pleat(), s.cable().turned());
    }

    private static Plate inOrderOf(Plate base, Plate right) {
        List<Row> rows = new ArrayList<>();
        for (Row b : base.rows()) {
            right.rows().stream()
                    .filter(r -> r.id().equals(b.id()) && b.id().isPresent())
                    .forEach(rows::add);
        }
        right.rows().stream().filter(r -> !rows.contains(r)).forEach(rows::add);
        return right.edit().rows(rows).build();
    }

    /** The cells of the first two equal rows' neighbours change places. */
    private static Plate twins(Plate p) {
        List<Row> rows = new ArrayList<>(p.rows());
        for (int i = 0; i + 1 < rows.size(); i++) {
            if (!rows.get(i).cells().equals(rows.get(i + 1).cells())) {
                String cells = rows.get(i).cells();
                rows.set(i, rows.get(i).withCells(rows.get(i + 1).cells()));
                rows.set(i + 1, rows.get(i + 1).withCells(cells));
                break;
            }
        }
        return p.edit().rows(rows).build();
    }

    private static Plate invented(Plate p) {
        List<Row> rows = new ArrayList<>(p.rows());
        for (int i = 0; i < rows.size() && !p.palette().entries().isEmpty(); i++) {
            int at = rows.get(i).cells().indexOf(Row.EMPTY);
            if (at >= 0) {
                StringBuilder cells = new StringBuilder(rows.get(i).cells());
                cells.setCharAt(at, p.palette().entries().firstKey());
                rows.set(i, rows.get(i).withCells(cells.toString()));
                break;
            }
        }
        return p.edit().rows(rows).build();
    }
}
