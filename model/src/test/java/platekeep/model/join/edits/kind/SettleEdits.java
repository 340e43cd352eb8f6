package platekeep.model.join.edits.kind;

import java.util.List;
import java.util.Optional;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.plate.Clash;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** Clashes that were left open: settled by one designer, by both alike, by both in two ways, or left open again. */
public final class SettleEdits {
    private SettleEdits() {}

    /** Settles the first open clash on one side or both; the answer says how. */
    public static String settle(Studio m, Studio t) {
        Clash clash = m.base.clashes().get(0);
        int sides = clash.sides().size();
        switch (m.upTo(5)) {
            case 0:
                return "left open";
            case 1:
                choose(m, clash, m.upTo(sides + 1));
                return "settled here";
            case 2:
                choose(t, clash, m.upTo(sides + 1));
                return "settled there";
            case 3:
                int one = m.upTo(sides + 1);
                choose(m, clash, one);
                choose(t, clash, one);
                return "settled alike";
            default:
                if (clash.what() != Clash.What.CABLES && clash.what() != Clash.What.FIELD) {
                    throw new Undetermined("how it is settled in two ways");
                }
                int a = m.upTo(sides);
                choose(m, clash, a);
                choose(t, clash, (a + 1) % sides);
                return "settled in two ways";
        }
    }

    /** Decides for one of the sides; one past the last keeps what stands. */
    private static void choose(Studio s, Clash clash, int side) {
        s.change.settled.add(s.base.clashes().indexOf(clash));
        if (side == clash.sides().size()) {
            return;
        }
        Value value = clash.sides().get(side).value();
        switch (clash.what()) {
            case CABLES -> cables(s, clash, ((Value.Text) value).string());
            case FIELD ->
                s.change.fields.put(
                        clash.textAt("field").orElseThrow(),
                        value instanceof Value.Nothing ? Optional.empty() : Optional.of(value));
            case ROW -> row(s, clash, value);
            case ROWS -> rows(s, clash, side);
            default -> throw new Undetermined("how a clash of this kind is settled");
        }
    }

    private static void cables(Studio s, Clash clash, String cells) {
        RowId row = new RowId(clash.textAt("row").orElseThrow());
        int from = clash.numberAt("from").orElseThrow();
        for (int i = 0; i < cells.length(); i++) {
            s.paint(row, from + i, cells.charAt(i));
        }
    }

    private static void row(Studio s, Clash clash, Value value) {
        if (value instanceof Value.Nothing) {
            RowEdits.take(s, List.of(new RowId(clash.textAt("row").orElseThrow())));
        }
    }

    private static void rows(Studio s, Clash clash, int side) {
        Value other = clash.sides().get(1 - side).value();
        RowEdits.take(
                s,
                ((Value.Items) other)
                        .items().stream()
                                .map(v -> new RowId(((Value.Text) v).string().substring(0, RowId.LENGTH)))
                                .toList());
    }
}
