package platekeep.model.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Published colour values; each case names its source, and the numbers are typed from there. */
class ColourWorkedExampleTest {

    /**
     * Source: Sharma, Wu, Dalal, "The CIEDE2000 color-difference formula: implementation notes, supplementary test data,
     * and mathematical observations", Color Research and Application 30(1):21-30, 2005, table 1.
     */
    @ParameterizedTest
    @MethodSource("pairs")
    void theThirtyFourPublishedPairsHaveTheirPublishedDifference(double[] pair) {
        Lab one = new Lab(pair[1], pair[2], pair[3]);
        Lab other = new Lab(pair[4], pair[5], pair[6]);

        assertThat(Ciede2000.difference(one, other)).isCloseTo(pair[7], within(0.00005));
        assertThat(Ciede2000.difference(other, one)).isCloseTo(pair[7], within(0.00005));
    }

    @Test
    void thereAreThirtyFourPairs() throws IOException {
        assertThat(pairs()).hasSize(34);
    }

    static List<double[]> pairs() throws IOException {
        try (InputStream in = ColourWorkedExampleTest.class.getResourceAsStream("ciede2000-34-pairs.csv");
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .skip(1)
                    .filter(line -> !line.isBlank())
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        }
    }

    /** Source: WCAG 2.2, definitions of contrast ratio and relative luminance; success criteria 1.4.3 and 1.4.11. */
    @ParameterizedTest
    @CsvSource({"767676, 4.54", "777777, 4.48", "949494, 3.03", "959595, 2.995", "000000, 21", "FFFFFF, 1"})
    void greysOnWhiteHaveTheirKnownContrast(String grey, double contrast) {
        int rgb = Integer.parseInt(grey, 16);

        assertThat(Contrast.of(rgb, 0xFFFFFF)).isCloseTo(contrast, within(0.006));
        assertThat(Contrast.of(0xFFFFFF, rgb)).isEqualTo(Contrast.of(rgb, 0xFFFFFF));
    }

    /** Source: as above. */
    @Test
    void theGreysAtTheLimitsPassOrFail() {
        assertThat(Contrast.of(0x767676, 0xFFFFFF)).isGreaterThanOrEqualTo(Contrast.TEXT);
        assertThat(Contrast.of(0x777777, 0xFFFFFF)).isLessThan(Contrast.TEXT);
        assertThat(Contrast.of(0x949494, 0xFFFFFF)).isGreaterThanOrEqualTo(Contrast.MARKS);
        assertThat(Contrast.of(0x959595, 0xFFFFFF)).isLessThan(Contrast.MARKS);
    }

    /**
     * Source: Machado, Oliveira, Fernandes, IEEE Transactions on Visualization and Computer Graphics 15(6), 2009, matrices
     * for severity 1.0: each row sums to 1, so grey stays grey (to the sixth digit printed).
     */
    @ParameterizedTest
    @EnumSource(ColourVision.class)
    void greysLookAlikeToAll(ColourVision vision) {
        for (int row = 0; row < 3; row++) {
            assertThat(vision.entry(row, 0) + vision.entry(row, 1) + vision.entry(row, 2))
                    .isCloseTo(1, within(0.0000015));
        }
        for (int grey = 0; grey < 256; grey++) {
            assertThat(vision.seen(grey * 0x010101)).isEqualTo(grey * 0x010101);
        }
    }

    /**
     * Source: as above, first matrix: pure red light of 1 is seen as (0.152286, 0.114503, -0.003882); by IEC 61966-2-1
     * 0.152286 is 109 and 0.114503 is 95 of 255, worked by hand; below 0 is 0.
     */
    @Test
    void pureRedSeenWithoutTheConesForLongWaves() {
        assertThat(ColourVision.PROTAN.seen(0xFF0000)).isEqualTo(109 << 16 | 95 << 8);
    }

    /** Source: as above; all nine numbers of each of the three matrices, red, green and blue light in this order. */
    @ParameterizedTest
    @CsvSource({
        "PROTAN, .152286, 1.052583, -.204868, .114503, .786281, .099216, -.003882, -.048116, 1.051998",
        "DEUTAN, .367322, .860646, -.227968, .280085, .672501, .047413, -.011820, .042940, .968881",
        "TRITAN, 1.255528, -.076749, -.178779, -.078411, .930809, .147602, .004733, .691367, .303900"
    })
    void theMatricesAreThePublishedOnes(ArgumentsAccessor row) {
        ColourVision vision = ColourVision.valueOf(row.getString(0));
        for (int at = 0; at < 9; at++) {
            assertThat(vision.entry(at / 3, at % 3)).isEqualTo(row.getDouble(at + 1));
        }
    }

    /**
     * Source: IEC 61966-2-1:1999, the luminances of its primaries, 0.2126, 0.7152 and 0.0722 of white; CIE 15:2004,
     * lightness is 116 times the cube root of the luminance, less 16; worked by hand.
     */
    @ParameterizedTest
    @CsvSource({"FF0000, 53.23", "00FF00, 87.74", "0000FF, 32.30"})
    void thePrimariesAreAsLightAsTheirLuminanceSays(String rgb, double lightness) {
        assertThat(Lab.of(Integer.parseInt(rgb, 16)).l()).isCloseTo(lightness, within(0.015));
    }

    /** CIELAB of the primaries of sRGB against D65 as commonly printed: from memory. */
    @ParameterizedTest
    @CsvSource({
        "FF0000, 53.24, 80.09, 67.20",
        "00FF00, 87.73, -86.18, 83.18",
        "0000FF, 32.30, 79.19, -107.86",
        "FFFFFF, 100, 0, 0",
        "000000, 0, 0, 0"
    })
    void thePrimariesHaveTheirKnownPlace(String rgb, double l, double a, double b) {
        Lab lab = Lab.of(Integer.parseInt(rgb, 16));

        assertThat(lab.l()).isCloseTo(l, within(0.01));
        assertThat(lab.a()).isCloseTo(a, within(0.02));
        assertThat(lab.b()).isCloseTo(b, within(0.02));
    }

    @Test
    void everyColourOfACoarseCubeComesBackFromCielab() {
        for (int r = 0; r < 256; r += 15) {
            for (int g = 0; g < 256; g += 15) {
                for (int b = 0; b < 256; b += 15) {
                    int rgb = r << 16 | g << 8 | b;
                    assertThat(Lab.of(rgb).rgb()).isEqualTo(rgb);
                }
            }
        }
    }

    @Test
    void redAndGreenOfOneLightnessComeCloserWithoutTheConesForMiddleWaves() {
        int red = 0xC05050;
        int green = 0x6A8040;

        assertThat(Ciede2000.difference(ColourVision.DEUTAN.seen(red), ColourVision.DEUTAN.seen(green)))
                .isLessThan(Ciede2000.difference(red, green) / 2);
    }
}
