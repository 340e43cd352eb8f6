package platekeep.model.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads characters as JSON in one pass over Jackson's tokens, as strictly as RFC 8259 has it: no comments, no trailing
 * commas, no single quotes, no leading zeros, no NaN (sections 2 to 7; all of them off in a plain {@link JsonFactory}).
 * Stricter than the RFC, which leaves it open: a key may stand only once (section 4: "names within an object SHOULD be
 * unique"), nothing follows the value, no unpaired surrogate (section 8.2), no control character but tab.
 */
final class PieceReader {

    /** Objects and lists within one another, the whole text counted as the first. */
    static final int DEEPEST = 64;

    /** A number has at most so many digits: those that a double keeps. */
    static final int MOST_DIGITS = 15;

    private static final String HALF_A_CHARACTER = "the text holds half a character (a lone surrogate); take it out.";

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(1000)
                    .maxStringLength(PlainText.LONGEST)
                    .maxNameLength(PlainText.LONGEST)
                    .maxNumberLength(PlainText.LONGEST)
                    .build())
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .build();

    private final JsonParser parser;
    private final Problems problems;

    private PieceReader(JsonParser parser, Problems problems) {
        this.parser = parser;
        this.problems = problems;
    }

    /** The whole text as one piece; empty when it is no JSON (the problems say why). */
    static Optional<Piece> read(String text, Problems problems) {
        char[] characters = text.toCharArray();
        try (JsonParser parser = FACTORY.createParser(characters)) {
            return new PieceReader(parser, problems).whole(text.length());
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory failed", e);
        }
    }

    private Optional<Piece> whole(int length) throws IOException {
        try {
            if (parser.nextToken() == null) {
                problems.found(Rule.NOT_JSON, 0, "the file is empty; take it from an earlier version.");
                return Optional.empty();
            }
            Piece piece = piece(1);
            if (parser.nextToken() != null) {
                problems.found(
                        Rule.TEXT_AFTER_END, tokenAt(), "something follows after the end; take out what is too much.");
            }
            return Optional.of(piece);
        } catch (JsonEOFException e) {
            problems.found(
                    Rule.NOT_JSON, length, "the text breaks off before its end; take it from an earlier version.");
        } catch (StreamConstraintsException e) {
            problems.found(Rule.NESTING, errorAt(e, length), "objects and lists stand too deep within one another.");
        } catch (JsonProcessingException e) {
            malformed(e, errorAt(e, length));
        }
        return Optional.empty();
    }

    /** The piece that begins with the current token. */
    private Piece piece(int depth) throws IOException {
        int at = tokenAt();
        return switch (parser.currentToken()) {
            case START_OBJECT -> inside(depth, at) ? object(depth, at) : new Piece.Nothing(at);
            case START_ARRAY -> inside(depth, at) ? list(depth, at) : new Piece.Nothing(at);
            case VALUE_STRING -> new Piece.Str(at, checked(parser.getText(), at));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Piece.Num(at, number(parser.getText(), at));
            case VALUE_TRUE -> new Piece.Truth(at, true);
            case VALUE_FALSE -> new Piece.Truth(at, false);
            case VALUE_NULL -> new Piece.Nothing(at);
            default -> throw new IllegalStateException("no value begins with " + parser.currentToken());
        };
    }

    private boolean inside(int depth, int at) throws IOException {
        if (depth <= DEEPEST) {
            return true;
        }
        problems.found(
                Rule.NESTING, at, "objects and lists stand more than " + DEEPEST + " deep within one another here.");
        parser.skipChildren();
        return false;
    }

    /** Jackson itself refuses half a character in a name, and says so only in its message. */
    private void malformed(JsonProcessingException e, int at) {
        if (e.getOriginalMessage().contains("surrogate")) {
            problems.found(Rule.LONE_SURROGATE, at, HALF_A_CHARACTER);
        } else {
            problems.found(
                    Rule.NOT_JSON,
                    at,
                    "the text is not well formed here; look for a missing or needless comma, quote or bracket.");
        }
    }

    private Piece object(int depth, int at) throws IOException {
        Map<String, Piece.Member> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            int keyAt = tokenAt();
            String key = checked(parser.currentName(), keyAt);
            parser.nextToken();
            Piece.Member member = new Piece.Member(keyAt, piece(depth + 1));
            if (members.putIfAbsent(key, member) != null) {
                problems.found(
                        Rule.DOUBLE_KEY, keyAt, Say.quoted(key) + " stands twice in one object; take one of them out.");
            }
        }
        return new Piece.Obj(at, members);
    }

    private Piece list(int depth, int at) throws IOException {
        List<Piece> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(piece(depth + 1));
        }
        return new Piece.Arr(at, items);
    }

    /** The text as it is, after looking for characters that no text may hold. */
    private String checked(String text, int at) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ' ' && c < 0x7f) {
                continue;
            }
            if (Character.isISOControl(c) && c != '\t') {
                problems.found(
                        Rule.CONTROL_CHARACTER,
                        at,
                        String.format("the text holds the control character U+%04X; take it out.", (int) c));
                return text;
            }
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
            } else if (Character.isSurrogate(c)) {
                problems.found(Rule.LONE_SURROGATE, at, HALF_A_CHARACTER);
                return text;
            }
        }
        return text;
    }

    private BigDecimal number(String written, int at) {
        Optional<BigDecimal> number = number(written);
        if (number.isEmpty()) {
            problems.found(
                    Rule.NUMBER_DIGITS,
                    at,
                    "a number has at most " + MOST_DIGITS + " digits, written out; shorten it.");
        }
        return number.orElse(BigDecimal.ZERO);
    }

    /** The number, if neither as it stands nor written out plainly it has too many digits. */
    private static Optional<BigDecimal> number(String written) {
        if (written.length() > 2 * MOST_DIGITS) {
            return Optional.empty();
        }
        BigDecimal number;
        try {
            number = new BigDecimal(written);
        } catch (NumberFormatException e) {
            return Optional.empty(); // the exponent alone is beyond all measure
        }
        BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        long whole = Math.max(0L, (long) plain.precision() - plain.scale());
        long digits = whole + Math.max(0, plain.scale());
        return Math.max(digits, number.precision()) > MOST_DIGITS ? Optional.empty() : Optional.of(plain);
    }

    private int tokenAt() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    private static int errorAt(JsonProcessingException e, int length) {
        long at = e.getLocation() == null ? length : e.getLocation().getCharOffset();
        return (int) Math.max(0, Math.min(at, length));
    }
}
