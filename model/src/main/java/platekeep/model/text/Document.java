package platekeep.model.text;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import platekeep.model.plate.Value;

/**
 * What the texts of plates, series and libraries have in common: bytes to characters to pieces to a thing, and a check
 * that nothing was mended in silence.
 *
 * @param word the word before the number in {@code format}: {@code plate}, {@code series}, {@code library}
 * @param open keys of the topmost object whose objects stand one entry a line
 * @param reader reads the topmost object
 * @param writer gives the canonical text
 */
record Document<T>(
        String word, Set<String> open, BiFunction<Piece.Obj, Problems, T> reader, Function<T, String> writer) {

    /** The number of the format that this version reads and writes. */
    static final int VERSION = 1;

    private static final Pattern FORMAT = Pattern.compile("([a-z]+) ([1-9][0-9]*)");

    /** What {@code format} says in what this version writes. */
    String format() {
        return word + " " + VERSION;
    }

    /** Reads a file; one of a newer format is refused for that alone. */
    Reading<T> read(String file, byte[] bytes) {
        return PlainText.decode(file, bytes)
                .fold(good -> readText(file, good.read()), bad -> new Reading.Bad<>(bad.problems()));
    }

    /** Reads a file of a newer format by the rules of this one, as far as they go. */
    Reading<T> readNewer(String file, byte[] bytes) {
        return PlainText.decode(file, bytes)
                .fold(
                        good -> {
                            Problems problems = new Problems(file, good.read());
                            return PieceReader.read(good.read(), problems)
                                    .flatMap(piece -> object(piece, problems))
                                    .map(top -> readTop(top, good.read(), problems))
                                    .orElseGet(() -> new Reading.Bad<>(problems.refused()));
                        },
                        bad -> new Reading.Bad<>(bad.problems()));
    }

    private Reading<T> readText(String file, String text) {
        Problems problems = new Problems(file, text);
        Optional<Piece.Obj> top = PieceReader.read(text, problems).flatMap(piece -> object(piece, problems));
        if (top.isEmpty()) {
            return new Reading.Bad<>(problems.refused());
        }
        Optional<Problem> newer = newer(file, text, top.get());
        if (newer.isPresent()) {
            return new Reading.Bad<>(List.of(newer.get()));
        }
        checkFormat(top.get(), problems);
        return readTop(top.get(), text, problems);
    }

    private Reading<T> readTop(Piece.Obj top, String text, Problems problems) {
        T read = reader.apply(top, problems);
        if (problems.refusedAny()) {
            return new Reading.Bad<>(problems.refused());
        }
        String canonical = writer.apply(read);
        if (!canonical.equals(text)) {
            reportLayout(top, text, problems);
        }
        return new Reading.Good<>(read, problems.mended());
    }

    private Optional<Piece.Obj> object(Piece piece, Problems problems) {
        if (piece instanceof Piece.Obj object) {
            return Optional.of(object);
        }
        problems.found(
                Rule.WRONG_TYPE,
                piece.at(),
                "the text of a " + word + " is an object in braces, not " + piece.kind() + ".");
        return Optional.empty();
    }

    /** Says so when the text is of a higher format, whose rules this version cannot know. */
    private Optional<Problem> newer(String file, String text, Piece.Obj top) {
        Optional<Piece.Str> format = format(top);
        Matcher matcher = FORMAT.matcher(format.map(Piece.Str::text).orElse(""));
        if (!matcher.matches()
                || !matcher.group(1).equals(word)
                || matcher.group(2).equals(String.valueOf(VERSION))) {
            return Optional.empty();
        }
        Problems problems = new Problems(file, text);
        problems.found(
                Rule.NEWER_FORMAT,
                format.get().at(),
                "the file was made by a newer version (" + Say.quoted(matcher.group())
                        + "); bring this one up to date.");
        return Optional.of(problems.refused().get(0));
    }

    private void checkFormat(Piece.Obj top, Problems problems) {
        String expected = format();
        Piece.Member member = top.members().get("format");
        if (member == null) {
            problems.found(
                    Rule.MISSING_KEY,
                    top.at(),
                    "\"format\" is missing here; add \"format\": " + Say.quoted(expected) + ".");
        } else if (!(member.piece() instanceof Piece.Str text) || !text.text().equals(expected)) {
            problems.found(
                    Rule.FORMAT, member.piece().at(), "\"format\" is " + Say.quoted(expected) + " here; change it.");
        }
    }

    private static Optional<Piece.Str> format(Piece.Obj top) {
        Piece.Member member = top.members().get("format");
        return member != null && member.piece() instanceof Piece.Str text ? Optional.of(text) : Optional.empty();
    }

    /**
     * Reports the first place where spacing, and the first where escapes or numbers, are not written as they should be. What
     * was read is laid out anew in the order in which it stood, so that only the writing differs.
     */
    private void reportLayout(Piece.Obj top, String text, Problems problems) {
        String laidOut = Layout.text((Value.Entries) top.value(), open, text.length());
        int i = 0;
        int j = 0;
        boolean spaced = true;
        while (i < text.length() || j < laidOut.length()) {
            int nextI = afterSpaces(text, i);
            int nextJ = afterSpaces(laidOut, j);
            if (!sameCharacter(text, nextI, laidOut, nextJ)) {
                problems.found(
                        Rule.WRITTEN_FORM, nextI, "a number or a text was written in another way; it is mended.");
                return;
            }
            if (spaced && !text.substring(i, nextI).equals(laidOut.substring(j, nextJ))) {
                problems.found(Rule.SPACING, i, "spaces or line ends stood otherwise from here on; they are mended.");
                spaced = false;
            }
            i = Math.min(nextI + 1, text.length());
            j = Math.min(nextJ + 1, laidOut.length());
        }
    }

    private static boolean sameCharacter(String a, int i, String b, int j) {
        return i < a.length() && j < b.length() ? a.charAt(i) == b.charAt(j) : i >= a.length() && j >= b.length();
    }

    private static int afterSpaces(String text, int from) {
        int i = from;
        while (i < text.length() && " \t\r\n".indexOf(text.charAt(i)) >= 0) {
            i++;
        }
        return i;
    }
}
