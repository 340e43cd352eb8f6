package platekeep.client.gui;

import java.util.Locale;

/** What is done on the Join screen, by keys; each waits until it is seen to be done. */
final class Deciding {
    private final Program program;

    Deciding(Program program) {
        this.program = program;
    }

    void isAt(String place) {
        program.says("join-where", place);
        program.until("join-who-1", "is there", Seen::showing);
    }

    void goTo(String place) {
        program.keys("N");
        isAt(place);
    }

    /** The number beside an answer, which is the key that takes it. */
    private int keyOf(String who) {
        for (int answer = 1; program.see("join-who-" + answer).showing(); answer++) {
            if (program.see("join-who-" + answer).text().equals(who)) {
                return answer;
            }
        }
        throw new AssertionError("no answer is called " + who);
    }

    void take(String who) {
        program.keys(String.valueOf(keyOf(who)));
    }

    void take(String who, String counter) {
        take(who);
        program.says("join-counter", counter);
    }

    void isOffered(String who, String detail, String value) {
        int answer = keyOf(who);
        program.says("join-detail-" + answer, detail);
        program.says("join-value-" + answer, value);
    }

    /** The n-th entry of the menu with answers for all the rest, from 1. */
    void takeForAll(int entry, String counter) {
        program.keys("A");
        program.until("join-rest-mine", "is offered", Seen::showing);
        for (int i = 0; i < entry; i++) {
            program.keys("DOWN");
        }
        program.keys("ENTER");
        program.says("join-counter", counter);
    }

    void takeBack(String counter) {
        program.keys("ctrl Z");
        program.says("join-counter", counter);
    }

    void stands(String words, String state) {
        program.until(
                "join-matters",
                "has " + words + " at " + state,
                seen -> seen.items().stream()
                        .anyMatch(item -> item.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT))
                                && item.contains(state)));
    }

    void downTo(String words) {
        program.keys("DOWN");
        isAt(words);
    }
}
