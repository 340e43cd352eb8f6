package platekeep.model.join;

import static org.assertj.core.api.Assertions.assertThat;
import static platekeep.model.plate.CableKind.DOWN;
import static platekeep.model.stitch.Drawn.plate;
import static platekeep.model.stitch.Drawn.redrawn;
import static platekeep.model.stitch.Drawn.start;
import static platekeep.model.stitch.Drawn.started;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.CheckSettings;

class NewFaultTest {

    private final Plate base = started(plate("aaaa aaaaaaaa", "bbbb aaaaaaaa"), start("bbbb", 4, DOWN));

    @Test
    void anOverhangThatOnlyBothEditsMakeIsToldWithTheTwoEdits() {
        Plate mine = redrawn(base, "aaaa aaaaaaaa", "bbbb ..aaaaaa");
        Plate theirs = redrawn(base, "aaaa aaaaaaaa", "bbbb aa.aaaaa");

        List<NewFault> faults = faults(mine, theirs);

        assertThat(faults).extracting(fault -> fault.finding().rule()).contains("overhang");
        assertThat(faults).allSatisfy(fault -> {
            assertThat(fault.mine().orElseThrow().by()).isEqualTo(Settled.By.MINE);
            assertThat(fault.theirs().orElseThrow().words()).startsWith("row 1: pleats 3 to 4");
        });
    }

    @Test
    void aFaultThatOneSideHadIsNotTold() {
        Plate mine = redrawn(base, "aaaa aaaaaaaa", "bbbb ...aaaaa");
        Plate theirs = redrawn(base, "aaaa aaaaaaaa", "bbbb aaaaaaa.");

        assertThat(faults(mine, theirs))
                .extracting(fault -> fault.finding().rule())
                .doesNotContain("overhang");
    }

    private List<NewFault> faults(Plate mine, Plate theirs) {
        Joined joined = Join.of(Optional.of(base), mine, theirs, Hands.UNKNOWN);
        return NewFault.of(base, mine, theirs, joined, CheckSettings.DEFAULT);
    }
}
