package platekeep.client.command.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import platekeep.model.compare.CableRun;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.RowPair;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;

/** A comparison as JSON, as {@code client/JSON.md} says: the top row first, rows counted from the bottom. */
final class ComparisonJson {
    private final Plate before;
    private final Plate after;

    private ComparisonJson(Plate before, Plate after) {
        this.before = before;
        this.after = after;
    }

    static Value.Entries of(Plate before, Plate after, Comparison comparison) {
        ComparisonJson json = new ComparisonJson(before, after);
        return new Value.Builder()
                .put("same", Value.of(comparison.same()))
                .put(
                        "rows",
                        new Value.Items(
                                comparison.rows().stream().map(json::row).toList()))
                .put("words", Value.ofTexts(comparison.words()))
                .build();
    }

    private Value row(RowPair pair) {
        Value.Builder row = new Value.Builder()
                .put("old", number(before, pair.before()))
                .put("new", number(after, pair.after()))
                .put("change", pair.kind().name().toLowerCase(Locale.ROOT));
        if (pair.kind() == RowPair.Kind.MOVED && pair.edited()) {
            row.put("edited", Value.of(true));
        }
        if (!pair.runs().isEmpty()) {
            row.put("cables", cables(pair.runs()));
        }
        return row.build();
    }

    private static Value number(Plate plate, Optional<Integer> index) {
        return index.map(i -> Value.of(plate.numberFromBottom(i))).orElse(Value.NOTHING);
    }

    private static Value cables(List<CableRun> runs) {
        return new Value.Items(runs.stream()
                .map(run -> (Value) new Value.Builder()
                        .put("from", run.from())
                        .put("to", run.to())
                        .put("old", run.before())
                        .put("new", run.after())
                        .build())
                .toList());
    }
}
