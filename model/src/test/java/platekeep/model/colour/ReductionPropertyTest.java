package platekeep.model.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class ReductionPropertyTest {

    @Property(seed = "20261126", tries = 300)
    void thereAreNeverMoreThanAskedForAndAllWhenThereIsRoom(
            @ForAll("pictures") int[] picture, @ForAll @IntRange(min = 1, max = 12) int most) {
        int[] few = Reduction.of(picture, most);
        assertThat(few.length).isBetween(1, most);
        int distinct = (int) Arrays.stream(picture).distinct().count();
        if (distinct <= most) {
            assertThat(few)
                    .containsExactlyInAnyOrder(Arrays.stream(picture).distinct().toArray());
        }
        assertThat(Reduction.of(picture, most)).isEqualTo(few);
    }

    @Property(seed = "20261126", tries = 300)
    void eachColourGoesToTheNearest(@ForAll("pictures") int[] picture, @ForAll("pictures") int[] few) {
        int[] nearest = Reduction.nearest(picture, few);
        for (int i = 0; i < picture.length; i++) {
            double[] away = away(picture[i], few);
            double least = Arrays.stream(away).min().orElseThrow();
            int first = IntStream.range(0, few.length)
                    .filter(c -> away[c] == least)
                    .findFirst()
                    .orElseThrow();
            assertThat(nearest[i]).isEqualTo(first);
        }
    }

    private static double[] away(int rgb, int[] few) {
        Lab one = Lab.of(rgb);
        return Arrays.stream(few)
                .mapToObj(Lab::of)
                .mapToDouble(lab -> (one.l() - lab.l()) * (one.l() - lab.l())
                        + (one.a() - lab.a()) * (one.a() - lab.a())
                        + (one.b() - lab.b()) * (one.b() - lab.b()))
                .toArray();
    }

    /** Three heaps of shades far apart: each of three colours lies within its heap. */
    @Example
    void heapsFarApartGetAColourEach() {
        int[] picture = IntStream.range(0, 300)
                .map(n -> new int[] {0xC02020, 0x20A040, 0x2040C0}[n % 3] + n / 3 % 7 * 0x010101)
                .toArray();
        int[] few = Reduction.of(picture, 3);
        assertThat(few).hasSize(3);
        int[] nearest = Reduction.nearest(picture, few);
        for (int n = 3; n < 300; n++) {
            assertThat(nearest[n]).isEqualTo(nearest[n % 3]);
        }
    }

    @Provide
    Arbitrary<int[]> pictures() {
        return Arbitraries.integers()
                .between(0, 0xFFFFFF)
                .array(int[].class)
                .ofMinSize(1)
                .ofMaxSize(40);
    }
}
