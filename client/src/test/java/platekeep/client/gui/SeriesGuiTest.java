package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A plate is dragged to another place in its series by the mouse; git-show(1) tells the order that was saved. */
@Tag("packaged")
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class SeriesGuiTest {
    private static final String WENNA = TwoDesks.WENNA;
    private static final String ID = "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a0";

    @TempDir
    Path room;

    private TwoDesks desks;

    @BeforeEach
    void aSeriesOfThree() throws Exception {
        Fingers.needDisplayAndGit();
        desks = new TwoDesks(room);
        desks.makeWennasLibrary();
        desks.keep(TwoDesks.LAMP.replace("7a9a01", "7a9a02").replace("Quay Lamp", "Pier Lamp"), "Second");
        desks.keep(TwoDesks.LAMP.replace("7a9a01", "7a9a03").replace("Quay Lamp", "Shed Lamp"), "Third");
        desks.command(
                WENNA, "series", "Lamps", "--begin", "--add", "Quay Lamp", "--add", "Pier Lamp", "--add", "Shed Lamp");
    }

    @Test
    void theFirstPlateIsDraggedBehindTheLast() throws Exception {
        try (Program program = desks.open(WENNA)) {
            program.says("gallery-summary", "3 plates");
            program.keys("ctrl 8");
            Seen before = program.until(
                    "series-order",
                    "shows the plates",
                    seen -> seen.items().size() == 3 && seen.items().stream().allMatch(item -> item.contains("Lamp")));
            assertThat(before.items().get(0)).contains("Quay Lamp");
            Point last = before.cell(2);
            int half = (before.cell(1).x - before.cell(0).x) / 2;
            program.fingers().drag(before.cell(0), new Point(last.x + half - 12, last.y));
            Seen after = program.until(
                    "series-order",
                    "has it at the end",
                    seen -> seen.items().size() == 3 && seen.items().get(2).contains("Quay Lamp"));
            assertThat(after.items().get(0)).contains("Pier Lamp");
            program.keys("ctrl S");
            program.reach("series-reason");
            program.keys("ENTER");
            program.says("status", "Saved:");
            new Work(program).close();
        }
        String series = desks.git(WENNA, "ls-tree", "-r", "--name-only", "HEAD", "series")
                .strip();
        List<String> order = desks.git(WENNA, "show", "HEAD:" + series)
                .lines()
                .filter(line -> line.contains(ID))
                .map(line -> line.replaceAll("[^0-9a-f-]", ""))
                .toList();
        assertThat(order).containsExactly(ID + "2", ID + "3", ID + "1");
        assertThat(desks.git(WENNA, "log", "-1", "--format=%s")).contains("another order");
    }
}
