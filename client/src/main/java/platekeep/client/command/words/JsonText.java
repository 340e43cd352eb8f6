package platekeep.client.command.words;

import java.util.List;
import java.util.Map;
import platekeep.model.plate.Value;

/** Answers as JSON: arrays and the lists in objects one element a line, all else on one line. */
final class JsonText {

    private JsonText() {}

    static String array(List<? extends Value> items) {
        StringBuilder out = new StringBuilder();
        append(out, items, "");
        return out.toString();
    }

    static String object(Value.Entries object) {
        StringBuilder out = new StringBuilder("{");
        String gap = "\n";
        for (Map.Entry<String, Value> entry : object.entries().entrySet()) {
            out.append(gap).append("  ");
            Value.appendQuoted(out, entry.getKey());
            out.append(": ");
            if (entry.getValue() instanceof Value.Items list) {
                append(out, list.items(), "  ");
            } else {
                entry.getValue().appendTo(out);
            }
            gap = ",\n";
        }
        return out.append("\n}").toString();
    }

    private static void append(StringBuilder out, List<? extends Value> items, String indent) {
        if (items.isEmpty()) {
            out.append("[]");
            return;
        }
        out.append('[');
        String gap = "\n";
        for (Value item : items) {
            out.append(gap).append(indent).append("  ");
            item.appendTo(out);
            gap = ",\n";
        }
        out.append('\n').append(indent).append(']');
    }
}
