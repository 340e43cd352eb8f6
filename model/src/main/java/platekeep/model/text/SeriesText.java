package platekeep.model.text;

import java.util.List;
import java.util.Set;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Series;
import platekeep.model.plate.Value;

/** A series as text, by the same rules as a plate's: see {@link PlateText}. */
public final class SeriesText {
    private static final List<String> KEYS = List.of("format", "id", "title", "plates", "colours", "notes");
    private static final Set<String> OPEN = Set.of("colours");
    private static final Document<Series> DOCUMENT =
            new Document<>("series", OPEN, SeriesText::series, SeriesText::write);

    private SeriesText() {}

    /**
     * Reads a series.
     *
     * @param file the name that problems are to call the file by
     */
    public static Reading<Series> read(String file, byte[] bytes) {
        return DOCUMENT.read(file, bytes);
    }

    /** The canonical text, with a line end at its end. */
    public static String write(Series series) {
        Value.Entries top = new Value.Builder()
                .put("format", DOCUMENT.format())
                .put("id", series.id())
                .put("title", series.title())
                .put("plates", Value.ofTexts(series.plates()))
                .put("colours", PlateText.colours(series.colours()))
                .put("notes", Value.ofTexts(series.notes()))
                .putAll(series.unknown())
                .build();
        return Layout.text(top, OPEN, 1024);
    }

    /** The canonical text in UTF-8; see {@link PlateText#bytes}. */
    public static byte[] bytes(Series series) {
        return PlainText.encode(write(series));
    }

    private static Series series(Piece.Obj top, Problems problems) {
        Shapes shapes = new Shapes(problems);
        Fields fields = new Fields(top, KEYS, shapes);
        List<String> plates = fields.list("plates").stream()
                .map(p -> shapes.fitting(p, "plates", Rule.ID_FORM, Words.UUID, Words.UUID_SAID))
                .toList();
        Palette colours = new PartReader(shapes).palette(fields.required("colours"));
        return new Series(
                fields.fitting("id", Rule.ID_FORM, Words.UUID, Words.UUID_SAID),
                fields.fitting("title", Rule.TITLE_BLANK, Words.NOT_BLANK, "a title that is not blank"),
                plates,
                colours,
                fields.texts("notes"),
                fields.unknown());
    }
}
