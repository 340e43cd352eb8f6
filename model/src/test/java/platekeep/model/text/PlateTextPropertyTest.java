package platekeep.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import platekeep.model.plate.Plate;
import platekeep.model.plate.PlateArbitraries;

/** Laws of reading and writing over any valid plate, and over texts that were mangled. */
class PlateTextPropertyTest {

    @Provide
    Arbitrary<Plate> plates() {
        return PlateArbitraries.plates();
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20261125")
    void aPlateComesBackEqualAndUnmended(@ForAll("plates") Plate plate) {
        Reading<Plate> reading = PlateText.read("plate.json", PlateText.bytes(plate));

        assertThat(found(reading)).isEmpty();
        assertThat(reading.value()).contains(plate);
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20261125")
    void whatIsWrittenDoesNotChangeByAByteWhenReadAndWrittenAgain(@ForAll("plates") Plate plate) {
        String text = PlateText.write(plate);

        assertThat(rewritten(text)).isEqualTo(text);
    }

    @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE, seed = "20261125")
    void theShortWayReadsWhatReadingByPiecesReadsAndNothingElse(
            @ForAll("plates") Plate plate,
            @ForAll @IntRange(min = 0, max = 1_000_000) int where,
            @ForAll @IntRange(min = 0, max = 2) int length,
            @ForAll("patches") String patch) {
        byte[] bytes = PlateText.bytes(plate);
        isTheSameBothWays(bytes);
        String text = new String(bytes, StandardCharsets.UTF_8);
        int from = where % text.length();
        int to = Math.min(text.length(), from + length);
        isTheSameBothWays((text.substring(0, from) + patch + text.substring(to)).getBytes(StandardCharsets.UTF_8));
    }

    @Provide
    Arbitrary<String> patches() {
        return Arbitraries.of(
                "",
                "0",
                "1",
                "9",
                "-",
                ".",
                ".0",
                "5",
                "a",
                "z",
                "A",
                " ",
                "\n",
                "\"",
                ",",
                ", ",
                ":",
                "\\",
                "\u00e9",
                "e\u0301",
                "\u2019",
                "\u0085",
                "{}",
                "[]",
                "\t",
                "\"id\": ",
                "\"on\": \"\", ");
    }

    /** Whatever the short way reads is what the long way reads with nothing to say of it, whatever lies behind it. */
    private static void isTheSameBothWays(byte[] bytes) {
        Optional<Plate> alone = CanonicalPlate.read(ByteBuffer.wrap(bytes));
        byte[] twice = Arrays.copyOf(bytes, 2 * bytes.length);
        System.arraycopy(bytes, 0, twice, bytes.length, bytes.length);
        assertThat(CanonicalPlate.read(ByteBuffer.wrap(twice, 0, bytes.length))).isEqualTo(alone);
        alone.ifPresent(read -> {
            Reading<Plate> byPieces = PlateText.readByPieces("plate.json", bytes);
            assertThat(byPieces.value()).contains(read);
            assertThat(found(byPieces)).isEmpty();
        });
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20261125")
    void aMangledTextIsReadOrRefusedButNeverThrows(
            @ForAll("plates") Plate plate,
            @ForAll @IntRange(min = 0, max = 1_000_000) int where,
            @ForAll @IntRange(min = 0, max = 40) int length,
            @ForAll byte[] patch) {
        byte[] bytes = PlateText.bytes(plate);
        int from = where % bytes.length;
        int to = Math.min(bytes.length, from + length);
        byte[] mangled = new byte[bytes.length - (to - from) + patch.length];
        System.arraycopy(bytes, 0, mangled, 0, from);
        System.arraycopy(patch, 0, mangled, from, patch.length);
        System.arraycopy(bytes, to, mangled, from + patch.length, bytes.length - to);

        staysAsMended(mangled);
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20261125")
    void aTextWithPiecesSwappedIsReadOrRefusedButNeverThrows(
            @ForAll("plates") Plate plate,
            @ForAll @IntRange(min = 0, max = 1_000_000) int one,
            @ForAll @IntRange(min = 0, max = 1_000_000) int other) {
        List<String> tokens = new ArrayList<>(List.of(PlateText.write(plate).split("(?<=[\\[\\]{},:\" ])")));
        Collections.swap(tokens, one % tokens.size(), other % tokens.size());

        staysAsMended(String.join("", tokens).getBytes(StandardCharsets.UTF_8));
    }

    /** What was read from a text, however odd it is, is written so that it is read again without any mending. */
    private static void staysAsMended(byte[] bytes) {
        Reading<Plate> first = PlateText.read("plate.json", bytes);
        first.value().ifPresent(read -> {
            byte[] written = PlateText.bytes(read);
            Reading<Plate> second = PlateText.read("plate.json", written);
            assertThat(found(second)).isEmpty();
            assertThat(second.value()).contains(read);
            if (found(first).isEmpty()) {
                assertThat(written).as("nothing is mended in silence").isEqualTo(bytes);
            }
        });
        if (first.value().isEmpty()) {
            assertThat(found(first)).isNotEmpty().allSatisfy(problem -> {
                assertThat(problem.line()).isPositive();
                assertThat(problem.column()).isPositive();
                assertThat(problem.text()).endsWith(".");
            });
        }
    }

    private static String rewritten(String text) {
        Plate plate = PlateText.read("plate.json", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow();
        return PlateText.write(plate);
    }

    private static List<Problem> found(Reading<Plate> reading) {
        return reading.fold(good -> good.mended(), bad -> bad.problems());
    }
}
