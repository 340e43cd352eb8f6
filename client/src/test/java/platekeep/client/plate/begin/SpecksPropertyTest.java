package platekeep.client.plate.begin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class SpecksPropertyTest {

    @Property(seed = "20261126")
    void noPatchIsSmallerThanAskedUnlessItIsTheWholeChart(
            @ForAll("charts") int[] cells,
            @ForAll @IntRange(min = 1, max = 9) int width,
            @ForAll @IntRange(min = 1, max = 9) int least) {
        int[] whole = java.util.Arrays.copyOf(cells, cells.length / width * width);
        int[] clean = Specks.cleaned(whole, width, least);
        Set<Integer> seen = new HashSet<>();
        for (int start = 0; start < clean.length; start++) {
            if (!seen.contains(start)) {
                Set<Integer> patch = patch(clean, width, start);
                seen.addAll(patch);
                assertThat(patch.size() >= least || patch.size() == clean.length)
                        .isTrue();
            }
        }
        assertThat(Specks.cleaned(clean, width, least)).isEqualTo(clean);
        assertThat(Specks.cleaned(whole, width, 1)).isEqualTo(whole);
    }

    /** A patch by columns and rows, with a stack. */
    private static Set<Integer> patch(int[] cells, int width, int start) {
        Set<Integer> patch = new HashSet<>();
        Deque<Integer> open = new ArrayDeque<>(Set.of(start));
        while (!open.isEmpty()) {
            int at = open.pop();
            if (patch.add(at)) {
                for (int other = 0; other < cells.length; other++) {
                    int apart = Math.abs(at / width - other / width) + Math.abs(at % width - other % width);
                    if (apart == 1 && cells[other] == cells[start]) {
                        open.push(other);
                    }
                }
            }
        }
        return patch;
    }

    @Example
    void aSpeckTakesTheColourAroundIt() {
        int[] cells = {0, 0, 0, 0, 0, 1, 0, 2, 0, 0, 0, 2};
        assertThat(Specks.cleaned(cells, 4, 2)).containsExactly(0, 0, 0, 0, 0, 0, 0, 2, 0, 0, 0, 2);
        assertThat(Specks.cleaned(cells, 4, 3)).containsOnly(0);
    }

    @Provide
    Arbitrary<int[]> charts() {
        return Arbitraries.integers()
                .between(-1, 2)
                .array(int[].class)
                .ofMinSize(9)
                .ofMaxSize(60);
    }
}
