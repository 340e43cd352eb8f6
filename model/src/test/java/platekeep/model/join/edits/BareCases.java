package platekeep.model.join.edits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/**
 * Cases whose rows have no ids, where the answer can still be told: all rows are unlike one another, so that an edited row
 * stays nearer to what it was than to any other. One more kind cannot be told: of two equal rows one was taken out, and
 * the other person redrew one of them.
 */
final class BareCases {
    private static final Set<Clash.What> TOLD =
            Set.of(Clash.What.CABLES, Clash.What.FIELD, Clash.What.COLOUR, Clash.What.PLEATS, Clash.What.ROW);

    private BareCases() {}

    /** The case without ids; undetermined where rows could be taken for one another. */
    static Case of(Case with) {
        if (!with.want().clashes().stream().allMatch(c -> TOLD.contains(c.what()))) {
            throw new Undetermined("how such a clash is told without ids");
        }
        unlike(with.base());
        apart(with.base(), with.mine());
        apart(with.base(), with.theirs());
        return new Case(
                "bare " + with.kind(), bare(with.base()), bare(with.mine()), bare(with.theirs()), bare(with.want()));
    }

    private static void unlike(Plate base) {
        for (int i = 0; i < base.rows().size(); i++) {
            for (int j = 0; j < i; j++) {
                if (distance(base.rows().get(i), base.rows().get(j)) < 4) {
                    throw new Undetermined("rows much like one another");
                }
            }
        }
    }

    /** Each row of the side is nearest to the row that it was, and a new one is near to none. */
    private static void apart(Plate base, Plate side) {
        if (!base.pleats().equals(side.pleats())) {
            if (base.rows().size() != side.rows().size()) {
                throw new Undetermined("rows in and out while the width changed");
            }
            return;
        }
        for (Row row : side.rows()) {
            Optional<Row> was =
                    base.rows().stream().filter(r -> r.id().equals(row.id())).findFirst();
            int margin = was.map(r -> distance(r, row) * 2 + 2).orElse(5);
            for (Row other : base.rows()) {
                boolean self = was.isPresent() && was.get().equals(other);
                if (!self && distance(other, row) < margin) {
                    throw new Undetermined("a row that could be another");
                }
            }
        }
    }

    private static int distance(Row one, Row other) {
        String a = one.cells();
        String b = other.cells();
        int d = Math.abs(a.length() - b.length());
        for (int i = 0; i < Math.min(a.length(), b.length()); i++) {
            d += a.charAt(i) == b.charAt(i) ? 0 : 1;
        }
        return d;
    }

    /** A case that cannot be told: which of two equal rows went, the redrawn one or the other? */
    static Case twins(Plate base, Random chance) {
        List<Row> rows = base.rows();
        List<Integer> firsts = new ArrayList<>();
        for (int i = 0; i + 1 < rows.size(); i++) {
            if (pair(rows, i)
                    && !pair(rows, i - 1)
                    && !pair(rows, i + 1)
                    && !rows.get(i).isBlank()) {
                firsts.add(i);
            }
        }
        if (firsts.isEmpty()) {
            throw new Undetermined("no twins");
        }
        int at = firsts.get(chance.nextInt(firsts.size()));
        List<Row> fewer = new ArrayList<>(rows);
        fewer.remove(at);
        List<Row> redrawn = new ArrayList<>(rows);
        StringBuilder cells = new StringBuilder(rows.get(at).cells());
        int p = chance.nextInt(cells.length());
        char key = base.palette().entries().lastKey();
        cells.setCharAt(p, cells.charAt(p) == key ? Row.EMPTY : key);
        redrawn.set(at, rows.get(at).withCells(cells.toString()));
        Plate mine = bare(base.edit().rows(fewer).build());
        Plate theirs = bare(base.edit().rows(redrawn).build());
        Set<Clash.What> declared = Set.of(Clash.What.TWINS, Clash.What.ROWS, Clash.What.ORDER);
        return new Case("bare twins", bare(base), mine, theirs, theirs, declared);
    }

    /** Whether the row and the one under it are equal. */
    private static boolean pair(List<Row> rows, int i) {
        return i >= 0
                && i + 1 < rows.size()
                && rows.get(i).cells().equals(rows.get(i + 1).cells());
    }

    /** The plate as a program leaves it that knows no ids: nothing in it refers to a row, but for its clashes. */
    static Plate bare(Plate plate) {
        return plate.edit()
                .rows(plate.rows().stream().map(r -> Row.bare(r.cells())).toList())
                .starts(List.of())
                .marks(List.of())
                .remarks(plate.remarks().stream().filter(r -> r.row().isEmpty()).toList())
                .clashes(plate.clashes().stream().map(c -> bare(c, plate)).toList())
                .build();
    }

    private static Clash bare(Clash clash, Plate plate) {
        Value.Builder place = new Value.Builder();
        clash.place()
                .entries()
                .forEach((key, value) -> place.put(
                        key, key.equals("row") && value instanceof Value.Text id ? number(id.string(), plate) : value));
        return new Clash(clash.what(), place.build(), clash.base(), clash.sides(), clash.unknown());
    }

    private static Value number(String id, Plate plate) {
        return Value.of(plate.numberFromBottom(plate.indexOf(new RowId(id))));
    }
}
