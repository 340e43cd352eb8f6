package platekeep.model.plate;

import java.util.List;
import java.util.Optional;

/**
 * Where a plate comes from and what may be done with it. Absent entries mean: her own, to be published.
 *
 * @param kind one of {@link #KINDS}
 * @param by whom it is from
 * @param place where the paper lies
 * @param use what is allowed, one of {@link #USES}
 */
public record Origin(
        Optional<String> kind, Optional<String> by, Optional<String> place, Optional<String> use, Unknown unknown) {

    public static final List<String> KINDS = List.of("own", "bought", "given", "adapted");
    public static final List<String> USES = List.of("mine", "partner", "class", "publish");

    /** Nothing said. */
    public static final Origin NONE =
            new Origin(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Unknown.NONE);

    public Origin {
        kind = CodePoints.said(kind);
        by = CodePoints.said(by);
        place = CodePoints.said(place);
        use = CodePoints.said(use);
    }

    public Value.Entries value() {
        return new Value.Builder()
                .putIf("kind", kind, Value::of)
                .putIf("by", by, Value::of)
                .putIf("place", place, Value::of)
                .putIf("use", use, Value::of)
                .putAll(unknown)
                .build();
    }
}
