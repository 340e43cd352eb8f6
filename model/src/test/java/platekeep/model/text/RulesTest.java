package platekeep.model.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import platekeep.model.plate.Plate;

/**
 * Each rule of the reader is broken once in an otherwise sound text and reported alone, at its place. The strict checks on
 * JSON as such are those of RFC 8259: section 2 (one value, nothing after it), 4 (names should be unique), 6 (numbers), 7
 * (strings, control characters), 8.1 (UTF-8 without a byte-order mark), 8.2 (unpaired surrogates).
 */
class RulesTest {
    private static final String SOUND = resource("/every-key.json");

    /** One text for each rule: what to replace in the sound text, by what, and the line where it is to be found. */
    static Stream<Arguments> brokenRules() {
        return Stream.of(brokenJson(), brokenFacts(), brokenChart(), brokenClashes())
                .flatMap(rules -> rules);
    }

    /** Rules of the text as such. */
    static Stream<Arguments> brokenJson() {
        return Stream.of(
                broken(Rule.NOT_JSON, "\"title\":", "\"title\","),
                broken(Rule.NOT_JSON, "\"strands\": 3,", "\"strands\": 03,"),
                broken(Rule.NOT_JSON, "\"done\": false", "\"done\": NaN"),
                broken(Rule.NOT_JSON, "\"notes\": [", "// a remark\n  \"notes\": ["),
                broken(Rule.NOT_JSON, "Stitch the lamp", "Stitch \n the lamp"),
                brokenAt(95, Rule.TEXT_AFTER_END, "    2.5\n  ]\n}\n", "    2.5\n  ]\n}\n{}\n"),
                broken(Rule.DOUBLE_KEY, "\"number\": \"H-07\",", "\"number\": \"H-07\", \"number\": \"H-08\","),
                broken(Rule.NESTING, "{\"er\": \"x\"}", "[".repeat(70) + "]".repeat(70)),
                broken(Rule.NUMBER_DIGITS, "    2.5\n", "    1234567890123456\n"),
                broken(Rule.NUMBER_DIGITS, "    2.5\n", "    1e15\n"),
                broken(Rule.NUMBER_DIGITS, "    2.5\n", "    1e999999999\n"),
                broken(Rule.NUMBER_DIGITS, "    2.5\n", "    0.1234567890123456\n"),
                broken(Rule.LONE_SURROGATE, "Stitch the lamp", "Stitch \\ud83d the lamp"),
                broken(Rule.LONE_SURROGATE, "\"deep\"", "\"\\udea2\""),
                broken(Rule.CONTROL_CHARACTER, "Stitch the lamp", "Stitch \\n the lamp"),
                broken(Rule.CONTROL_CHARACTER, "{\"er\": \"x\"}", "{\"er\": \"\\u0000\"}"),
                broken(Rule.CONTROL_CHARACTER, "Stitch the lamp", "Stitch \u009b the lamp"));
    }

    /** Rules of shape and of single facts. */
    static Stream<Arguments> brokenFacts() {
        return Stream.of(
                brokenAt(1, Rule.MISSING_KEY, "\"themes\": [", "\"thymes\": ["),
                broken(Rule.WRONG_TYPE, "\"every\": 30", "\"every\": \"30\""),
                broken(Rule.FORMAT, "plate 1", "plate one"),
                broken(Rule.NEWER_FORMAT, "plate 1", "plate 2"),
                broken(Rule.ID_FORM, "\"0b8f5a52-", "\"0b8f5a5-"),
                broken(Rule.TITLE_BLANK, "\"title\": \"Harbour Light\"", "\"title\": \" \\t\u00a0\u3000\""),
                broken(Rule.ORIGIN_KIND, "\"kind\": \"own\"", "\"kind\": \"found\""),
                broken(Rule.ORIGIN_USE, "\"use\": \"publish\"", "\"use\": \"all\""),
                broken(Rule.STATE_WORD, "\"state\": \"test-stitched\"", "\"state\": \"done\""),
                broken(Rule.AGE_WORD, "\"toddler\"", "\"toddlers\""),
                broken(Rule.NUMBER_RANGE, "\"every\": 30", "\"every\": 99999999999"),
                broken(Rule.GATHERING_ROW, "\"holding\": [\"1\", \"7\"]", "\"holding\": [\"1\", \"07\"]"),
                broken(
                        Rule.DATE_FORM,
                        "\"on\": \"2026-03-02\", \"text\": \"Wider rock?\", \"done\": f",
                        "\"on\": \"2.3.2026\", \"text\": \"Wider rock?\", \"done\": f"),
                broken(
                        Rule.DATE_EXISTS,
                        "\"on\": \"2026-03-02\", \"text\": \"Wider rock?\", \"done\": f",
                        "\"on\": \"2026-02-30\", \"text\": \"Wider rock?\", \"done\": f"),
                broken(
                        Rule.COLOUR_KEY,
                        "    \"y\": {",
                        "    \"yy\": {\"name\": \"x\", \"srgb\": \"#000000\", " + "\"strands\": 4},\n    \"y\": {"));
    }

