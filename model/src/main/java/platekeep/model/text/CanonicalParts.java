package platekeep.model.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.Unknown;

/** Reads the small objects of a text in the canonical form, each on one line; see {@link CanonicalPlate}. */
final class CanonicalParts {
    private static final byte[] KIND = Scan.key("kind");
    private static final byte[] BY = Scan.key("by");
    private static final byte[] PLACE = Scan.key("place");
    private static final byte[] USE = Scan.key("use");
    private static final byte[] ID = Scan.key("id");
    private static final byte[] VERSION = Scan.key("version");
    private static final byte[] NAME = Scan.key("name");
    private static final byte[] SRGB = Scan.key("srgb");
    private static final byte[] STRANDS = Scan.key("strands");
    private static final byte[] FLOSS = Scan.key("floss");
    private static final byte[] FROM = Scan.key("from");
    private static final byte[] TO = Scan.key("to");
    private static final byte[] GATHERING_ROWS = Scan.key("gathering rows");
    private static final byte[] SPACING = Scan.key("spacing mm");
    private static final byte[] STACKED_ROWS = Scan.key("stacked rows");
    private static final byte[] FULLNESS = Scan.key("fullness");
    private static final byte[] HOLDING = Scan.key("holding");
    private static final byte[] ROW = Scan.key("row");
    private static final byte[] PLEAT = Scan.key("pleat");
    private static final byte[] CABLE = Scan.key("cable");
    private static final byte[] ON = Scan.key("on");
    private static final byte[] EVERY = Scan.key("every");
    private static final byte[] TIMES = Scan.key("times");
    private static final byte[] TO_ROW = Scan.key("to row");
    private static final byte[] STITCH = Scan.key("stitch");
    private static final byte[] STEPS = Scan.key("steps");
    private static final byte[] COLOUR = Scan.key("colour");
    private static final byte[] START = Scan.key("start");
    private static final byte[] SIZE = Scan.key("size");
    private static final byte[] COUNT = Scan.key("count");

    private final Scan scan;
    private Palette palette = Palette.EMPTY;

    CanonicalParts(Scan scan) {
        this.scan = scan;
    }

    /** Says which colours lines and marks may have. */
    void palette(Palette newPalette) {
        this.palette = newPalette;
    }

    Origin origin() throws Scan.Otherwise {
        Scan.Line line = scan.new Line();
        Origin origin = new Origin(
                fitting(line, KIND, Origin.KINDS::contains),
                fitting(line, BY, text -> true),
                fitting(line, PLACE, text -> true),
                fitting(line, USE, Origin.USES::contains),
                Unknown.NONE);
        line.end();
        return origin;
    }

    FromPlate fromPlate() throws Scan.Otherwise {
        Scan.Line line = scan.new Line().must(ID);
        String id = scan.text();
        line.must(VERSION);
        FromPlate from = new FromPlate(id, scan.text(), Unknown.NONE);
        line.end();
        return from;
    }

    Colour colour() throws Scan.Otherwise {
        Scan.Line line = scan.new Line().must(NAME);
        String name = scan.text();
        line.must(SRGB);
        String srgb = scan.text();
        Scan.demand(isSrgb(srgb));
        line.must(STRANDS);
        Colour colour = new Colour(name, srgb, scan.whole(1, 6), fitting(line, FLOSS, text -> true), Unknown.NONE);
        line.end();
        return colour;
    }

    private static boolean isSrgb(String text) {
        boolean is = text.length() == 7 && text.charAt(0) == '#';
        for (int i = 1; is && i < text.length(); i++) {
            char c = text.charAt(i);
            is = c >= '0' && c <= '9' || c >= 'A' && c <= 'F';
        }
        return is;
    }

    Pleats pleats() throws Scan.Otherwise {
        Scan.Line line = scan.new Line().must(FROM);
        int from = scan.whole(-Pleats.FARTHEST, Pleats.FARTHEST);
        line.must(TO);
        int to = scan.whole(-Pleats.FARTHEST, Pleats.FARTHEST);
        line.end();
        Scan.demand(to - from >= 1 && to - from <= Pleats.MOST_POSITIONS);
        return new Pleats(from, to);
    }

