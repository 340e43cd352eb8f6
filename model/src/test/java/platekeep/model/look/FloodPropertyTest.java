package platekeep.model.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Filling by rows of bits against the plain way, which goes from place to place. */
class FloodPropertyTest {

    @Property(seed = "20261126", tries = 400)
    void whatIsReachedIsWhatCanBeWalkedTo(
            @ForAll @LongRange(min = 0) long seed,
            @ForAll @IntRange(min = 1, max = 200) int width,
            @ForAll @IntRange(min = 1, max = 30) int height,
            @ForAll @IntRange(min = 20, max = 90) int openness) {
        byte[] cells = new byte[width * height];
        Random random = new Random(seed);
        for (int at = 0; at < cells.length; at++) {
            cells[at] = (byte) (random.nextInt(100) >= openness ? 'x' : random.nextBoolean() ? '.' : 'g');
        }
        byte[] walked = walked(cells, width);
        byte[] flooded = cells.clone();
        Flood flood = new Flood(cells, width, (byte) 'g', (byte) '.');
        flood.write(flooded, width, (byte) 0);
        assertThat(flooded).isEqualTo(walked);
        for (int at = 0; at < cells.length; at++) {
            assertThat(flood.has(at / width, at % width)).isEqualTo(walked[at] == 0);
        }
    }

    @Property(seed = "20261126", tries = 20)
    void aLongWayThroughAMazeIsGoneToItsEnd(@ForAll @IntRange(min = 3, max = 150) int width) {
        int height = 41;
        byte[] cells = new byte[width * height];
        Arrays.fill(cells, (byte) '.');
        for (int r = 1; r < height; r += 2) {
            Arrays.fill(cells, r * width, (r + 1) * width, (byte) 'x');
            cells[r * width + (r / 2 % 2 == 0 ? 0 : width - 1)] = '.';
        }
        byte[] flooded = cells.clone();
        new Flood(cells, width, (byte) '.', (byte) '.').write(flooded, width, (byte) 0);
        assertThat(flooded).isEqualTo(walked(cells, width));
        assertThat(flooded[flooded.length - 1]).isZero();
    }

    private static byte[] walked(byte[] cells, int width) {
        byte[] walked = cells.clone();
        Deque<Integer> to = new ArrayDeque<>();
        for (int i = 0; i < width; i++) {
            to.add(i);
        }
        while (!to.isEmpty()) {
            int at = to.remove();
            if (walked[at] == '.' || walked[at] == 'g') {
                walked[at] = 0;
                if (at % width > 0) {
                    to.add(at - 1);
                }
                if (at % width < width - 1) {
                    to.add(at + 1);
                }
                if (at >= width) {
                    to.add(at - width);
                }
                if (at + width < cells.length) {
                    to.add(at + width);
                }
            }
        }
        return walked;
    }
}