    /** Rules of colours, pleats, rows and what lies on them. */
    static Stream<Arguments> brokenChart() {
        return Stream.of(
                broken(Rule.SRGB_FORM, "#E9B83C", "#e9b83c"),
                broken(Rule.STRANDS, "\"#E9B83C\", \"strands\": 4", "\"#E9B83C\", \"strands\": 7"),
                broken(
                        Rule.COLOUR_MISSING,
                        "\"pleat\": \"8 1/2\", \"colour\": \"b\"}\n",
                        "\"pleat\": \"8 1/2\", \"colour\": \"q\"}\n"),
                brokenAt(38, Rule.PLEATS_MISSING, "  \"pleats\": {\"from\"", "  \"plates\": {\"from\""),
                broken(
                        Rule.PLEATS_RANGE,
                        "\"pleats\": {\"from\": 1, \"to\": 18}",
                        "\"pleats\": {\"from\": 1, \"to\": 100001}"),
                broken(
                        Rule.PLEATS_SPAN,
                        "\"pleats\": {\"from\": 1, \"to\": 18}",
                        "\"pleats\": {\"from\": 18, \"to\": 18}"),
                broken(
                        Rule.PLEATS_SPAN,
                        "\"pleats\": {\"from\": 1, \"to\": 18}",
                        "\"pleats\": {\"from\": 1, \"to\": 2002}"),
                brokenAt(
                        38, Rule.ROW_COUNT, "    \"0pz8 ", "    \".................\",\n".repeat(1994) + "    \"0pz8 "),
                broken(Rule.ROW_FORM, "\"0pz8 ......yyyy", "\"0pz8 ......y#yy"),
                broken(Rule.ROW_FORM, "\"0pz8 ......yyyy", "\"0PZ8 ......yyyy"),
                broken(Rule.ROW_LENGTH, "\"0pz8 ......yyyy", "\"0pz8 .......yyyy"),
                broken(Rule.CELL_COLOUR, "\"0pz8 ......yyyy", "\"0pz8 ......yYyy"),
                broken(
                        Rule.ROW_ID,
                        "{\"row\": \"c7t2\", \"pleat\": 4, \"cable\": \"down\", \"on\"",
                        "{\"row\": \"C7T2\", \"pleat\": 4, \"cable\": \"down\", \"on\""),
                broken(Rule.CABLE_WORD, "\"cable\": \"down\", \"on\"", "\"cable\": \"under\", \"on\""),
                broken(
                        Rule.PLEAT_FORM,
                        "\"pleat\": \"8 1/2\", \"colour\": \"b\"}\n",
                        "\"pleat\": \"8 1/4\", \"colour\": \"b\"}\n"));
    }

    /** Rules of clashes. */
    static Stream<Arguments> brokenClashes() {
        return Stream.of(
                broken(Rule.CLASH_WHAT, "{\"what\": \"cables\"", "{\"what\": \"stitches\""),
                broken(Rule.CLASH_PLACE, "\"end\": \"to\"", "\"end\": \"end\""),
                broken(Rule.CLASH_SIDES, "\"sides\": [{\"value\": 16}, {\"value\": 20}]", "\"sides\": []"),
                broken(Rule.CLASH_VALUE, "\"base\": \"x91b\"", "\"base\": \"the top\""),
                broken(Rule.CLASH_EXTENT, "{\"value\": \"yyy\"", "{\"value\": \"yyyy\""));
    }

