package platekeep.model.text;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import platekeep.model.plate.Value;

/**
 * Turns single pieces into what they should be, or says what they are instead. What is refused is answered with a
 * stand-in, so that reading goes on and all problems come to light; a reading with a problem never gives a plate.
 */
final class Shapes {
    private final Problems problems;

    Shapes(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    /** A text of a known key, in NFC. */
    String text(Piece piece, String key) {
        if (!(piece instanceof Piece.Str text)) {
            wrongType(piece, key, "a text");
            return "";
        }
        if (isPlain(text.text()) || Normalizer.isNormalized(text.text(), Normalizer.Form.NFC)) {
            return text.text();
        }
        problems.found(Rule.NFC, piece.at(), Say.quoted(key) + " was written with combining marks; now as one text.");
        return Normalizer.normalize(text.text(), Normalizer.Form.NFC);
    }

    /** Below U+0300 there is nothing to combine. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= 0x300) {
                return false;
            }
        }
        return true;
    }

    /** A text that fits; {@code expected} ends the sentence "... is ...". */
    String fitting(Piece piece, String key, Rule rule, Predicate<String> fits, String expected) {
        String text = text(piece, key);
        if (piece instanceof Piece.Str && !fits.test(text)) {
            problems.found(
                    rule,
                    piece.at(),
                    Say.quoted(key) + " is " + expected + ", not " + Say.quoted(text) + "; change it.");
            return "";
        }
        return text;
    }

    /** A whole number from {@code least} to {@code most}. */
    int whole(Piece piece, String key, Rule rule, int least, int most) {
        if (!(piece instanceof Piece.Num num) || num.number().scale() > 0) {
            wrongType(piece, key, "a whole number");
            return least;
        }
        BigDecimal number = num.number();
        if (number.compareTo(BigDecimal.valueOf(least)) < 0 || number.compareTo(BigDecimal.valueOf(most)) > 0) {
            problems.found(
                    rule,
                    piece.at(),
                    Say.quoted(key) + " is a whole number from " + least + " to " + most + ", not "
                            + number.toPlainString() + "; change it.");
            return least;
        }
        return number.intValue();
    }

    /** A whole number of a plate without bounds of its own. */
    int whole(Piece piece, String key) {
        return whole(piece, key, Rule.NUMBER_RANGE, -Integer.MAX_VALUE, Integer.MAX_VALUE);
    }

    BigDecimal decimal(Piece piece, String key) {
        if (piece instanceof Piece.Num num) {
            return num.number();
        }
        wrongType(piece, key, "a number");
        return BigDecimal.ZERO;
    }

    boolean truth(Piece piece, String key) {
        if (piece instanceof Piece.Truth truth) {
            return truth.truth();
        }
        wrongType(piece, key, "true or false");
        return false;
    }

    List<Piece> list(Piece piece, String key) {
        if (piece instanceof Piece.Arr list) {
            return list.items();
        }
        wrongType(piece, key, "a list");
        return List.of();
    }

    Optional<Piece.Obj> object(Piece piece, String key) {
        if (piece instanceof Piece.Obj object) {
            return Optional.of(object);
        }
        wrongType(piece, key, "an object");
        return Optional.empty();
    }

    /** The fields of a piece that should be an object; of an empty one in its place when it is none. */
    Optional<Fields> fields(Piece piece, String key, List<String> known) {
        return object(piece, key).map(object -> new Fields(object, known, this));
    }

    /** A set of texts: doubles are reported and left out, the order stays as it is. */
    List<String> set(List<Piece> pieces, String key, Function<Piece, String> reader) {
        List<String> out = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Piece piece : pieces) {
            String text = reader.apply(piece);
            if (seen.add(text)) {
                out.add(text);
            } else if (piece instanceof Piece.Str) {
                problems.found(
                        Rule.DOUBLE,
                        piece.at(),
                        Say.quoted(text) + " stood twice in " + Say.quoted(key) + "; one is left out now.");
            }
        }
        return out;
    }

    /** Reports a list that was not sorted. */
    void inOrder(String key, int at, List<?> given, List<?> sorted) {
        if (!given.equals(sorted)) {
            problems.found(Rule.LIST_ORDER, at, Say.quoted(key) + " stood out of order; it is sorted now.");
        }
    }

    /** What is unknown, as it is but for the order of keys. */
    Value unknown(Piece piece) {
        Value value = piece.value();
        Value sorted = Value.sorted(value);
        if (!sorted.text().equals(value.text())) {
            problems.found(Rule.KEY_ORDER, piece.at(), "the keys in here stood in another order; now they are sorted.");
        }
        return sorted;
    }

    void wrongType(Piece piece, String key, String expected) {
        problems.found(
                Rule.WRONG_TYPE,
                piece.at(),
                Say.quoted(key) + " is " + expected + ", not " + piece.kind() + "; change it.");
    }
}
