package platekeep.client.look;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * What the search by look shows.
 *
 * @param way what is searched for
 * @param asked the picture that was asked for; empty where words or near doubles are
 * @param askedTitle what to call it
 * @param words the words asked for
 * @param options how the search is made
 * @param cards what was found
 * @param summary in words how much that is, or what to do
 * @param progress how far the search has come, in words; empty when none is under way
 */
public record LookState(
        Way way,
        Optional<Plate> asked,
        String askedTitle,
        String words,
        Options options,
        List<LookCard> cards,
        String summary,
        String progress) {

    /** What can be searched for. */
    public enum Way {
        LIKE("Like a plate"),
        MOTIF("With a motif"),
        DOUBLES("Near doubles"),
        ONCE("In old versions");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * What is known of the chosen hit.
     *
     * @param card the hit
     * @param beside what it is compared with; empty where there is nothing
     * @param besideTitle what to call that
     * @param differences how the two differ, in words; empty where that is not told
     * @param canCompare whether the two can be put side by side
     * @param canBringBack whether it is an old version that can be brought back
     */
    public record Detail(
            LookCard card,
            Optional<Plate> beside,
            String besideTitle,
            List<String> differences,
            boolean canCompare,
            boolean canBringBack) {
        public Detail {
            differences = List.copyOf(differences);
        }
    }

    public LookState {
        cards = List.copyOf(cards);
    }
}
