package platekeep.model.look;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import platekeep.model.plate.Plate;

/**
 * A plate that looks like another one.
 *
 * @param at where it stands in the list that was given
 * @param mirror how it lies to the other one
 * @param likeness from 0 to 1: that of the signatures, or the share of places that agree where that is more
 * @param why in words
 */
public record Alike(int at, Mirror mirror, double likeness, String why) {
    /**
     * Pictures less like than this have little to do with each other. Measured on ten thousand made-up plates: a plate that
     * was mirrored, moved, recoloured, edited or worked larger or smaller stays above it, always; of other plates it
     * lets one in eighty through, where 0.5 would let one in seven.
     */
    public static final double LEAST = 0.7;

    /**
     * Those that look like a plate, the likest first: the likest by their signatures, then laid over it one by one.
     *
     * @param looks the signatures of all
     * @param plates the plates, in the same order
     */
    public static List<Alike> of(Plate asked, Looks looks, IntFunction<Plate> plates, int most) {
        Optional<Signature> signature = Signature.of(asked);
        if (signature.isEmpty()) {
            return List.of();
        }
        Overlay.Laid laid = Overlay.Laid.of(asked);
        List<Alike> alike = new ArrayList<>();
        for (Looks.Near near : looks.nearest(signature.get(), most)) {
            if (near.likeness() >= LEAST) {
                alike.add(of(near, laid, plates.apply(near.at())));
            }
        }
        alike.sort(Comparator.comparingDouble(Alike::likeness).reversed());
        return alike;
    }

    /** What is to be told of one that is near by its signature. */
    public static Alike of(Looks.Near near, Overlay.Laid asked, Plate other) {
        Optional<Overlay> over = asked.over(Overlay.Laid.of(other), near.mirror());
        double likeness = Math.max(near.likeness(), over.map(Overlay::agreement).orElse(0.0));
        return new Alike(near.at(), near.mirror(), likeness, LikeWords.of(near.mirror(), near.likeness(), over));
    }
}
