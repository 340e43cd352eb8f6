package platekeep.model.text;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Value;

/** {@code library.json} as text, by the same rules as a plate's: see {@link PlateText}. */
public final class LibraryText {
    private static final List<String> KEYS = List.of("format", "id", "name", "themes", "check");
    private static final Set<String> OPEN = Set.of("themes");
    private static final Document<LibraryFacts> DOCUMENT =
            new Document<>("library", OPEN, LibraryText::facts, LibraryText::write);

    private LibraryText() {}

    /**
     * Reads the facts of a library.
     *
     * @param file the name that problems are to call the file by
     */
    public static Reading<LibraryFacts> read(String file, byte[] bytes) {
        return DOCUMENT.read(file, bytes);
    }

    /** The canonical text, with a line end at its end. */
    public static String write(LibraryFacts facts) {
        Value.Builder themes = new Value.Builder();
        facts.themes().forEach((theme, words) -> themes.put(theme, Value.ofTexts(words)));
        Value.Entries top = new Value.Builder()
                .put("format", DOCUMENT.format())
                .put("id", facts.id())
                .put("name", facts.name())
                .put("themes", themes.build())
                .putIf(
                        "check",
                        Optional.of(facts.check()).filter(c -> !c.entries().isEmpty()),
                        v -> v)
                .putAll(facts.unknown())
                .build();
        return Layout.text(top, OPEN, 1024);
    }

    /** The canonical text in UTF-8; see {@link PlateText#bytes}. */
    public static byte[] bytes(LibraryFacts facts) {
        return PlainText.encode(write(facts));
    }

    private static LibraryFacts facts(Piece.Obj top, Problems problems) {
        Shapes shapes = new Shapes(problems);
        Fields fields = new Fields(top, KEYS, shapes);
        return new LibraryFacts(
                fields.fitting("id", Rule.ID_FORM, Words.UUID, Words.UUID_SAID),
                fields.fitting("name", Rule.TITLE_BLANK, Words.NOT_BLANK, "a name that is not blank"),
                themes(fields),
                check(fields),
                fields.unknown());
    }

    private static Map<String, List<String>> themes(Fields fields) {
        Shapes shapes = fields.shapes();
        Map<String, List<String>> themes = new HashMap<>();
        String last = "";
        for (Map.Entry<String, Piece.Member> entry : fields.required("themes")
                .flatMap(p -> shapes.object(p, "themes"))
                .map(Piece.Obj::members)
                .orElse(Collections.emptyMap())
                .entrySet()) {
            int at = entry.getValue().at();
            String theme = shapes.text(new Piece.Str(at, entry.getKey()), "themes");
            if (CodePoints.ORDER.compare(theme, last) < 0) {
                shapes.problems().found(Rule.LIST_ORDER, at, "the themes stood out of order; they are sorted now.");
            }
            last = theme;
            List<String> words = alsoCalled(theme, entry.getValue().piece(), shapes);
            if (themes.containsKey(theme)) {
                shapes.problems().found(Rule.DOUBLE, at, Say.quoted(theme) + " stood twice; the two are one now.");
            }
            themes.merge(theme, words, LibraryText::joined);
        }
        return themes;
    }

    private static List<String> alsoCalled(String theme, Piece piece, Shapes shapes) {
        List<String> words = shapes.set(shapes.list(piece, theme), theme, p -> shapes.text(p, theme));
        shapes.inOrder(
                theme,
                piece.at(),
                words,
                words.stream().sorted(CodePoints.ORDER).toList());
        return words;
    }

    private static List<String> joined(List<String> a, List<String> b) {
        return Stream.concat(a.stream(), b.stream()).toList();
    }

    /** The settings, whatever they are called; they are plain values. */
    private static Value.Entries check(Fields fields) {
        return fields.maybeFields("check", List.of())
                .map(settings -> new Value.Entries(settings.unknown().entries()))
                .orElse(new Value.Entries(Map.of()));
    }
}
