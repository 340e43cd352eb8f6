package platekeep.model.stitch;

import java.util.Comparator;
import java.util.Optional;

/**
 * Something that the check found in a plate.
 *
 * @param severity how much it weighs
 * @param rule the rule's lasting name, in lower case with hyphens; see {@link Check}
 * @param row counted from the bottom, from 1; empty where it is about no row
 * @param pleat the pleat at which to look; empty where it is about none
 * @param text one sentence in words of the trade; it does not repeat row and pleat
 */
public record Finding(Severity severity, String rule, Optional<Integer> row, Optional<Integer> pleat, String text) {

    /** The weightiest first, then from the bottom, then from the left; what has no place comes last. */
    static final Comparator<Finding> ORDER = Comparator.comparing(Finding::severity)
            .thenComparing(f -> f.row().orElse(Integer.MAX_VALUE))
            .thenComparing(f -> f.pleat().orElse(Integer.MAX_VALUE));
}
