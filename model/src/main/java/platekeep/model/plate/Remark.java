package platekeep.model.plate;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a designer says to the other about a place.
 *
 * @param id four characters like a row's
 * @param row the row by id; empty for the whole plate
 * @param from the first position
 * @param to the last position
 * @param by who said it
 * @param on when
 * @param text what
 * @param done whether it is settled
 */
public record Remark(
        RowId id,
        Optional<RowId> row,
        Optional<Integer> from,
        Optional<Integer> to,
        String by,
        LocalDate on,
        String text,
        boolean done,
        Unknown unknown) {

    public Remark {
        by = CodePoints.nfc(by);
        text = CodePoints.nfc(text);
    }

    public Value.Entries value() {
        return new Value.Builder()
                .put("id", id.text())
                .putIf("row", row, r -> Value.of(r.text()))
                .putIf("from", from, Value::of)
                .putIf("to", to, Value::of)
                .put("by", by)
                .put("on", on.toString())
                .put("text", text)
                .put("done", Value.of(done))
                .putAll(unknown)
                .build();
    }

    public Remark withDone(boolean newDone) {
        return new Remark(id, row, from, to, by, on, text, newDone, unknown);
    }

    public Remark withId(RowId newId) {
        return new Remark(newId, row, from, to, by, on, text, done, unknown);
    }

    public Remark at(RowId newRow, int newFrom, int newTo) {
        return new Remark(
                id, Optional.of(newRow), Optional.of(newFrom), Optional.of(newTo), by, on, text, done, unknown);
    }
}