    /** One text for each thing that is put right. */
    static Stream<Arguments> mendedRules() {
        return Stream.of(
                broken(Rule.SPACING, "\"every\": 30", "\"every\":30"),
                broken(Rule.SPACING, "{\n  \"format\"", "{\r\n  \"format\""),
                brokenAt(94, Rule.SPACING, "    2.5\n  ]\n}\n", "    2.5\n  ]\n}"),
                broken(Rule.WRITTEN_FORM, "    2.5\n", "    2.50\n"),
                broken(Rule.WRITTEN_FORM, "    2.5\n", "    25e-1\n"),
                broken(Rule.WRITTEN_FORM, "Stitch the lamp", "Stitch \\u0074he lamp"),
                broken(Rule.KEY_ORDER, "\"every\": 30, \"times\": 3},\n", "\"times\": 3, \"every\": 30},\n"),
                broken(
                        Rule.KEY_ORDER,
                        "{\"a\": 1}}, {\"value\": {\"b\": [2]}}",
                        "{\"a\": 1}}, {\"value\": {\"b\": [2], \"a\": 1}}"),
                brokenAt(
                        13,
                        Rule.LIST_ORDER,
                        "    \"lighthouses\",\n    \"seaside\"",
                        "    \"seaside\",\n    \"lighthouses\""),
                broken(Rule.NFC, "\"Stitch the lamp last.\"", "\"Stitch the la\u0300mp last.\""),
                brokenAt(15, Rule.DOUBLE, "    \"lighthouses\",\n", "    \"lighthouses\",\n    \"lighthouses\",\n"),
                broken(Rule.DOUBLE_ID, "\"0pz8 ......yyyy", "\"m4k1 ......yyyy"),
                broken(Rule.EMPTY_KEY, "\"number\": \"H-07\"", "\"number\": \"\""),
                broken(Rule.EMPTY_KEY, "\"holding\": [\"1\", \"7\"]", "\"holding\": []"));
    }

    /** A rule broken by one replacement, to be found in the line where that begins. */
    private static Arguments broken(Rule rule, String sound, String broken) {
        String before = SOUND.substring(0, Math.max(0, SOUND.indexOf(sound)));
        return brokenAt(
                (int) before.lines().count() + (before.isEmpty() || before.endsWith("\n") ? 1 : 0),
                rule,
                sound,
                broken);
    }

    private static Arguments brokenAt(int line, Rule rule, String sound, String broken) {
        assertThat(SOUND).as("the sound text holds what is to be broken").contains(sound);
        int at = SOUND.indexOf(sound);
        return arguments(rule, SOUND.substring(0, at) + broken + SOUND.substring(at + sound.length()), line);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("brokenRules")
    void aBrokenRuleIsReportedAloneAtItsLine(Rule rule, String text, int line) {
        List<Problem> problems = refused(text.getBytes(StandardCharsets.UTF_8));

        assertThat(problems).extracting(Problem::rule).containsExactly(rule.id());
        assertThat(problems).extracting(Problem::line).containsExactly(line);
        assertThat(problems.get(0).sentence())
                .startsWith("h.json, line " + line)
                .endsWith(".");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mendedRules")
    void whatIsMendedIsReportedAtItsLine(Rule rule, String text, int line) {
        Reading<Plate> reading = PlateText.read("h.json", text.getBytes(StandardCharsets.UTF_8));

        List<Problem> mended = reading.fold(good -> good.mended(), bad -> List.of());
        assertThat(mended).extracting(Problem::rule).contains(rule.id());
        assertThat(mended)
                .filteredOn(p -> p.rule().equals(rule.id()))
                .extracting(Problem::line)
                .containsExactly(line);
    }

    @Test
    void everyRuleIsBrokenByAnExample() {
        Set<Rule> shown = Stream.concat(brokenRules(), mendedRules())
                .map(arguments -> (Rule) arguments.get()[0])
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Rule.class)));
        shown.addAll(Set.of(Rule.DOCUMENT_LENGTH, Rule.NOT_UTF_8, Rule.BYTE_ORDER_MARK, Rule.MORE_PROBLEMS));

