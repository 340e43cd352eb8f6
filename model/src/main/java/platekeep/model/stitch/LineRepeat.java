package platekeep.model.stitch;

import java.util.Locale;
import java.util.Optional;
import platekeep.model.plate.Line;

/**
 * How many pleats a geometric line takes for one repeat, and whether its pleats are whole repeats with the pleat of the
 * closing cable (all common practice, no source): cable, honeycomb, feather and Van Dyke 2; outline, stem and wheat 1;
 * waves 4; a trellis of n steps 2(n + 1); a diamond as its wave or trellis; alternating cable 6.
 */
public final class LineRepeat {
    private LineRepeat() {}

    /** Pleats for one repeat; empty for a stitch that is not known. */
    public static Optional<Integer> pleats(Line line) {
        String stitch = line.stitch().toLowerCase(Locale.ROOT);
        Optional<Integer> stepped = line.steps().filter(n -> n > 0).map(n -> 2 * (n + 1));
        return switch (stitch) {
            case "cable", "honeycomb", "surface honeycomb", "feather", "van dyke" -> Optional.of(2);
            case "outline", "stem", "wheat" -> Optional.of(1);
            case "baby wave", "wave" -> Optional.of(4);
            case "trellis" -> stepped;
            case "diamond" -> stepped.or(() -> Optional.of(4));
            case "alternating cable" -> Optional.of(6);
            default -> Optional.empty();
        };
    }

    /** The nearest number of pleats, not more than the line has, that whole repeats and a closing cable take. */
    public static Optional<Integer> fittingBelow(Line line) {
        return pleats(line).map(every -> (count(line) - 1) / every * every + 1).filter(n -> n > 1);
    }

    /** The nearest number of pleats, not fewer than the line has, that whole repeats and a closing cable take. */
    public static Optional<Integer> fittingAbove(Line line) {
        return pleats(line).map(every -> (count(line) - 1 + every - 1) / every * every + 1);
    }

    /** Whether its pleats are whole repeats; true where nothing is known. */
    public static boolean fits(Line line) {
        return pleats(line).map(every -> (count(line) - 1) % every == 0).orElse(true);
    }

    private static int count(Line line) {
        return line.to() - line.from() + 1;
    }
}
