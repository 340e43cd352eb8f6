package platekeep.client.plate.begin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import platekeep.client.plate.TestPlates;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Unknown;
import platekeep.model.text.PlateText;

class BlankChartTest {
    private static final String ID = "00000000-0000-4000-8000-000000000001";

    @Test
    void aScanIsChartedAndStaysTheSamePlate() {
        Origin origin = new Origin(
                Optional.of("bought"), Optional.empty(), Optional.of("binder 3"), Optional.of("mine"), Unknown.NONE);
        Plate scan = new Draft(ID, "Crab Pot").origin(origin).build();
        Plate charted = new BlankChart(40, 12).on(scan, new Random(1));
        assertThat(charted.id()).isEqualTo(ID);
        assertThat(charted.origin()).isEqualTo(origin);
        assertThat(charted.rows()).hasSize(12).allMatch(row -> row.cells().equals(".".repeat(39)));
        assertThat(charted.rows()).extracting(row -> row.id().orElseThrow()).doesNotHaveDuplicates();
        assertThat(charted.palette()).isEqualTo(BlankChart.FIRST_COLOURS);
        assertThat(PlateText.read("crab.json", PlateText.bytes(charted)).value())
                .hasValue(charted);
    }

    @Test
    void aPlateThatHasAChartKeepsIt() {
        Plate block = TestPlates.block(ID, "Block");
        assertThat(new BlankChart(40, 12).on(block, new Random(1))).isSameAs(block);
    }
}
