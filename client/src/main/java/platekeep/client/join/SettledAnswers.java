package platekeep.client.join;

import java.util.List;
import platekeep.model.join.Settled;
import platekeep.model.join.back.Reversal;
import platekeep.model.plate.Plate;

/** The answers to what was settled by itself: before, and the change. */
final class SettledAnswers {
    private SettledAnswers() {}

    static List<Choice> of(Case of, Settlement settlement, Plate now) {
        Reversal reversal = settlement.reversal();
        if (!settlement.isAlone()) {
            return List.of();
        }
        Reversal.Standing standing = reversal.standing(now);
        return List.of(
                new Choice(
                        "Before",
                        "as you both had it",
                        "without this change",
                        reversal::out,
                        () -> reversal.out(now),
                        standing == Reversal.Standing.OUT),
                new Choice(
                        who(of, reversal.settled().by()),
                        when(of, reversal.settled().by()),
                        settlement.words(),
                        reversal::in,
                        () -> reversal.in(now),
                        standing == Reversal.Standing.IN));
    }

    static String who(Case of, Settled.By by) {
        return switch (by) {
            case MINE -> "Yours";
            case THEIRS -> of.theirs().name().orElse("The partner");
            case BOTH -> "Both of you";
        };
    }

    private static String when(Case of, Settled.By by) {
        return switch (by) {
            case MINE ->
                of.mine().name().map(name -> name + ", ").orElse("") + of.mine().when();
            case THEIRS -> of.theirs().when();
            case BOTH -> "the same change";
        };
    }
}
