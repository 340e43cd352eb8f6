package platekeep.model.plate;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The pleated cloth that a plate was drawn for; each entry may be unsaid.
 *
 * @param gatheringRows how many gathering rows
 * @param spacingMm from one gathering row to the next, in millimetres
 * @param stackedRows stacked rows to one gathering space
 * @param fullness flat width divided by finished width
 * @param holding the gathering rows that are held, counted from the top
 */
public record Cloth(
        Optional<Integer> gatheringRows,
        Optional<BigDecimal> spacingMm,
        Optional<Integer> stackedRows,
        Optional<BigDecimal> fullness,
        List<String> holding,
        Unknown unknown) {

    /** Nothing said. */
    public static final Cloth NONE =
            new Cloth(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Unknown.NONE);

    public Cloth {
        spacingMm = spacingMm.map(BigDecimal::stripTrailingZeros);
        fullness = fullness.map(BigDecimal::stripTrailingZeros);
        holding = List.copyOf(holding);
    }

    public Value.Entries value() {
        return new Value.Builder()
                .putIf("gathering rows", gatheringRows, Value::of)
                .putIf("spacing mm", spacingMm, Value.Num::new)
                .putIf("stacked rows", stackedRows, Value::of)
                .putIf("fullness", fullness, Value.Num::new)
                .putIf("holding", Optional.of(holding).filter(h -> !h.isEmpty()), Value::ofTexts)
                .putAll(unknown)
                .build();
    }
}
