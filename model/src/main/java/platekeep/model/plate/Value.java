package platekeep.model.plate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A piece of JSON as plain data: what a clash holds as its values, and what keys that this version does not know hold.
 *
 * <p>{@link #text()} is the canonical text on one line: a space after {@code :} and {@code ,}, none inside the braces.
 * Entries keep the order they are given in; whoever makes them puts known keys first and unknown ones sorted after.
 */
public sealed interface Value {

    /** The JSON {@code null}: there was nothing, or a side took it away. */
    Value NOTHING = new Nothing();

    /** The canonical text of this value, on one line. */
    default String text() {
        StringBuilder out = new StringBuilder();
        appendTo(out);
        return out.toString();
    }

    /** Appends the canonical text to {@code out}. */
    void appendTo(StringBuilder out);

    /** The order in which sides of a clash stand: nothing first, then by canonical text in code point order. */
    Comparator<Value> ORDER =
            Comparator.comparing((Value v) -> !(v instanceof Nothing)).thenComparing(Value::text, CodePoints.ORDER);

    static Value of(String text) {
        return new Text(text);
    }

    static Value of(long number) {
        return new Num(BigDecimal.valueOf(number));
    }

    static Value of(boolean truth) {
        return new Truth(truth);
    }

    /** A list whose items are texts. */
    static Value ofTexts(List<String> texts) {
        return new Items(texts.stream().map(Value::of).toList());
    }

    /** {@code null} in the text. */
    record Nothing() implements Value {
        @Override
        public void appendTo(StringBuilder out) {
            out.append("null");
        }
    }

    /** A text, as it is after unescaping. */
    record Text(String string) implements Value {
        @Override
        public void appendTo(StringBuilder out) {
            appendQuoted(out, string);
        }
    }

    /** A number; equal numbers are equal whatever their scale was. */
    record Num(BigDecimal number) implements Value {
        public Num {
            number = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        }

        @Override
        public void appendTo(StringBuilder out) {
            out.append(number.toPlainString());
        }
    }

    /** {@code true} or {@code false}. */
    record Truth(boolean truth) implements Value {
        @Override
        public void appendTo(StringBuilder out) {
            out.append(truth);
        }
    }

    /** A JSON array. */
    record Items(List<Value> items) implements Value {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public void appendTo(StringBuilder out) {
            out.append('[');
            String gap = "";
            for (Value item : items) {
                out.append(gap);
                item.appendTo(out);
                gap = ", ";
            }
            out.append(']');
        }
    }

    /** A JSON object; the order of its keys is the order it is written in, but does not count for equality. */
    record Entries(Map<String, Value> entries) implements Value {
        public Entries {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public void appendTo(StringBuilder out) {
            out.append('{');
            String gap = "";
            for (Map.Entry<String, Value> entry : entries.entrySet()) {
                out.append(gap);
                appendQuoted(out, entry.getKey());
                out.append(": ");
                entry.getValue().appendTo(out);
                gap = ", ";
            }
            out.append('}');
        }
    }

    /** Collects entries in the order they are put in, leaving out what is empty. */
    final class Builder {
        private final Map<String, Value> entries = new LinkedHashMap<>();

        public Builder put(String key, Value value) {
            entries.put(key, value);
            return this;
        }

        public Builder put(String key, String text) {
            return put(key, Value.of(text));
        }

        public Builder put(String key, long number) {
            return put(key, Value.of(number));
        }

        /** Puts the value only where there is one. */
        public <T> Builder putIf(String key, Optional<T> maybe, Function<T, Value> toValue) {
            maybe.ifPresent(t -> put(key, toValue.apply(t)));
            return this;
        }

        /** Puts keys that this version does not know, in their sorted order. */
        public Builder putAll(Unknown unknown) {
            entries.putAll(unknown.entries());
            return this;
        }

        public Entries build() {
            return new Entries(entries);
        }
    }

    /** The same value with the keys of all objects in it sorted by code point, in depth: the form of what is unknown. */
    static Value sorted(Value value) {
        if (value instanceof Items list) {
            return new Items(list.items().stream().map(Value::sorted).toList());
        }
        if (value instanceof Entries object) {
            List<String> keys = new ArrayList<>(object.entries().keySet());
            keys.sort(CodePoints.ORDER);
            Map<String, Value> sorted = new LinkedHashMap<>();
            keys.forEach(key -> sorted.put(key, sorted(object.entries().get(key))));
            return new Entries(sorted);
        }
        return value;
    }

    /** Appends a JSON string, escaped only where JSON demands it, all else raw. */
    static void appendQuoted(StringBuilder out, String text) {
        out.append('"');
        int done = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < 0x20 || c == '"' || c == '\\') {
                out.append(text, done, i);
                appendEscaped(out, c);
                done = i + 1;
            }
        }
        out.append(text, done, text.length()).append('"');
    }

    private static void appendEscaped(StringBuilder out, char c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\b' -> out.append("\\b");
            case '\f' -> out.append("\\f");
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> out.append(String.format("\\u%04x", (int) c));
        }
    }
}
