package platekeep.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import platekeep.model.plate.Plate;

/** A canonical text comes back byte for byte; one that is not is mended, and told so. */
class CanonicalTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "join-cells",
                "join-clash-cells",
                "join-clash-delete",
                "join-insert",
                "join-palette",
                "join-same-row",
                "join-tags",
                "join-widen"
            })
    void theTextsOfAJoinCaseComeBackByteForByte(String name) throws IOException {
        for (String side : List.of("base", "mine", "theirs", "want")) {
            comesBack("/cases/" + name + "/" + side + ".json");
        }
    }

    @Test
    void aPlateThatUsesEveryKnownKeyComesBackByteForByte() throws IOException {
        Plate plate = comesBack("/harbour-light.json");

        assertThat(plate.rows()).hasSize(7);
        assertThat(plate.remarks()).hasSize(1);
        assertThat(plate.unknown().entries()).isEmpty();
    }

    private static Plate comesBack(String resource) throws IOException {
        byte[] bytes = bytes(resource);
        Reading<Plate> reading = PlateText.read(resource, bytes);
        List<Problem> found = reading.fold(good -> good.mended(), bad -> bad.problems());
        assertThat(found).isEmpty();
        Plate plate = reading.value().orElseThrow();
        assertThat(PlateText.write(plate)).isEqualTo(new String(bytes, StandardCharsets.UTF_8));
        assertThat(PlateText.bytes(plate)).isEqualTo(bytes);
        return plate;
    }

    private static byte[] bytes(String resource) throws IOException {
        try (InputStream in = CanonicalTextTest.class.getResourceAsStream(resource)) {
            return in.readAllBytes();
        }
    }
}
