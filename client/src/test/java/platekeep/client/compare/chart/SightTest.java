package platekeep.client.compare.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SightTest {
    private final Sight sight = new Sight();

    @BeforeEach
    void aPane() {
        sight.pane(600, 500);
    }

    @ParameterizedTest
    @CsvSource({"20, 12", "90, 40", "200, 200", "2001, 2000", "2001, 3", "3, 2000"})
    void allOfItIsSeenAtFirst(int pleats, int lines) {
        sight.content(pleats, -2, lines);
        assertThat(sight.xOf(0)).isNotNegative();
        assertThat(sight.xOf(pleats)).isLessThanOrEqualTo(600);
        assertThat(sight.yOf(-2)).isNotNegative();
        assertThat(sight.yOf(lines)).isLessThanOrEqualTo(500);
    }

    @Test
    void oneZoomsFromTheWholePlateToOneCable() {
        sight.content(2001, 0, 2000);
        for (int i = 0; i < 60; i++) {
            sight.zoom(1, 300, 250);
        }
        assertThat(sight.scale().cable()).isGreaterThan(150);
        for (int i = 0; i < 60; i++) {
            sight.zoom(-1, 300, 250);
        }
        assertThat(sight.xOf(2001)).isLessThanOrEqualTo(600);
        assertThat(sight.yOf(2000)).isLessThanOrEqualTo(500);
    }

    @Test
    void whatLiesUnderThePointerStaysThereWhileZooming() {
        sight.content(400, 0, 400);
        sight.zoom(12, 300, 250);
        double pleat = sight.pleatAt(220);
        double line = sight.lineAt(130);
        for (int steps : new int[] {1, 2, -1, 3, -2}) {
            sight.zoom(steps, 220, 130);
            assertThat(sight.pleatAt(220)).isCloseTo(pleat, within(0.6));
            assertThat(sight.lineAt(130)).isCloseTo(line, within(0.6));
        }
    }

    @Test
    void everyStepOfZoomingInIsLargerThanTheOneBefore() {
        sight.content(2001, 0, 2000);
        double before = sight.scale().pleat();
        while (before < Sight.MOST) {
            sight.zoom(1, 0, 0);
            assertThat(sight.scale().pleat()).isGreaterThan(before);
            before = sight.scale().pleat();
        }
    }

    @Test
    void aPlaceThatIsOutOfSightComesIntoSight() {
        sight.content(2001, 0, 2000);
        sight.zoom(14, 0, 0);
        Rectangle2D place = new Rectangle2D.Double(1500, 1700, 4, 1);
        sight.show(place);
        assertThat(sight.xOf(1500)).isBetween(0.0, 600.0);
        assertThat(sight.xOf(1504)).isBetween(0.0, 600.0);
        assertThat(sight.yOf(1700)).isBetween(0.0, 500.0);
        double x = sight.x();
        sight.show(place);
        assertThat(sight.x()).as("a place in sight moves nothing").isEqualTo(x);
    }

    @Test
    void aCloseUpShowsThePlaceLargeAndWhole() {
        sight.content(2001, 0, 2000);
        sight.closeUp(new Rectangle2D.Double(700, 900, 6, 3));
        assertThat(sight.scale().pleat()).isGreaterThan(15);
        assertThat(sight.xOf(700)).isBetween(0.0, 600.0);
        assertThat(sight.yOf(903)).isBetween(0.0, 500.0);
    }

    @Test
    void whatWasFittedStaysFittedWhenThePaneChanges() {
        sight.content(90, 0, 40);
        sight.pane(300, 900);
        assertThat(sight.xOf(90)).isLessThanOrEqualTo(300);
        sight.zoom(3, 100, 100);
        double pleat = sight.scale().pleat();
        sight.pane(500, 500);
        assertThat(sight.scale().pleat()).isEqualTo(pleat);
    }

    @Test
    void aRefreshLeavesTheViewWhereItWas() {
        sight.content(400, 0, 400);
        sight.zoom(14, 300, 250);
        sight.moveTo(700, 900);
        double pleat = sight.pleatAt(0);
        sight.contentAgain(400, 0, 402);
        assertThat(sight.pleatAt(0)).isEqualTo(pleat);
        assertThat(sight.isFitted()).isFalse();
    }
}
