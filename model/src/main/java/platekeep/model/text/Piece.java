package platekeep.model.text;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import platekeep.model.plate.Value;

/** A piece of JSON together with where it stands: {@code at} is the offset of its first character. */
sealed interface Piece {

    int at();

    /** The piece as plain data, its keys in the order they stand in. */
    Value value();

    /** What it is, in words: {@code a text}, {@code a list} ... */
    String kind();

    /** An entry of an object; {@code at} is where its key stands. */
    record Member(int at, Piece piece) {}

    record Obj(int at, Map<String, Member> members) implements Piece {
        @Override
        public Value value() {
            Map<String, Value> out = new LinkedHashMap<>();
            members.forEach((key, member) -> out.put(key, member.piece().value()));
            return new Value.Entries(out);
        }

        @Override
        public String kind() {
            return "an object";
        }
    }

    record Arr(int at, List<Piece> items) implements Piece {
        @Override
        public Value value() {
            return new Value.Items(items.stream().map(Piece::value).toList());
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    record Str(int at, String text) implements Piece {
        @Override
        public Value value() {
            return Value.of(text);
        }

        @Override
        public String kind() {
            return "a text";
        }
    }

    record Num(int at, BigDecimal number) implements Piece {
        @Override
        public Value value() {
            return new Value.Num(number);
        }

        @Override
        public String kind() {
            return "a number";
        }
    }

    record Truth(int at, boolean truth) implements Piece {
        @Override
        public Value value() {
            return Value.of(truth);
        }

        @Override
        public String kind() {
            return "true or false";
        }
    }

    record Nothing(int at) implements Piece {
        @Override
        public Value value() {
            return Value.NOTHING;
        }

        @Override
        public String kind() {
            return "null";
        }
    }
}
