package platekeep.client.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The finished jar on a machine without a display. */
@Tag("packaged")
class TourTest {
    @TempDir
    Path home;

    @Test
    void theSampleIsShownInTheTerminalFromPlateToPartner() throws Exception {
        Shell.Done tour = new Shell(home).platekeep(home, "--sample", "--sample-folder", "try-it", "--theme", "dark");
        assertThat(tour.exit()).as(tour.text()).isZero();
        assertThat(tour.text())
                .containsSubsequence(
                        "A tour of the sample library",
                        "The plates:",
                        "Found by theme and age:",
                        "The versions of one plate:",
                        "Two versions of it compared, row by row:",
                        "What the partner sent, looked at before it is brought in:",
                        "Two edits of ",
                        " joined:",
                        "A plate changed and saved as a version:",
                        "The partner's versions brought in; what both changed is joined:",
                        "Yours sent:",
                        "The partner brings them in:")
                .doesNotContain("Something went wrong", "Exception");
        assertThat(new Shell(home)
                        .platekeep(home, "list", "--library", "try-it/workshop")
                        .text())
                .as("the sample itself is as it was made")
                .doesNotContain("spring class");
    }

    @Test
    void withoutADisplayTheWindowIsRefusedInOneSentence() throws Exception {
        Shell.Done open = new Shell(home).platekeep(home, "open");
        assertThat(open.exit()).isEqualTo(2);
        assertThat(open.text()).startsWith("There is no display").hasLineCount(1);
    }
}
