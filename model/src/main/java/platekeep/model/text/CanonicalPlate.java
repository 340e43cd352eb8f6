package platekeep.model.text;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import platekeep.model.plate.Age;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.State;

/**
 * Reads a plate whose text is in the canonical form in one pass over its bytes, many times faster than piece by piece: a
 * library of ten thousand plates is read whenever it is opened. It knows the common things only (no remarks, no clashes,
 * no unknown keys, no escapes) and gives up at anything else, also at every fault: then {@link PlateReader} reads the text
 * and says what is wrong. What it reads, that one reads equal and without a problem; a property test holds the two
 * together.
 */
final class CanonicalPlate {
    private static final byte[] FORMAT = Scan.ascii("{\n  \"format\": \"plate " + Document.VERSION + "\"");
    private static final byte[] END = Scan.ascii("\n}\n");
    private static final byte[] LIST = Scan.ascii("[\n    ");
    private static final byte[] NO_LIST = Scan.ascii("[]");
    private static final byte[] LIST_END = Scan.ascii("\n  ]");
    private static final byte[] NEXT = Scan.ascii(",\n    ");
    private static final byte[] COLOURS = Scan.ascii("{\n    ");
    private static final byte[] NO_COLOURS = Scan.ascii("{}");
    private static final byte[] COLOURS_END = Scan.ascii("\n  }");

    private static final byte[] ID = top("id");
    private static final byte[] TITLE = top("title");
    private static final byte[] NUMBER = top("number");
    private static final byte[] ORIGIN = top("origin");
    private static final byte[] FROM_PLATE = top("from plate");
    private static final byte[] STATE = top("state");
    private static final byte[] FOR = top("for");
    private static final byte[] THEMES = top("themes");
    private static final byte[] AGES = top("ages");
    private static final byte[] DESIGNERS = top("designers");
    private static final byte[] NOTES = top("notes");
    private static final byte[] PALETTE = top("colours");
    private static final byte[] PLEATS = top("pleats");
    private static final byte[] CLOTH = top("cloth");
    private static final byte[] STARTS = top("starts");
    private static final byte[] REPEAT = top("repeat");
    private static final byte[] ROWS = top("rows");
    private static final byte[] LINES = top("lines");
    private static final byte[] MARKS = top("marks");
    private static final byte[] NOTIONS = top("notions");

    private final Scan scan;
    private final CanonicalParts parts;

    private CanonicalPlate(ByteBuffer bytes) {
        this.scan = new Scan(bytes);
        this.parts = new CanonicalParts(scan);
    }

    /** The plate; empty where the text has to be read piece by piece. */
    static Optional<Plate> read(ByteBuffer bytes) {
        if (bytes.limit() > PlainText.LONGEST) {
            return Optional.empty();
        }
        try {
            return Optional.of(new CanonicalPlate(bytes).plate());
        } catch (Scan.Otherwise e) {
            return Optional.empty();
        }
    }

    private static byte[] top(String key) {
        return Scan.ascii(",\n  \"" + key + "\": ");
    }

    private Plate plate() throws Scan.Otherwise {
        scan.must(FORMAT);
        scan.must(ID);
        String id = fitting(scan.text(), Words.UUID);
        scan.must(TITLE);
        Draft draft = new Draft(id, fitting(scan.text(), Words.NOT_BLANK));
        facts(draft);
        scan.must(PALETTE);
        Palette palette = palette();
        parts.palette(palette);
        Optional<Pleats> pleats = scan.takes(PLEATS) ? Optional.of(parts.pleats()) : Optional.empty();
        draft.palette(palette).pleats(pleats);
        if (scan.takes(CLOTH)) {
            draft.cloth(parts.cloth());
        }
        var starts = maybe(STARTS, parts::start);
        if (scan.takes(REPEAT)) {
            draft.repeat(Optional.of(parts.repeat()));
        }
        scan.must(ROWS);
        draft.rows(RowScan.rows(scan, pleats.map(Pleats::positions).orElse(0), palette));
        draft.lines(maybe(LINES, parts::line));
        var marks = maybe(MARKS, parts::mark);
        draft.starts(starts).marks(marks).notions(maybe(NOTIONS, parts::notion));
        scan.must(END);
        Plate plate = draft.build();
        Scan.demand(scan.at == scan.end
                && plate.starts().equals(starts)
                && plate.marks().equals(marks));
        return plate;
    }

    private void facts(Draft draft) throws Scan.Otherwise {
        draft.number(scan.takes(NUMBER) ? Optional.of(scan.said()) : Optional.empty());
        if (scan.takes(ORIGIN)) {
            draft.origin(parts.origin());
        }
        if (scan.takes(FROM_PLATE)) {
            draft.fromPlate(Optional.of(parts.fromPlate()));
        }
        if (scan.takes(STATE)) {
            Optional<State> state = State.of(scan.text());
            Scan.demand(state.isPresent());
            draft.state(state);
        }
        draft.uses(ordered(maybe(FOR, scan::text)));
        scan.must(THEMES);
        draft.themes(ordered(list(scan::text)));
        scan.must(AGES);
        draft.ages(ages());
        scan.must(DESIGNERS);
        draft.designers(list(scan::text));
        scan.must(NOTES);
        draft.notes(list(scan::text));
    }

    private List<Age> ages() throws Scan.Otherwise {
        List<Age> ages = new ArrayList<>();
        for (String word : list(scan::text)) {
            Age age = Age.of(word).orElseThrow(Scan::otherwise);
            Scan.demand(ages.isEmpty() || ages.get(ages.size() - 1).compareTo(age) < 0);
            ages.add(age);
        }
        return ages;
    }

    private Palette palette() throws Scan.Otherwise {
        TreeMap<Character, Colour> entries = new TreeMap<>();
        if (!scan.takes(NO_COLOURS)) {
            scan.must(COLOURS);
            do {
                String key = fitting(scan.text(), Words.COLOUR_KEY);
                char letter = key.charAt(0);
                Scan.demand(entries.isEmpty() || entries.lastKey() < letter);
                scan.must(':');
                scan.must(' ');
                entries.put(letter, parts.colour());
            } while (scan.takes(NEXT));
            scan.must(COLOURS_END);
        }
        return new Palette(entries);
    }

    /** A list one element a line that may be left out, and then is not empty. */
    private <T> List<T> maybe(byte[] key, Scan.Item<T> item) throws Scan.Otherwise {
        if (!scan.takes(key)) {
            return List.of();
        }
        Scan.demand(scan.stands(LIST));
        return list(item);
    }

    private <T> List<T> list(Scan.Item<T> item) throws Scan.Otherwise {
        if (scan.takes(NO_LIST)) {
            return List.of();
        }
        List<T> items = new ArrayList<>();
        scan.must(LIST);
        do {
            items.add(item.read());
        } while (scan.takes(NEXT));
        scan.must(LIST_END);
        return items;
    }

    private static List<String> ordered(List<String> texts) throws Scan.Otherwise {
        for (int i = 1; i < texts.size(); i++) {
            Scan.demand(CodePoints.ORDER.compare(texts.get(i - 1), texts.get(i)) < 0);
        }
        return texts;
    }

    private static String fitting(String text, Predicate<String> fits) throws Scan.Otherwise {
        Scan.demand(fits.test(text));
        return text;
    }
}
