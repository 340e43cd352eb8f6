package platekeep.client.command.file;

import java.util.List;
import java.util.Locale;
import platekeep.model.join.ClashWords;
import platekeep.model.join.Joined;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;

/** What a join did, as JSON, as {@code client/JSON.md} says. */
final class JoinedJson {

    private JoinedJson() {}

    static Value.Entries of(Joined joined, String result) {
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
                .put("words", Value.ofTexts(ClashWords.of(plate)))
                .build();
    }

    private static Value settled(Joined joined) {
        List<Value> items = joined.settled().stream()
                .map(settled -> (Value) new Value.Builder()
                        .put("words", settled.words())
                        .put("side", settled.by().name().toLowerCase(Locale.ROOT))
                        .build())
                .toList();
        return new Value.Items(items);
    }
}
