package platekeep.model.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/** The worked cases of the house, byte for byte, and with the sides exchanged. */
class CasesTest {

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
    void aWorkedCaseJoinsIntoItsAnswer(String name) throws IOException {
        Plate base = read(name, "base");
        Plate mine = read(name, "mine");
        Plate theirs = read(name, "theirs");
        String want = text(name, "want");
        assertThat(PlateText.write(
                        Join.of(Optional.of(base), mine, theirs, Hands.UNKNOWN).plate()))
                .isEqualTo(want);
        assertThat(PlateText.write(
                        Join.of(Optional.of(base), theirs, mine, Hands.UNKNOWN).plate()))
                .isEqualTo(want);
    }

    private static Plate read(String name, String file) throws IOException {
        return PlateText.read(file, text(name, file).getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow();
    }

    private static String text(String name, String file) throws IOException {
        try (InputStream in = CasesTest.class.getResourceAsStream("/cases/" + name + "/" + file + ".json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
