package platekeep.client.command.file;

import java.util.List;
import java.util.Locale;
import platekeep.model.join.ClashWords;
import platekeep.model.join.NewFault;
import platekeep.model.join.Settled;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;

/** What a join did, as JSON, as {@code client/JSON.md} says. */
final class JoinedJson {

    private JoinedJson() {}

    static Value.Entries of(JoinedFiles joined, String result) {
        Plate plate = joined.plate();
        return new Value.Builder()
                .put("result", result)
                .put(
                        "clashes",
                        new Value.Items(plate.clashes().stream()
                                .map(Clash::value)
                                .map(v -> (Value) v)
                                .toList()))
                .put("settled", settled(joined))
                .put("faults", faults(joined))
                .put("words", Value.ofTexts(ClashWords.of(plate)))
                .build();
    }

    private static Value faults(JoinedFiles joined) {
        return new Value.Items(joined.faults().stream().map(JoinedJson::fault).toList());
    }

    private static Value fault(NewFault fault) {
        return new Value.Builder()
                .put("severity", fault.finding().severity().name().toLowerCase(Locale.ROOT))
                .put("rule", fault.finding().rule())
                .put("row", fault.finding().row().map(Value::of).orElse(Value.NOTHING))
                .put("pleat", fault.finding().pleat().map(Value::of).orElse(Value.NOTHING))
                .put("text", fault.finding().text())
                .put("mine", fault.mine().map(Settled::words).map(Value::of).orElse(Value.NOTHING))
                .put("theirs", fault.theirs().map(Settled::words).map(Value::of).orElse(Value.NOTHING))
                .build();
    }

    private static Value settled(JoinedFiles joined) {
        List<Value> items = joined.settled().stream()
                .map(settled -> (Value) new Value.Builder()
                        .put("words", settled.words())
                        .put("side", settled.by().name().toLowerCase(Locale.ROOT))
                        .build())
                .toList();
        return new Value.Items(items);
    }
}
