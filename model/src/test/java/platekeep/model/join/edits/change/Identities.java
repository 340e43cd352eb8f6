package platekeep.model.join.edits.change;

import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Value;

/** What makes an element of a list the same element in two versions. */
public final class Identities {
    private Identities() {}

    public static String of(Line line) {
        return place(line).text();
    }

    public static String of(Notion notion) {
        return place(notion).text();
    }

    public static String of(Mark mark) {
        return mark.stitch() + "|" + mark.row() + "|" + mark.pleat();
    }

    static Value.Entries place(Line line) {
        return new Value.Builder()
                .put("on", line.on())
                .putIf("to row", line.toRow(), Value::of)
                .put("from", line.from())
                .build();
    }

    static Value.Entries place(Notion notion) {
        return new Value.Builder()
                .put("kind", notion.kind())
                .putIf("size", notion.size(), Value::of)
                .build();
    }

    static Value.Entries place(Mark mark) {
        return new Value.Builder()
                .put("stitch", mark.stitch())
                .put("row", mark.row().text())
                .put("pleat", mark.pleat())
                .build();
    }
}
