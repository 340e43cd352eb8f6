package platekeep.model.text;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import platekeep.model.plate.Age;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.GatheringRow;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Pleat;
import platekeep.model.plate.RowId;
import platekeep.model.plate.State;

/** The forms that single texts of a plate have: a test for each, and how to say it. */
final class Words {
    /** RFC 9562: 8, 4, 4, 4 and 12 hexadecimal digits with hyphens between. */
    static final Predicate<String> UUID = Words::isUuid;

    static final String UUID_SAID = "a UUID such as \"0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10\"";

    /** Something else than white space, as ECMA-262 (which JSON Schema's patterns follow) counts white space. */
    static final Predicate<String> NOT_BLANK = Pattern.compile(
                    "[^\\u0009\\u0020\\u00a0\\u1680\\u2000-\\u200a\\u2028\\u2029\\u202f\\u205f\\u3000\\ufeff]")
            .asPredicate();

    static final Predicate<String> SRGB = Pattern.compile("#[0-9A-F]{6}").asMatchPredicate();
    static final String SRGB_SAID = "a colour such as \"#A63C2B\", in upper case";

    /** A gathering row counted from the top: {@code 2}, {@code 2 1/2}. */
    static final Predicate<String> GATHERING_ROW = GatheringRow::isGatheringRow;

    static final String GATHERING_ROW_SAID = "a gathering row such as \"2\" or \"2 1/2\"";

    static final Predicate<String> PLEAT = Pleat::isPleat;
    static final String PLEAT_SAID = "a pleat such as \"8\", or \"8 1/2\" for the valley after it";

    static final Predicate<String> ROW_ID = RowId::isRowId;
    static final String ROW_ID_SAID = "four characters of 0-9 and a-z";

    static final Predicate<String> COLOUR_KEY = text -> text.length() == 1 && Palette.isKey(text.charAt(0));
    static final String COLOUR_KEY_SAID = "one letter or digit (A-Z a-z 0-9)";

    static final Predicate<String> CABLE = text -> cable(text).isPresent();
    static final String CABLE_SAID = "\"down\" or \"up\"";

    static final Predicate<String> STATE = text -> State.of(text).isPresent();
    static final String STATE_SAID =
            oneOf(Arrays.stream(State.values()).map(State::word).toList());

    static final Predicate<String> AGE = text -> Age.of(text).isPresent();
    static final String AGE_SAID =
            oneOf(Arrays.stream(Age.values()).map(Age::word).toList());

    static final Predicate<String> DATE =
            Pattern.compile("[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])").asMatchPredicate();
    static final String DATE_SAID = "a date such as \"2026-03-02\"";

    private Words() {}

    private static boolean isUuid(String text) {
        boolean is = text.length() == 36;
        for (int i = 0; is && i < 36; i++) {
            char c = text.charAt(i);
            boolean hyphen = i == 8 || i == 13 || i == 18 || i == 23;
            is = hyphen ? c == '-' : c >= '0' && c <= '9' || c >= 'a' && c <= 'f' || c >= 'A' && c <= 'F';
        }
        return is;
    }

    static Optional<CableKind> cable(String text) {
        if (text.equals(CableKind.DOWN.word())) {
            return Optional.of(CableKind.DOWN);
        }
        return text.equals(CableKind.UP.word()) ? Optional.of(CableKind.UP) : Optional.empty();
    }

    /** The date, if the calendar has it. */
    static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    static String oneOf(List<String> words) {
        return "one of " + String.join(", ", words.stream().map(Say::quoted).toList());
    }
}
