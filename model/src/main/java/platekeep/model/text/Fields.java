package platekeep.model.text;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** The keys of one object: known ones are asked for by name, the rest is {@link #unknown()}. */
final class Fields {
    private final Piece.Obj object;
    private final List<String> known;
    private final Shapes shapes;

    /** Looks at the object's keys; {@code known} in the order in which they are written. */
    Fields(Piece.Obj object, List<String> known, Shapes shapes) {
        this.object = object;
        this.known = known;
        this.shapes = shapes;
        reportOrder();
    }

    int at() {
        return object.at();
    }

    Shapes shapes() {
        return shapes;
    }

    /** Where a key stands; the object's own place when it is not there. */
    int at(String key) {
        return piece(key).map(Piece::at).orElse(object.at());
    }

    Optional<Piece> piece(String key) {
        return Optional.ofNullable(object.members().get(key)).map(Piece.Member::piece);
    }

    /** The piece of a key that must be there. */
    Optional<Piece> required(String key) {
        Optional<Piece> piece = piece(key);
        if (piece.isEmpty()) {
            shapes.problems().found(Rule.MISSING_KEY, object.at(), Say.quoted(key) + " is missing here; add it.");
        }
        return piece;
    }

    String text(String key) {
        return required(key).map(p -> shapes.text(p, key)).orElse("");
    }

    String fitting(String key, Rule rule, Predicate<String> fits, String expected) {
        return required(key)
                .map(p -> shapes.fitting(p, key, rule, fits, expected))
                .orElse("");
    }

    int whole(String key) {
        return required(key).map(p -> shapes.whole(p, key)).orElse(0);
    }

    int whole(String key, Rule rule, int least, int most) {
        return required(key).map(p -> shapes.whole(p, key, rule, least, most)).orElse(least);
    }

    boolean truth(String key) {
        return required(key).map(p -> shapes.truth(p, key)).orElse(false);
    }

    List<Piece> list(String key) {
        return required(key).map(p -> shapes.list(p, key)).orElse(List.of());
    }

    /** A list of texts that must be there. */
    List<String> texts(String key) {
        return list(key).stream().map(p -> shapes.text(p, key)).toList();
    }

    /** A text that may be left out; an empty one counts as left out. */
    Optional<String> maybeText(String key) {
        return maybe(key, shapes::text).filter(text -> !isEmptyText(key, text));
    }

    /** A text that may be left out but must fit where it is there; empty when it does not. */
    Optional<String> maybeFitting(String key, Rule rule, Predicate<String> fits, String expected) {
        return maybe(key, (piece, k) -> shapes.fitting(piece, k, rule, fits, expected))
                .filter(text -> !text.isEmpty());
    }

    Optional<Integer> maybeWhole(String key) {
        return maybe(key, shapes::whole);
    }

    Optional<BigDecimal> maybeDecimal(String key) {
        return maybe(key, shapes::decimal);
    }

    /** A list that may be left out; one that is there with nothing in it is mended. */
    List<Piece> maybeList(String key) {
        Optional<List<Piece>> list = maybe(key, shapes::list);
        if (piece(key)
                .filter(p -> p instanceof Piece.Arr a && a.items().isEmpty())
                .isPresent()) {
            emptyKey(key);
        }
        return list.orElse(List.of());
    }

    /** The fields of an object that may be left out; one that is there with nothing in it is mended. */
    Optional<Fields> maybeFields(String key, List<String> keys) {
        Optional<Fields> fields = piece(key).flatMap(p -> shapes.fields(p, key, keys));
        if (fields.isPresent() && fields.get().object.members().isEmpty()) {
            emptyKey(key);
        }
        return fields;
    }

    private <T> Optional<T> maybe(String key, BiFunction<Piece, String, T> reader) {
        return piece(key).map(p -> reader.apply(p, key));
    }

    /** The keys that are not known here, with what they hold. */
    Unknown unknown() {
        Map<String, Value> rest = new LinkedHashMap<>();
        object.members().forEach((key, member) -> {
            if (!known.contains(key)) {
                rest.put(key, shapes.unknown(member.piece()));
            }
        });
        return rest.isEmpty() ? Unknown.NONE : new Unknown(rest);
    }

    private boolean isEmptyText(String key, String text) {
        if (text.isEmpty() && piece(key).filter(Piece.Str.class::isInstance).isPresent()) {
            emptyKey(key);
            return true;
        }
        return false;
    }

    private void emptyKey(String key) {
        shapes.problems().found(Rule.EMPTY_KEY, at(key), Say.quoted(key) + " held nothing; it is left out now.");
    }

    /** Known keys come first, in their order; then the unknown ones, sorted. */
    private void reportOrder() {
        int last = -1;
        String lastUnknown = null;
        for (Map.Entry<String, Piece.Member> entry : object.members().entrySet()) {
            String key = entry.getKey();
            int rank = known.indexOf(key);
            boolean misplaced = rank >= 0
                    ? lastUnknown != null || rank < last
                    : lastUnknown != null && CodePoints.ORDER.compare(key, lastUnknown) < 0;
            if (misplaced) {
                shapes.problems()
                        .found(
                                Rule.KEY_ORDER,
                                entry.getValue().at(),
                                Say.quoted(key) + " stood out of order; it is put in its place.");
                return;
            }
            last = rank >= 0 ? rank : last;
            lastUnknown = rank >= 0 ? lastUnknown : key;
        }
    }
}