        assertThat(shown).as("the four are broken in bytes below").isEqualTo(EnumSet.allOf(Rule.class));
    }

    @Test
    void bytesThatAreNoTextAreRefusedWhereTheyStand() {
        byte[] latin1 = SOUND.replace("Wider rock?", "Wider r\u00f6ck?").getBytes(StandardCharsets.ISO_8859_1);
        Problem problem = refused(latin1).get(0);

        assertThat(problem.rule()).isEqualTo("not-utf-8");
        assertThat(problem.line()).isEqualTo(58);
    }

    @Test
    void anEncodedSurrogateAndAnOverlongSlashAreNoUtf8() {
        assertThat(rules(patched("Stitch", new byte[] {(byte) 0xed, (byte) 0xa0, (byte) 0xbd})))
                .containsExactly("not-utf-8");
        assertThat(rules(patched("Stitch", new byte[] {(byte) 0xc0, (byte) 0xaf})))
                .containsExactly("not-utf-8");
    }

    @Test
    void aByteOrderMarkIsRefused() {
        assertThat(rules(("\ufeff" + SOUND).getBytes(StandardCharsets.UTF_8))).containsExactly("byte-order-mark");
    }

    @Test
    void aFileBeyondAllMeasureIsRefusedUnread() {
        assertThat(rules(new byte[PlainText.LONGEST + 1])).containsExactly("document-length");
    }

    @Test
    void anEmptyFileIsRefused() {
        assertThat(rules(new byte[0])).containsExactly("not-json");
    }

    @Test
    void allProblemsOfAFileAreReportedAtOnceInOrderOfPlace() {
        String text = SOUND.replace("\"repeat\": {\"every\": 30", "\"repeat\": {\"every\": \"x\"")
                .replace("\"state\": \"test-stitched\"", "\"state\": \"done\"")
                .replace("0pz8 ......yyyy", "0pz8 ......yqyy")
                .replace("\"count\": 2}\n", "\"count\": 2.5}\n");

        assertThat(refused(text.getBytes(StandardCharsets.UTF_8)))
                .extracting(Problem::rule)
                .containsExactly("state-word", "wrong-type", "cell-colour", "wrong-type");
    }

    @Test
    void aProblemInThePictureNamesRowFromTheBottomAndPleat() {
        Problem problem = refused(
                        SOUND.replace("0pz8 ......yyyy", "0pz8 ......yqyy").getBytes(StandardCharsets.UTF_8))
                .get(0);

        assertThat(problem.row()).isEqualTo(Optional.of(6));
        assertThat(problem.pleat()).isEqualTo(Optional.of(8));
        assertThat(problem.line()).isEqualTo(40);
        assertThat(problem.column()).isEqualTo(18);
        assertThat(problem.sentence())
                .isEqualTo(
                        "h.json, line 40, row 6, pleat 8: the colour \"q\" is not in \"colours\"; add it there or use"
                                + " another.");
    }

    @Test
    void aWhollyWrongFileIsNotReportedWithoutEnd() {
        List<Problem> problems = refused(SOUND.replace("    \"lighthouses\",\n", "    7,\n".repeat(10_000))
                .getBytes(StandardCharsets.UTF_8));

        assertThat(problems).hasSize(Problems.MOST + 1);
        assertThat(problems.get(Problems.MOST).rule()).isEqualTo("more-problems");
        assertThat(problems.get(Problems.MOST).text()).contains(String.valueOf(10_000 - Problems.MOST));
    }

    @Test
    void aPlateOfANewerFormatCanBeLookedAtAsFarAsItsRulesAreKnown() {
        byte[] newer = SOUND.replace("plate 1", "plate 2").getBytes(StandardCharsets.UTF_8);

        assertThat(PlateText.readNewer("h.json", newer).value())
                .isEqualTo(PlateText.read("h.json", SOUND.getBytes(StandardCharsets.UTF_8))
                        .value());
    }

    @Test
    void aRemarkUnderAnIdThatIsTakenKeepsItsWordsUnderAnotherId() {
        String remark = "{\"id\": \"k2w9\", \"by\": \"Second Designer\", \"on\": \"2026-03-02\", \"text\": \"Paler?\", "
                + "\"done\": false}";
        String text = SOUND.replace(
                "\"text\": \"Wider rock?\", \"done\": false}\n",
                "\"text\": \"Wider rock?\", \"done\": false},\n    " + remark + "\n");
        Plate plate = PlateText.read("h.json", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow();

        assertThat(plate.remarks()).extracting(r -> r.text()).containsExactlyInAnyOrder("Wider rock?", "Paler?");
        assertThat(plate.remarks().stream().map(r -> r.id()).distinct()).hasSize(2);
    }

    private static byte[] patched(String where, byte[] patch) {
        int at = SOUND.indexOf(where);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(SOUND.substring(0, at).getBytes(StandardCharsets.UTF_8));
        out.writeBytes(patch);
        out.writeBytes(SOUND.substring(at).getBytes(StandardCharsets.UTF_8));
        return out.toByteArray();
    }

    private static List<Problem> refused(byte[] bytes) {
        return PlateText.read("h.json", bytes).fold(good -> List.of(), bad -> bad.problems());
    }

    private static Set<String> rules(byte[] bytes) {
        return refused(bytes).stream().map(Problem::rule).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String resource(String name) {
        try (InputStream in = RulesTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
