package platekeep.model.join.edits.wrong;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** Joiners as somebody might write them who has not thought of everything. */
final class Naive {
    private Naive() {}

    /** Each field as a whole: mine where I changed it, else theirs. */
    static Plate fieldByField(Plate base, Plate mine, Plate theirs) {
        return base.edit()
                .title(pick(base, mine, theirs, Plate::title))
                .themes(pick(base, mine, theirs, Plate::themes))
                .ages(pick(base, mine, theirs, Plate::ages))
                .uses(pick(base, mine, theirs, Plate::uses))
                .notes(pick(base, mine, theirs, Plate::notes))
                .designers(pick(base, mine, theirs, Plate::designers))
                .palette(pick(base, mine, theirs, Plate::palette))
                .pleats(pick(base, mine, theirs, Plate::pleats))
                .starts(pick(base, mine, theirs, Plate::starts))
                .rows(pick(base, mine, theirs, Plate::rows))
                .lines(pick(base, mine, theirs, Plate::lines))
                .marks(pick(base, mine, theirs, Plate::marks))
                .notions(pick(base, mine, theirs, Plate::notions))
                .remarks(pick(base, mine, theirs, Plate::remarks))
                .clashes(pick(base, mine, theirs, Plate::clashes))
                .build();
    }

    private static <T> T pick(Plate base, Plate mine, Plate theirs, Function<Plate, T> part) {
        return part.apply(mine).equals(part.apply(base)) ? part.apply(theirs) : part.apply(mine);
    }

    /** Rows paired by their number from the top, cells one by one, mine first; ids are not looked at. */
    static Plate byRowNumber(Plate base, Plate mine, Plate theirs) {
        Plate joined = fieldByField(base, mine, theirs);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < joined.rows().size(); i++) {
            Row row = joined.rows().get(i);
            if (i < base.rows().size()
                    && i < theirs.rows().size()
                    && i < mine.rows().size()) {
                row = row.withCells(cells(at(base, i), at(mine, i), at(theirs, i), row.cells()));
            }
            rows.add(row);
        }
        return joined.edit().rows(rows).build();
    }

    private static String at(Plate plate, int i) {
        return plate.rows().get(i).cells();
    }

    private static String cells(String base, String mine, String theirs, String otherwise) {
        if (base.length() != mine.length() || base.length() != theirs.length()) {
            return otherwise;
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < base.length(); i++) {
            out.append(mine.charAt(i) == base.charAt(i) ? theirs.charAt(i) : mine.charAt(i));
        }
        return out.toString();
    }

    /** Cells one by one by row id, mine first, and never a clash. */
    static Plate byIdMineFirst(Plate base, Plate mine, Plate theirs) {
        Plate joined = fieldByField(base, mine, theirs);
        List<Row> rows = new ArrayList<>();
        for (Row row : joined.rows()) {
            Optional<Row> b = row(base, row.id());
            Optional<Row> m = row(mine, row.id());
            Optional<Row> t = row(theirs, row.id());
            rows.add(
                    b.isPresent() && m.isPresent() && t.isPresent()
                            ? row.withCells(cells(
                                    b.get().cells(), m.get().cells(), t.get().cells(), row.cells()))
                            : row);
        }
        return joined.edit().rows(rows).build();
    }

    private static Optional<Row> row(Plate plate, Optional<RowId> id) {
        return plate.rows().stream()
                .filter(r -> id.isPresent() && r.id().equals(id))
                .findFirst();
    }
}
