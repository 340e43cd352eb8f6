package platekeep.model.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says in what way one picture is like another. */
public final class LikeWords {
    /** From this share of places on that agree, what differs says more than how much. */
    private static final double ALIKE = 0.75;

    private static final double VERY = 0.9;
    private static final double MUCH = 0.8;

    private LikeWords() {}

    /**
     * @param likeness of the signatures
     * @param over one laid over the other; empty where their sizes are too different for that
     */
    public static String of(Mirror mirror, double likeness, Optional<Overlay> over) {
        List<String> words = new ArrayList<>();
        if (mirror != Mirror.NONE) {
            words.add(mirror.words());
        }
        if (over.isEmpty()) {
            words.add(degree(likeness) + " in another size");
        } else if (over.get().agreement() < ALIKE) {
            words.add(degree(likeness));
        } else {
            words.add(difference(over.get()));
            words.add(over.get().sameColours() ? "same colours" : "other colours");
        }
        return String.join(", ", words);
    }

    private static String degree(double likeness) {
        return likeness >= VERY ? "very much alike" : likeness >= MUCH ? "much alike" : "somewhat alike";
    }

    private static String difference(Overlay over) {
        String apart = over.part() ? " but for a band" : "";
        if (over.isSame()) {
            return "same shape" + apart;
        }
        String places = over.places() == 1 ? "1 cable differs" : count(over.places(), "cable") + " differ";
        return places + " in " + count(over.rows(), "row") + apart;
    }

    private static String count(int count, String word) {
        return count == 1 ? "1 " + word : count + " " + word + "s";
    }
}