    Cloth cloth() throws Scan.Otherwise {
        Scan.Line line = scan.new Line();
        Optional<Integer> gatheringRows = maybeWhole(line, GATHERING_ROWS);
        Optional<BigDecimal> spacing = line.has(SPACING) ? Optional.of(scan.decimal()) : Optional.empty();
        Optional<Integer> stackedRows = maybeWhole(line, STACKED_ROWS);
        Optional<BigDecimal> fullness = line.has(FULLNESS) ? Optional.of(scan.decimal()) : Optional.empty();
        List<String> holding = line.has(HOLDING) ? holding() : List.of();
        line.end();
        return new Cloth(gatheringRows, spacing, stackedRows, fullness, holding, Unknown.NONE);
    }

    private List<String> holding() throws Scan.Otherwise {
        List<String> holding = new ArrayList<>();
        scan.must('[');
        do {
            String row = scan.text();
            Scan.demand(Words.GATHERING_ROW.test(row));
            holding.add(row);
        } while (scan.takes(',') && scan.takes(' '));
        scan.must(']');
        return holding;
    }

    Start start() throws Scan.Otherwise {
        Scan.Line line = scan.new Line().must(ROW);
        RowId row = rowId();
        line.must(PLEAT);
        int pleat = scan.whole();
        line.must(CABLE);
        CableKind cable = cable();
        Start start = new Start(row, pleat, cable, fitting(line, ON, Words.GATHERING_ROW), Unknown.NONE);
        line.end();
        return start;
    }

    Repeat repeat() throws Scan.Otherwise {
        Scan.Line line = scan.new Line().must(EVERY);
        int every = scan.whole();
        line.must(TIMES);
        Repeat repeat = new Repeat(every, scan.whole(), Unknown.NONE);
        line.end();
        return repeat;
    }

    Line line() throws Scan.Otherwise {
        Scan.Line line = scan.new Line().must(ON);
        String on = scan.text();
        Scan.demand(Words.GATHERING_ROW.test(on));
        Optional<String> toRow = fitting(line, TO_ROW, Words.GATHERING_ROW);
        line.must(STITCH);
        String stitch = scan.text();
        Optional<Integer> steps = maybeWhole(line, STEPS);
        line.must(COLOUR);
        char colour = colourKey();
        line.must(STRANDS);
        int strands = scan.whole(1, 6);
        line.must(FROM);
        int from = scan.whole();
        line.must(TO);
        int to = scan.whole();
        line.must(START);
        Line read = new Line(on, toRow, stitch, steps, colour, strands, from, to, cable(), Unknown.NONE);
        line.end();
        return read;
    }

    Mark mark() throws Scan.Otherwise {
        Scan.Line line = scan.new Line().must(STITCH);
        String stitch = scan.text();
        line.must(ROW);
        RowId row = rowId();
        line.must(PLEAT);
        String pleat = scan.text();
        Scan.demand(Words.PLEAT.test(pleat));
        line.must(COLOUR);
        Mark mark = new Mark(stitch, row, pleat, colourKey(), Unknown.NONE);
        line.end();
        return mark;
    }

    Notion notion() throws Scan.Otherwise {
        Scan.Line line = scan.new Line().must(KIND);
        String kind = scan.text();
        Optional<String> size = fitting(line, SIZE, text -> true);
        line.must(COUNT);
        Notion notion = new Notion(kind, size, scan.whole(), Unknown.NONE);
        line.end();
        return notion;
    }

    private RowId rowId() throws Scan.Otherwise {
        scan.must('"');
        RowId id = RowId.of(scan.rowId());
        scan.must('"');
        return id;
    }

    private CableKind cable() throws Scan.Otherwise {
        return Words.cable(scan.text()).orElseThrow(Scan::otherwise);
    }

    private char colourKey() throws Scan.Otherwise {
        String key = scan.text();
        Scan.demand(key.length() == 1 && palette.has(key.charAt(0)));
        return key.charAt(0);
    }

    private Optional<Integer> maybeWhole(Scan.Line line, byte[] key) throws Scan.Otherwise {
        return line.has(key) ? Optional.of(scan.whole()) : Optional.empty();
    }

    /** A text that may be left out, and is not empty where it is there. */
    private Optional<String> fitting(Scan.Line line, byte[] key, Predicate<String> fits) throws Scan.Otherwise {
        if (!line.has(key)) {
            return Optional.empty();
        }
        String text = scan.said();
        Scan.demand(fits.test(text));
        return Optional.of(text);
    }
}
