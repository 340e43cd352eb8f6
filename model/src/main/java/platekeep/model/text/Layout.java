package platekeep.model.text;

import java.util.Map;
import java.util.Set;
import platekeep.model.plate.Value;

/**
 * The canonical layout of a whole text: two spaces of indent, lists of the topmost object and the objects that are named
 * one element a line, all else on one line, LF line ends, one at the end.
 */
final class Layout {
    private static final String ELEMENT = "\n    ";
    private static final String CLOSE = "\n  ";

    private final StringBuilder out;
    private final Set<String> open;

    private Layout(int expected, Set<String> open) {
        this.out = new StringBuilder(expected);
        this.open = open;
    }

    /**
     * The text of an object.
     *
     * @param open keys of the topmost object whose objects are written one entry a line
     * @param expected about how long the text will be
     */
    static String text(Value.Entries top, Set<String> open, int expected) {
        return new Layout(expected, open).write(top);
    }

    private String write(Value.Entries top) {
        out.append('{');
        String gap = CLOSE;
        for (Map.Entry<String, Value> entry : top.entries().entrySet()) {
            out.append(gap);
            key(entry.getKey());
            value(entry.getKey(), entry.getValue());
            gap = "," + CLOSE;
        }
        return out.append(top.entries().isEmpty() ? "}\n" : "\n}\n").toString();
    }

    private void key(String key) {
        Value.appendQuoted(out, key);
        out.append(": ");
    }

    private void value(String key, Value value) {
        if (value instanceof Value.Items list && !list.items().isEmpty()) {
            String gap = "[" + ELEMENT;
            for (Value item : list.items()) {
                out.append(gap);
                item.appendTo(out);
                gap = "," + ELEMENT;
            }
            out.append(CLOSE).append(']');
        } else if (value instanceof Value.Entries object
                && open.contains(key)
                && !object.entries().isEmpty()) {
            String gap = "{" + ELEMENT;
            for (Map.Entry<String, Value> entry : object.entries().entrySet()) {
                out.append(gap);
                key(entry.getKey());
                entry.getValue().appendTo(out);
                gap = "," + ELEMENT;
            }
            out.append(CLOSE).append('}');
        } else {
            value.appendTo(out);
        }
    }
}
