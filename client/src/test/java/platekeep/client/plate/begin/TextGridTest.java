package platekeep.client.plate.begin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import platekeep.client.plate.Charted;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

class TextGridTest {
    private static final String ID = "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10";

    private static Begun read(String text) {
        return TextGrid.read(text, ID, "Gull", Map.of(), new Random(1));
    }

    private static Plate plate(String text) {
        return read(text).plate().orElseThrow();
    }

    private static String refusal(String text) {
        return read(text).fold(plate -> "", why -> why);
    }

    @Test
    void oneCharacterIsOneCableAndBlanksAreNothing() {
        Plate plate = plate("\n.aab.\n- aa \n\n");
        assertThat(Charted.cells(plate)).containsExactly(".aab.", "..aa.");
        assertThat(plate.palette().entries()).containsOnlyKeys('a', 'b');
        assertThat(plate.pleats().orElseThrow().count()).isEqualTo(6);
        assertThat(plate.starts()).hasSize(1);
    }

    @Test
    void signsThatAreNoKeysGetOne() {
        assertThat(Charted.cells(plate("##*\n*a#"))).containsExactly("aab", "bca");
    }

    @Test
    void valuesWithCommasBetweenAreColoursByNameOrShade() {
        Plate plate = plate("brick,,#2b6ca6\r\n,\"brick\",brick\r\n");
        assertThat(Charted.cells(plate)).containsExactly("a.b", ".aa");
        assertThat(plate.palette().get('a').orElseThrow().name()).isEqualTo("brick");
        assertThat(plate.palette().get('b').orElseThrow().srgb()).isEqualTo("#2B6CA6");
        assertThat(Charted.cells(plate("a;b\n;c"))).containsExactly("ab", ".c");
        assertThat(Charted.cells(plate("a\tb\n\tc"))).containsExactly("ab", ".c");
    }

    @Test
    void aValueThatIsTheNameOfAKnownColourIsThatColour() {
        Palette known = Palette.EMPTY.with('m', new Colour("Moss", "#4F7A3A", 3));
        Plate byName = TextGrid.read(
                        "moss,m", ID, "Moss", Palettes.byName(List.of(new Palettes.Known("x", known))), new Random(1))
                .plate()
                .orElseThrow();
        assertThat(byName.palette().entries().values()).extracting(Colour::srgb).contains("#4F7A3A");
        assertThat(byName.palette().entries().values()).extracting(Colour::name).contains("Moss", "colour m");
    }

    @Test
    void whatIsReadCanBeWrittenAndReadAgain() {
        Plate plate = plate("ab,cd\nef,gh");
        assertThat(PlateText.read("x", PlateText.write(plate).getBytes(java.nio.charset.StandardCharsets.UTF_8))
                        .value())
                .contains(plate);
    }

    @Test
    void aRaggedGridIsRefusedWithItsRow() {
        assertThat(refusal("aaa\nab\naaa"))
                .isEqualTo(
                        "Row 2 from the top has 2 places, the first one 3 places. Make all rows equally long, with dots"
                                + " where nothing lies. Nothing was begun.");
    }

    @Test
    void moreThanSixtyTwoColoursAreRefused() {
        StringBuilder text = new StringBuilder("n0");
        for (int n = 1; n < 62; n++) {
            text.append(",n").append(n);
        }
        assertThat(plate(text.toString()).palette().entries()).hasSize(62);
        assertThat(refusal(text + ",n62")).startsWith("Row 1 from the top has the 63rd colour, \"n62\"");
    }

    @ParameterizedTest
    @CsvSource({"0, There is no text.", "2001, Row 1 from the top has 2001 places"})
    void tooLittleAndTooMuchIsRefused(int width, String words) {
        assertThat(refusal("a".repeat(width))).startsWith(words);
        assertThat(refusal("a\n".repeat(2001))).contains("more than 2000 rows");
        assertThat(refusal("a".repeat(12_000_001))).contains("Nothing was begun.");
    }

    @Test
    void whatIsNoTextIsRefused() {
        assertThat(refusal("ab\u0000c")).contains("Is it really a text file?");
        assertThat(refusal("ab\uFFFD")).contains("Is it really a text file?");
    }
}
