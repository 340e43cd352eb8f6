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
        assertJoins(name);
    }

    /** Small cases out of edits that joins went wrong on once, each with the answer that the contract gives. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "cables-clash-settled-and-cut-off",
                "cables-clash-settled-and-picture-moved-without-ids",
                "chart-mirrored-and-figure-taken-out",
                "chart-mirrored-and-gathering-row-changed",
                "chart-mirrored-and-row-moved-without-ids",
                "chart-mirrored-without-ids",
                "chart-of-like-figures-mirrored-and-recoloured",
                "chart-of-like-figures-mirrored-and-rows-taken-out",
                "clash-of-a-row-settled-in-two-ways",
                "clash-of-a-title-settled-in-two-ways",
                "clash-of-cables-settled-to-what-stood-and-else",
                "colour-clash-settled-alike-and-key-renamed",
                "colour-clash-settled-and-key-renamed",
                "colours-made-one-and-recoloured",
                "colours-made-one-and-the-rest-renamed",
                "figure-mirrored-and-copied-elsewhere",
                "figure-mirrored-and-other-start-turned",
                "figure-mirrored-beside-others",
                "figure-mirrored-top-to-bottom",
                "figure-moved-and-recoloured-and-start-turned",
                "figure-recoloured-and-row-taken-out-without-ids",
                "figures-moved-and-recoloured-and-rows-put-in",
                "ids-on-some-rows-and-a-row-put-in",
                "like-figure-mirrored-in-place",
                "like-figure-moved-and-drawn-on",
                "like-figure-moved-drawn-in-and-drawn-on",
                "like-figure-recoloured-and-row-put-in",
                "like-figure-recoloured-and-start-turned",
                "like-figure-taken-out-without-ids",
                "like-figures-drawn-in-and-one-moved",
                "line-clash-without-second-row",
                "lines-put-in-at-one-place",
                "mark-new-in-a-colour-made-one",
                "mark-of-a-colour-taken-out",
                "move-made-by-both",
                "move-with-own-recolouring",
                "open-rows-clash-and-renamed-key",
                "open-rows-clash-and-widened-chart",
                "picture-like-its-mirror-image-moved-by-rows-without-ids",
                "picture-mirrored-with-rows-like-their-mirror-image",
                "picture-moved-and-blank-row-taken-out",
                "picture-moved-and-recoloured",
                "picture-moved-and-recoloured-without-ids",
                "picture-moved-and-two-colours-made-one",
                "picture-moved-by-both-and-row-put-in-without-ids",
                "picture-of-like-figures-moved-and-cables-taken-out",
                "picture-of-like-figures-moved-and-recoloured",
                "picture-of-like-figures-moved-and-rows-taken-out",
                "remark-on-a-row-in-doubt",
                "remark-on-a-row-that-a-figure-left",
                "remark-put-on-row-taken-out",
                "row-clash-and-turned-upside-down-without-ids",
                "row-clash-settled-and-another-open-without-ids",
                "row-clash-settled-and-its-colour-taken-out",
                "row-clash-settled-in-two-ways-beside-another-without-ids",
                "row-moved-and-figures-drawn-on-without-ids",
                "row-moved-and-taken-out",
                "row-recoloured-in-place-without-ids",
                "rows-clash-settled-alike-and-recoloured",
                "rows-put-in-among-rows-that-moved",
                "rows-put-in-and-turned-upside-down-without-ids",
                "rows-put-in-beside-twins",
                "start-left-without-cable",
                "start-written-down-by-both",
                "swap-of-keys-and-changed-entry",
                "swap-of-keys-and-changed-entry-painted-with",
                "swap-of-keys-and-half-of-a-colour-recoloured",
                "swap-of-keys-and-like-figures",
                "swap-of-keys-and-picture-moved",
                "swap-of-keys-by-both-and-a-colour-recoloured",
                "swap-of-keys-by-both-and-changed-entry",
                "swap-of-keys-without-ids",
                "turned-upside-down-by-both-ids-on-some-rows",
                "turned-upside-down-without-ids-and-rows-taken-out",
                "turned-upside-down-without-ids-beside-blank-rows"
            })
    void aCaseThatWentWrongOnceJoinsIntoItsAnswer(String name) throws IOException {
        assertJoins("found/" + name);
    }

    private static void assertJoins(String name) throws IOException {
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
