package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two designers edit one plate in two libraries, and what comes of it is read by native Git: git-show(1), git-rev-list(1)
 * and git-fsck(1) are the reference for what lies in a library. The texts of plates are typed by hand from the contract.
 */
@Tag("packaged")
@Timeout(value = 15, unit = TimeUnit.MINUTES)
class MainJobGuiTest {
    private static final String TOP = "aa01 ...bbbbb...";
    private static final String LAMP = "aa02 ..ccccccc..";
    private static final String BASE = "aa03 .bbbbbbbbb.";

    private static final int BRICK = 1;
    private static final int CHALK = 2;
    private static final int YELLOW = 3;

    @TempDir
    Path room;

    private TwoDesks desks;

    @BeforeEach
    void setTheDesks() throws Exception {
        Fingers.needDisplayAndGit();
        desks = new TwoDesks(room);
    }

    @Test
    void twoEditsOfOnePlateComeTogether() throws Exception {
        desks.shareTheLamp();
        wennaEditsAndSends();
        isoldeEditsBringsInAndLosesPower();
        isoldeDecidesTheRestAndSends();
        wennaBringsIn();

        String joined = TwoDesks.LAMP
                .replace(TOP, "aa01 ...ccbbb...")
                .replace(LAMP, "aa02 ..bcccccy..")
                .replace(BASE, "aa03 .bbbbbbbbc.");
        assertThat(desks.git(TwoDesks.WENNA, "show", "HEAD:" + TwoDesks.PLATE)).isEqualTo(joined);
        assertThat(desks.git(TwoDesks.ISOLDE, "show", "HEAD:" + TwoDesks.PLATE)).isEqualTo(joined);
        assertThat(desks.joins(TwoDesks.WENNA)).isEqualTo(1);
        assertThat(desks.joins(TwoDesks.ISOLDE)).isEqualTo(1);
        desks.agree();
    }

    private void wennaEditsAndSends() throws Exception {
        try (Program program = desks.open(TwoDesks.WENNA)) {
            Work work = new Work(program);
            work.openPlate(TwoDesks.TITLE);
            work.paintByMouse(CHALK, 0, 3, 4);
            work.paintByKeys(BRICK, 1, 2);
            work.paintByKeys(YELLOW, 1, 8);
            work.save("A chalk corner, and a warmer lamp");
            work.send();
            work.close();
        }
    }

    /** Her edit of the lowest row joins by itself; of the two cables that both changed she decides one. */
    private void isoldeEditsBringsInAndLosesPower() throws Exception {
        try (Program program = desks.open(TwoDesks.ISOLDE)) {
            Work work = new Work(program);
            work.openPlate(TwoDesks.TITLE);
            work.paintByMouse(CHALK, 2, 9, 9);
            work.paintByKeys(YELLOW, 1, 2);
            work.paintByKeys(BRICK, 1, 8);
            work.save("A chalk foot");
            work.bringInToDecide("2 of 2 open");
            work.decide("pleats 3 to 4", TwoDesks.WENNA, "1 of 2 open");
            work.isKept(desks.home(TwoDesks.ISOLDE), "aa02 ..bcccccc..");
            program.kill();
        }
    }

    private void isoldeDecidesTheRestAndSends() throws Exception {
        try (Program program = desks.open(TwoDesks.ISOLDE)) {
            Work work = new Work(program);
            work.goOnDeciding("1 of 2 open");
            work.decide("pleats 9 to 10", TwoDesks.WENNA, "All 2 decided");
            work.saveJoined();
            work.send();
            work.close();
        }
    }

    private void wennaBringsIn() throws Exception {
        try (Program program = desks.open(TwoDesks.WENNA)) {
            Work work = new Work(program);
            work.bringIn();
            work.close();
        }
    }
}
