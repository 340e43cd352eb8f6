package platekeep.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;

class SlugsTest {

    @ParameterizedTest
    @CsvSource({
        "Harbour Light, harbour-light",
        "'  Kite -- over / the Pier!  ', kite-over-the-pier",
        "'The Gulls'' Morning', the-gulls-morning",
        "Caf\u00e9 am See, cafe-am-see",
        "Cafe\u0301 am See, cafe-am-see",
        "\u00c6bler & \u00d8rter, aebler-orter",
        "Gro\u00dfe M\u00f6wen, grosse-mowen",
        "\u0130stanbul, istanbul",
        "3 Pears, 3-pears",
        "\uff26\uff4f\uff58, fox",
        "\u706f\u53f0, 0",
        "!!!, 0",
        "'', 0"
    })
    void aTitleBecomesLowerCaseLettersDigitsAndHyphens(String title, String slug) {
        assertThat(Slugs.of(title)).isEqualTo(slug);
    }

    /** Microsoft, "Naming Files, Paths, and Namespaces", section "Naming conventions" (list from memory). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "CON",
                "PRN",
                "AUX",
                "NUL",
                "COM0",
                "COM1",
                "COM2",
                "COM3",
                "COM4",
                "COM5",
                "COM6",
                "COM7",
                "COM8",
                "COM9",
                "COM\u00b9",
                "COM\u00b2",
                "COM\u00b3",
                "LPT0",
                "LPT1",
                "LPT2",
                "LPT3",
                "LPT4",
                "LPT5",
                "LPT6",
                "LPT7",
                "LPT8",
                "LPT9",
                "LPT\u00b9",
                "LPT\u00b2",
                "LPT\u00b3",
                " con ",
                "Nul."
            })
    void aNameThatWindowsKeepsForItselfIsNeverUsed(String title) {
        assertThat(Slugs.of(title)).matches("(con|prn|aux|nul|com[0-9]|lpt[0-9])-0");
    }

    @Test
    void wordsThatOnlyBeginLikeAReservedNameAreLeftAlone() {
        assertThat(List.of(Slugs.of("Console"), Slugs.of("Con Brio"), Slugs.of("Com 1")))
                .containsExactly("console", "con-brio", "com-1");
    }

    @Test
    void aLongTitleIsCutToSixtyCharactersWithoutAHyphenAtTheEnd() {
        assertThat(Slugs.of("a".repeat(59) + " b")).isEqualTo("a".repeat(59));
        assertThat(Slugs.of("a".repeat(80))).hasSize(60);
    }

    @Property(tries = 300, seed = "20261125")
    void everySlugIsASafeFileName(@ForAll String title) {
        assertThat(Slugs.of(title)).matches("[a-z0-9]([a-z0-9-]{0,58}[a-z0-9])?");
    }

    @Test
    void aPlateLiesInTheDrawerOfItsFirstLetterAndElseInDrawerNought() {
        assertThat(Slugs.path(new Draft("x", "Harbour Light").build())).isEqualTo("plates/h/harbour-light.json");
        assertThat(Slugs.path(new Draft("x", "3 Pears").build())).isEqualTo("plates/0/3-pears.json");
        assertThat(Slugs.path(new Draft("x", "\u706f\u53f0").build())).isEqualTo("plates/0/0.json");
    }

    @Test
    void aSeriesLiesBesideTheOtherSeries() {
        Series series = new Series("x", "Harbour Days", List.of(), Palette.EMPTY, List.of(), Unknown.NONE);

        assertThat(Slugs.path(series)).isEqualTo("series/harbour-days.json");
    }

    @Test
    void whereAPlaceIsTakenTheGreaterIdPutsItsFirstEightDigitsToTheName() {
        String lesser = "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10";
        String greater = "4BE49F89-3a69-4de6-9f3c-8b5fc86d64d2";

        assertThat(Slugs.givesWay(greater, lesser)).isTrue();
        assertThat(Slugs.givesWay(lesser, greater)).isFalse();
        assertThat(Slugs.withId("plates/h/harbour-light.json", greater))
                .isEqualTo("plates/h/harbour-light-4be49f89.json");
    }
}
