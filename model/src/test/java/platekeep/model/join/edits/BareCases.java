package platekeep.model.join.edits;

import java.util.Random;

/** Cases whose rows have no ids. */
final class BareCases {
    private BareCases() {}

    static Case of(Case with, Random chance) {
        return with;
    }
}
