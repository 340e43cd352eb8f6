package platekeep.client.plate.open;

import java.util.ArrayList;
import java.util.List;
import platekeep.client.library.Hand;
import platekeep.client.library.PlateVersion;

/** What is proposed when a version is saved. */
public final class Suggestions {
    /** A reason's first line stays readable in the history strip. */
    private static final int LONGEST = 100;

    private Suggestions() {}

    /** A reason made of what was changed: as many of the sentences as fit into one line, without the last full stop. */
    public static String reason(List<String> words) {
        StringBuilder reason = new StringBuilder();
        for (String sentence : words) {
            String plain = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
            String next = reason.length() == 0 ? plain : "; " + lowered(plain);
            if (reason.length() > 0 && reason.length() + next.length() > LONGEST) {
                break;
            }
            reason.append(next);
        }
        return capital(reason.toString());
    }

    private static String capital(String reason) {
        return reason.isEmpty() ? reason : Character.toUpperCase(reason.charAt(0)) + reason.substring(1);
    }

    private static String lowered(String sentence) {
        boolean isWord = sentence.length() > 1 && Character.isLowerCase(sentence.charAt(1));
        return isWord ? Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1) : sentence;
    }

    /** In whose name a version can be: her own first, then everybody in the plate's history. */
    public static List<Hand> hands(Hand own, List<PlateVersion> history) {
        List<Hand> hands = new ArrayList<>(List.of(own));
        history.stream()
                .map(step -> step.version().inNameOf())
                .distinct()
                .filter(hand -> !hand.equals(own))
                .forEach(hands::add);
        return hands;
    }
}
