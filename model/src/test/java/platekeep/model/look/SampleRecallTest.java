package platekeep.model.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/**
 * Each plate of the sample library, changed in each way of {@link LookScore#edits}, comes back first among all of them;
 * the changes are made on the cells, by nothing of the code under test.
 */
class SampleRecallTest {
    private static final Path SAMPLE = Path.of("../library-sample/src/main/resources/platekeep/sample/plates");

    /** The plates as they are at the end of the sample's story. */
    private static List<Plate> sample() throws IOException {
        List<Plate> plates = new ArrayList<>();
        try (Stream<Path> folders = Files.list(SAMPLE)) {
            for (Path folder : folders.sorted().toList()) {
                try (Stream<Path> texts = Files.list(folder)) {
                    Path last = texts.sorted().reduce((a, b) -> b).orElseThrow();
                    PlateText.read(last.toString(), Files.readAllBytes(last))
                            .value()
                            .ifPresent(plates::add);
                }
            }
        }
        return plates;
    }

    @Test
    void eachChangedPlateComesBackFirst() throws IOException {
        List<Plate> plates = sample();
        assertThat(plates).hasSizeGreaterThan(30);
        Looks looks = new Looks(plates.stream().map(Signature::of).toList());
        LookScore.edits().forEach((how, edit) -> {
            Random random = new Random(5);
            for (int i = 0; i < plates.size(); i++) {
                Plate changed = edit.apply(plates.get(i), random);
                List<Looks.Near> near = looks.nearest(Signature.of(changed).orElseThrow(), 1);
                assertThat(plates.get(near.get(0).at()).title())
                        .as(how)
                        .isEqualTo(plates.get(i).title());
                assertThat(near.get(0).likeness()).as(how).isGreaterThanOrEqualTo(Alike.LEAST);
            }
        });
    }

    @Test
    void noTwoPlatesOfTheSampleAreNearDoubles() throws IOException {
        List<Plate> plates = sample();
        Looks looks = new Looks(plates.stream().map(Signature::of).toList());
        for (int i = 0; i < plates.size(); i++) {
            int at = i;
            assertThat(looks.nearest(Signature.of(plates.get(i)).orElseThrow(), 2))
                    .filteredOn(near -> near.at() != at)
                    .allMatch(near -> near.likeness() < 0.85);
        }
    }
}
