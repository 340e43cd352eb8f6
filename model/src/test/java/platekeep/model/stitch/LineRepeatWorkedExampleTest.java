package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Line;
import platekeep.model.plate.Unknown;

/** Repeats of geometric lines (all common practice, no source). */
class LineRepeatWorkedExampleTest {

    private static Line line(String stitch, int steps, int pleats) {
        Optional<Integer> n = Optional.of(steps).filter(s -> s > 0);
        return new Line("1", Optional.of("2"), stitch, n, 'a', 3, 1, pleats, CableKind.DOWN, Unknown.NONE);
    }

    /** Two steps 6 pleats, three 8, four 10, five 12; seven steps, over 1 3/4 spaces, 16. */
    @ParameterizedTest
    @CsvSource({
        "trellis, 2, 6", "trellis, 3, 8", "trellis, 4, 10", "trellis, 5, 12", "trellis, 7, 16", "cable, 0, 2",
        "outline, 0, 1", "wheat, 0, 1", "baby wave, 0, 4", "wave, 0, 4", "diamond, 0, 4", "honeycomb, 0, 2",
        "alternating cable, 0, 6"
    })
    void eachStitchTakesItsPleats(String stitch, int steps, int pleats) {
        assertThat(LineRepeat.pleats(line(stitch, steps, 50))).contains(pleats);
    }

    /** Whole repeats and the pleat of the closing cable: worked by hand. */
    @ParameterizedTest
    @CsvSource({"25, true, 25, 25", "30, false, 25, 33", "33, true, 33, 33"})
    void aThreeStepTrellisIsWholeOrSaysWhatWouldBe(int pleats, boolean fits, int below, int above) {
        Line line = line("trellis", 3, pleats);
        assertThat(LineRepeat.fits(line)).isEqualTo(fits);
        assertThat(LineRepeat.fittingBelow(line)).contains(below);
        assertThat(LineRepeat.fittingAbove(line)).contains(above);
    }
}
