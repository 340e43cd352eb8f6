package platekeep.model.text;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Age;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;
import platekeep.model.plate.State;
import platekeep.model.plate.Value;

/**
 * A plate as text: one JSON file (RFC 8259), laid out so that one chart row is one line.
 *
 * <p>Writing is a function of the plate's meaning alone: two equal plates are the same bytes, and a file in the canonical
 * form, read and written again, does not change by a byte. Reading puts right what changes no meaning (order, spacing,
 * normal form, doubles) and says so; it refuses all else that breaks the format, with every problem at once, and never
 * throws for what stands in a file.
 */
public final class PlateText {
    private static final Set<String> OPEN = Set.of("colours");

    private static final Document<Plate> DOCUMENT =
            new Document<>("plate", OPEN, (top, problems) -> new PlateReader(top, problems).plate(), PlateText::write);

    private PlateText() {}

    /**
     * Reads a plate.
     *
     * @param file the name that problems are to call the file by
     * @param bytes the whole file
     */
    public static Reading<Plate> read(String file, byte[] bytes) {
        return read(file, ByteBuffer.wrap(bytes));
    }

    /**
     * The same for bytes that lie in a larger memory.
     *
     * @param bytes on an array, from its beginning; nothing of it is kept
     */
    public static Reading<Plate> read(String file, ByteBuffer bytes) {
        Optional<Plate> canonical = CanonicalPlate.read(bytes);
        return canonical.isPresent()
                ? new Reading.Good<>(canonical.get(), List.of())
                : readByPieces(file, Arrays.copyOf(bytes.array(), bytes.limit()));
    }

    /** Reads a plate without the short way for texts in the canonical form. */
    static Reading<Plate> readByPieces(String file, byte[] bytes) {
        return DOCUMENT.read(file, bytes);
    }

    /**
     * Reads a plate of a newer format ({@code newer-format} by {@link #read}) by the rules of this one, to look at it as far
     * as possible. What comes of it must never be written: its meaning may be another, and {@code format} is lost.
     */
    public static Reading<Plate> readNewer(String file, byte[] bytes) {
        return DOCUMENT.readNewer(file, bytes);
    }

    /** The canonical text, with a line end at its end. */
    public static String write(Plate plate) {
        int cells = plate.rows().size() * (plate.positions() + 16);
        return Layout.text(entries(plate), OPEN, cells + 1024);
    }

    /**
     * The canonical text in UTF-8.
     *
     * @throws IllegalArgumentException when a text of the plate holds an unpaired surrogate
     */
    public static byte[] bytes(Plate plate) {
        return PlainText.encode(write(plate));
    }

    private static Value.Entries entries(Plate plate) {
        Value.Builder out = new Value.Builder()
                .put("format", DOCUMENT.format())
                .put("id", plate.id())
                .put("title", plate.title())
                .putIf("number", plate.number(), Value::of)
                .putIf("origin", some(plate.origin().value()), v -> v)
                .putIf("from plate", plate.fromPlate(), FromPlate::value)
                .putIf("state", plate.state().map(State::word), Value::of)
                .putIf("for", some(plate.uses()), Value::ofTexts)
                .put("themes", Value.ofTexts(plate.themes()))
                .put("ages", Value.ofTexts(plate.ages().stream().map(Age::word).toList()))
                .put("designers", Value.ofTexts(plate.designers()))
                .put("notes", Value.ofTexts(plate.notes()))
                .put("colours", colours(plate.palette()))
                .putIf("pleats", plate.pleats(), Pleats::value)
                .putIf("cloth", some(plate.cloth().value()), v -> v)
                .putIf("starts", items(plate.starts().stream().map(Start::value).toList()), v -> v)
                .putIf("repeat", plate.repeat(), Repeat::value)
                .put("rows", Value.ofTexts(plate.rows().stream().map(Row::text).toList()));
        return aside(plate, out).putAll(plate.unknown()).build();
    }

    /** What comes after the rows. */
    private static Value.Builder aside(Plate plate, Value.Builder out) {
        return out.putIf("lines", items(plate.lines().stream().map(Line::value).toList()), v -> v)
                .putIf("marks", items(plate.marks().stream().map(Mark::value).toList()), v -> v)
                .putIf(
                        "notions",
                        items(plate.notions().stream().map(Notion::value).toList()),
                        v -> v)
                .putIf(
                        "remarks",
                        items(plate.remarks().stream().map(Remark::value).toList()),
                        v -> v)
                .putIf(
                        "clashes",
                        items(plate.clashes().stream().map(Clash::value).toList()),
                        v -> v);
    }

    /** The palette as it stands in a text: key to colour. */
    static Value.Entries colours(Palette palette) {
        Value.Builder out = new Value.Builder();
        palette.entries().forEach((Character key, Colour colour) -> out.put(key.toString(), colour.value()));
        return out.build();
    }

    private static Optional<Value.Entries> some(Value.Entries entries) {
        return Optional.of(entries).filter(e -> !e.entries().isEmpty());
    }

    private static <T> Optional<List<T>> some(List<T> list) {
        return Optional.of(list).filter(l -> !l.isEmpty());
    }

    private static Optional<Value> items(List<Value.Entries> list) {
        return some(list).map(l -> new Value.Items(List.copyOf(l)));
    }
}
