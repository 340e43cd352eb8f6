package platekeep.model.text;

import java.util.Locale;

/**
 * The rules that a text is read by. Each has an id (its name in lower case with hyphens) that stands in a
 * {@link Problem} and, where a JSON Schema can say the rule too, in the {@code $comment} beside the constraint.
 */
public enum Rule {
    // The text as such: RFC 8259 and what the format adds to it.
    DOCUMENT_LENGTH(Reach.BEYOND_SCHEMA),
    NOT_UTF_8(Reach.BEYOND_SCHEMA),
    BYTE_ORDER_MARK(Reach.BEYOND_SCHEMA),
    NOT_JSON(Reach.BEYOND_SCHEMA),
    TEXT_AFTER_END(Reach.BEYOND_SCHEMA),
    DOUBLE_KEY(Reach.BEYOND_SCHEMA),
    NESTING(Reach.BEYOND_SCHEMA),
    NUMBER_DIGITS(Reach.BEYOND_SCHEMA),
    LONE_SURROGATE(Reach.BEYOND_SCHEMA),
    CONTROL_CHARACTER(Reach.SCHEMA),

    // Shape.
    MISSING_KEY(Reach.SCHEMA),
    WRONG_TYPE(Reach.SCHEMA),
    FORMAT(Reach.SCHEMA),
    NEWER_FORMAT(Reach.SCHEMA),

    // Facts.
    ID_FORM(Reach.SCHEMA),
    TITLE_BLANK(Reach.SCHEMA),
    ORIGIN_KIND(Reach.SCHEMA),
    ORIGIN_USE(Reach.SCHEMA),
    STATE_WORD(Reach.SCHEMA),
    AGE_WORD(Reach.SCHEMA),
    NUMBER_RANGE(Reach.SCHEMA),
    GATHERING_ROW(Reach.SCHEMA),
    DATE_FORM(Reach.SCHEMA),
    DATE_EXISTS(Reach.BEYOND_SCHEMA),

    // Colours.
    COLOUR_KEY(Reach.SCHEMA),
    SRGB_FORM(Reach.SCHEMA),
    STRANDS(Reach.SCHEMA),
    COLOUR_MISSING(Reach.BEYOND_SCHEMA),

    // The chart.
    PLEATS_MISSING(Reach.SCHEMA),
    PLEATS_RANGE(Reach.SCHEMA),
    PLEATS_SPAN(Reach.BEYOND_SCHEMA),
    ROW_COUNT(Reach.SCHEMA),
    ROW_FORM(Reach.SCHEMA),
    ROW_LENGTH(Reach.BEYOND_SCHEMA),
    CELL_COLOUR(Reach.BEYOND_SCHEMA),
    ROW_ID(Reach.SCHEMA),
    CABLE_WORD(Reach.SCHEMA),
    PLEAT_FORM(Reach.SCHEMA),

    // Clashes.
    CLASH_WHAT(Reach.SCHEMA),
    CLASH_PLACE(Reach.SCHEMA),
    CLASH_SIDES(Reach.SCHEMA),
    CLASH_VALUE(Reach.SCHEMA),
    CLASH_EXTENT(Reach.BEYOND_SCHEMA),

    // What is put right and reported.
    SPACING(Reach.MENDED),
    WRITTEN_FORM(Reach.MENDED),
    KEY_ORDER(Reach.MENDED),
    LIST_ORDER(Reach.MENDED),
    NFC(Reach.MENDED),
    DOUBLE(Reach.MENDED),
    DOUBLE_ID(Reach.MENDED),
    EMPTY_KEY(Reach.MENDED),

    /** Not a rule of the format: there are more problems than are listed. */
    MORE_PROBLEMS(Reach.BEYOND_SCHEMA);

    /** Who can hold a rule, and what becomes of a text that breaks it. */
    public enum Reach {
        /** Refused by the reader and by the JSON Schema. */
        SCHEMA,
        /** Refused by the reader; a JSON Schema cannot say it. */
        BEYOND_SCHEMA,
        /** Put right by the reader and reported; good to the JSON Schema. */
        MENDED
    }

    private final Reach reach;

    Rule(Reach reach) {
        this.reach = reach;
    }

    public Reach reach() {
        return reach;
    }

    /** The id, such as {@code row-length}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
