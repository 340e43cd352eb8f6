package platekeep.model.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Moments of a continuous rectangle from mechanics: the second moment of area of a rectangle b wide about its own middle
 * is h b^3 / 12, so over the area b^2 / 12 (any handbook, such as Gere and Goodno, Mechanics of Materials, appendix on
 * properties of plane areas, case 1; of a triangle b wide with its height h: middle at h / 3 over the base, h^2 / 18; from
 * memory).
 */
class MomentsWorkedExampleTest {

    private static Shape shape(String... rows) {
        String all = String.join("", rows).replace('.', (char) 0);
        return Shape.of(rows[0].length(), all.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }

    @Test
    void aRectangleSpreadsByItsSidesOverTheRootOfTwelve() {
        Moments moments = Moments.of(shape("aaaaaa", "abbbba", "aaaaaa"));
        assertThat(moments.across()).isEqualTo(3.0);
        assertThat(moments.down()).isEqualTo(1.5);
        assertThat(moments.wide()).isCloseTo(6 / Math.sqrt(12), within(1e-12));
        assertThat(moments.high()).isCloseTo(3 / Math.sqrt(12), within(1e-12));
    }

    @Test
    void aTriangleOfManyRowsComesToTheHandbooksValues() {
        int size = 400;
        StringBuilder cells = new StringBuilder();
        for (int r = 0; r < size; r++) {
            cells.append("a".repeat(r + 1)).append("\0".repeat(size - 1 - r));
        }
        Shape triangle = Shape.of(size, cells.toString().getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        Moments moments = Moments.of(triangle);
        assertThat(moments.down()).isCloseTo(size * 2 / 3.0, within(0.5));
        assertThat(moments.across()).isCloseTo(size / 3.0, within(0.5));
        assertThat(moments.high()).isCloseTo(size / Math.sqrt(18), within(0.5));
        assertThat(moments.wide()).isCloseTo(size / Math.sqrt(18), within(0.5));
    }
}
