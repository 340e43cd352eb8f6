package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What was drawn survives a power cut. */
@Tag("packaged")
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class DraftGuiTest {
    @TempDir
    Path room;

    @BeforeEach
    void needADisplay() {
        assumeTrue(Fingers.haveDisplay(), "there is no display here");
    }

    @Test
    void whatWasDrawnBeforeAPowerCutIsOfferedOnce() throws Exception {
        TwoDesks desks = new TwoDesks(room);
        desks.makeWennasLibrary();
        try (Program program = desks.open(TwoDesks.WENNA)) {
            Work work = new Work(program);
            work.openPlate(TwoDesks.TITLE);
            work.paintByMouse(2, 0, 3, 4);
            work.isKept(desks.home(TwoDesks.WENNA), "aa01 ...ccbbb...");
            program.kill();
        }
        try (Program program = desks.open(TwoDesks.WENNA)) {
            program.says("status", "A draft is not saved as a version yet: \"Quay Lamp\".");
            Work work = new Work(program);
            work.openPlate(TwoDesks.TITLE);
            program.says("notice", "was not saved as a version. Row 3: pleats 4 to 6 chalk instead of brick");
            program.click("draft-take");
            program.until("notice-bar", "is gone", seen -> !seen.showing());
            work.isDraft();
            work.save("A chalk corner");
            work.close();
        }
        try (Program program = desks.open(TwoDesks.WENNA)) {
            Work work = new Work(program);
            work.openPlate(TwoDesks.TITLE);
            assertThat(program.see("notice-bar").showing()).isFalse();
            work.close();
        }
        assertThat(Work.drafts(desks.home(TwoDesks.WENNA))).isEmpty();
        assertThat(desks.git(TwoDesks.WENNA, "show", "HEAD:" + TwoDesks.PLATE))
                .isEqualTo(TwoDesks.LAMP.replace("aa01 ...bbbbb...", "aa01 ...ccbbb..."));
    }
}
