package platekeep.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Series;

class SeriesAndLibraryTextTest {
    private static final String SERIES = """
            {
              "format": "series 1",
              "id": "b2d9a1b0-0000-4000-8000-00000000000a",
              "title": "Harbour Days",
              "plates": [
                "4be49f89-3a69-4de6-9f3c-8b5fc86d64d2",
                "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10"
              ],
              "colours": {
                "b": {"name": "brick", "srgb": "#A63C2B", "strands": 4}
              },
              "notes": [],
              "shelf": [
                {"a": 1, "b": [2, 3]}
              ]
            }
            """;

    private static final String LIBRARY = """
            {
              "format": "library 1",
              "id": "b2d9a1b0-0000-4000-8000-00000000000b",
              "name": "Workshop",
              "themes": {
                "birds": [],
                "seaside": ["sea", "shore"]
              },
              "check": {"carried pleats": 4, "overhang": 2},
              "shelf": {"a": 1}
            }
            """;

    @Test
    void aCanonicalSeriesComesBackByteForByte() {
        Reading<Series> reading = SeriesText.read("s.json", utf8(SERIES));

        assertThat(mended(reading)).isEmpty();
        assertThat(SeriesText.write(reading.value().orElseThrow())).isEqualTo(SERIES);
    }

    @Test
    void thePlatesOfASeriesKeepTheirOrder() {
        Series series = SeriesText.read("s.json", utf8(SERIES)).value().orElseThrow();

        assertThat(series.plates())
                .containsExactly("4be49f89-3a69-4de6-9f3c-8b5fc86d64d2", "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10");
    }

    @Test
    void aCanonicalLibraryComesBackByteForByte() {
        Reading<LibraryFacts> reading = LibraryText.read("library.json", utf8(LIBRARY));

        assertThat(mended(reading)).isEmpty();
        assertThat(reading.value().orElseThrow().themes())
                .isEqualTo(Map.of("birds", List.of(), "seaside", List.of("sea", "shore")));
        assertThat(new String(LibraryText.bytes(reading.value().orElseThrow()), StandardCharsets.UTF_8))
                .isEqualTo(LIBRARY);
    }

    @Test
    void aNewLibraryIsWrittenWithEmptyThemesAndWithoutSettings() {
        LibraryFacts facts = new LibraryFacts("b2d9a1b0-0000-4000-8000-00000000000b", "Workshop");

        assertThat(LibraryText.write(facts)).isEqualTo("""
                        {
                          "format": "library 1",
                          "id": "b2d9a1b0-0000-4000-8000-00000000000b",
                          "name": "Workshop",
                          "themes": {}
                        }
                        """);
    }

    @Test
    void themesAndTheirOtherWordsAreSortedAndDoublesGo() {
        String mixed = LIBRARY.replace(
                "\"birds\": [],\n    \"seaside\": [\"sea\", \"shore\"]",
                "\"seaside\": [\"shore\", \"sea\", \"sea\"],\n    \"birds\": []");

        Reading<LibraryFacts> reading = LibraryText.read("library.json", utf8(mixed));

        assertThat(mended(reading)).extracting(Problem::rule).containsExactly("list-order", "double", "list-order");
        assertThat(LibraryText.write(reading.value().orElseThrow())).isEqualTo(LIBRARY);
    }

    @Test
    void aPlateIsNoSeriesAndANewerSeriesIsSaidToBeNewer() {
        assertThat(mended(SeriesText.read("s.json", utf8(SERIES.replace("series 1", "plate 1")))))
                .extracting(Problem::rule)
                .containsExactly("format");
        assertThat(mended(SeriesText.read("s.json", utf8(SERIES.replace("series 1", "series 2")))))
                .extracting(Problem::rule)
                .containsExactly("newer-format");
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** What was mended, or what was wrong. */
    private static List<Problem> mended(Reading<?> reading) {
        return reading.fold(good -> good.mended(), bad -> bad.problems());
    }
}
