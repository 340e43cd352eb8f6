package platekeep.client.gui;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What was seen of a component at one moment.
 *
 * @param facts as {@link Eye} gave them; empty when there is no such component
 */
record Seen(Map<String, String> facts) {
    Seen {
        facts = Map.copyOf(facts);
    }

    boolean showing() {
        return is("showing");
    }

    boolean enabled() {
        return is("enabled");
    }

    boolean selected() {
        return is("selected");
    }

    boolean focus() {
        return is("focus");
    }

    /** Whether the mouse would reach it: it shows, something of it is in view, and no dialog lies over it. */
    boolean reachable() {
        return showing() && enabled() && !is("blocked") && number("width") > 0 && number("height") > 0;
    }

    String text() {
        return facts.getOrDefault("text", "");
    }

    Point middle() {
        return new Point(number("x") + number("width") / 2, number("y") + number("height") / 2);
    }

    /** What of it is in view, on the screen. */
    Rectangle place() {
        return new Rectangle(number("x"), number("y"), number("width"), number("height"));
    }

    /** The items of a list, each as its own words. */
    List<String> items() {
        return IntStream.range(0, facts.containsKey("size") ? number("size") : 0)
                .mapToObj(i -> facts.getOrDefault("item" + i, ""))
                .toList();
    }

    int chosen() {
        return number("chosen");
    }

    /** The middle of an item of a list. */
    Point cell(int index) {
        String[] at = facts.get("cell" + index).split(" ");
        return new Point(Integer.parseInt(at[0]), Integer.parseInt(at[1]));
    }

    private boolean is(String fact) {
        return Boolean.parseBoolean(facts.get(fact));
    }

    private int number(String fact) {
        return Integer.parseInt(facts.getOrDefault(fact, "-1"));
    }
}
