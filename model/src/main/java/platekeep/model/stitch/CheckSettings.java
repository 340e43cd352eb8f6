package platekeep.model.stitch;

import java.math.BigDecimal;
import platekeep.model.plate.Value;

/**
 * Where the check draws its lines. The first three defaults are the trade's from memory, the last two our own.
 *
 * @param overhang how many pleats a run may hang beyond the row it rests on
 * @param carried behind how many pleats a thread may be carried before its colour resumes
 * @param fewestCables a colour used for fewer is not worth a needle of its own
 * @param apart how far apart (CIEDE2000) two colours must be to be told apart on paper
 * @param apartForAll the same for people with a colour-vision deficiency
 */
public record CheckSettings(int overhang, int carried, int fewestCables, double apart, double apartForAll) {

    public static final CheckSettings DEFAULT = new CheckSettings(2, 4, 3, 8, 5);

    public CheckSettings {
        if (overhang < 0 || carried < 0 || fewestCables < 0 || !(apart >= 0) || !(apartForAll >= 0)) {
            throw new IllegalArgumentException("a setting of the check is below 0");
        }
    }

    /** The settings as a library keeps them. */
    public Value.Entries value() {
        return new Value.Builder()
                .put("overhang", overhang)
                .put("carried", carried)
                .put("fewest cables", fewestCables)
                .put("apart", new Value.Num(BigDecimal.valueOf(apart)))
                .put("apart for all", new Value.Num(BigDecimal.valueOf(apartForAll)))
                .build();
    }

    /** The settings that a library keeps; what it does not say, or says as no number from 0 up, is the default. */
    public static CheckSettings of(Value.Entries value) {
        return new CheckSettings(
                (int) number(value, "overhang", DEFAULT.overhang),
                (int) number(value, "carried", DEFAULT.carried),
                (int) number(value, "fewest cables", DEFAULT.fewestCables),
                number(value, "apart", DEFAULT.apart),
                number(value, "apart for all", DEFAULT.apartForAll));
    }

    private static double number(Value.Entries value, String key, double standard) {
        return value.entries().get(key) instanceof Value.Num num && num.number().signum() >= 0
                ? num.number().doubleValue()
                : standard;
    }
}
