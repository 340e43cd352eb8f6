package platekeep.model.join;

import static org.assertj.core.api.Assertions.assertThat;
import static platekeep.model.plate.CableKind.DOWN;
import static platekeep.model.plate.CableKind.UP;
import static platekeep.model.stitch.Drawn.plate;
import static platekeep.model.stitch.Drawn.redrawn;
import static platekeep.model.stitch.Drawn.start;
import static platekeep.model.stitch.Drawn.started;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Start;

class KindsKeptTest {

    @Test
    void aJoinMendsWhatNeitherSideAloneNeeded() {
        Plate base = started(plate("aaaa aaa", "bbbb a.a", "cccc aaa"), start("cccc", 1, DOWN));
        Plate mine = redrawn(base, "aaaa aa.", "bbbb a.a", "cccc aaa");
        Plate theirs = redrawn(base, "aaaa aaa", "bbbb a.a", "nnnn a..", "cccc aaa");

        assertThat(starts(base, mine, theirs)).containsExactly(start("cccc", 1, DOWN), start("bbbb", 3, UP));
    }

    @Test
    void aJoinLeavesWhatOneSideTurnedAndLeftSo() {
        Plate base = started(plate("aaaa aa.aa", "bbbb aa..."), start("bbbb", 1, DOWN));
        Plate mine = redrawn(base, "aaaa aa.aa", "nnnn aa...", "bbbb aa...");
        Plate theirs = redrawn(base, "aaaa bb.aa", "bbbb aa...");

        assertThat(starts(base, mine, theirs)).isEqualTo(base.starts());
    }

    @Test
    void aStartThatOnlyMovedCountsAsAnEditTheOtherSidesRowMeets() {
        Plate base = started(plate("aaaa ..aa", "bbbb ..aa", "cccc a.aa"), start("cccc", 3, UP));
        Plate mine = started(base, start("aaaa", 3, UP));
        Plate theirs = redrawn(base, "aaaa ..aa", "bbbb ..aa", "nnnn ..aa", "cccc a.aa");

        assertThat(starts(base, mine, theirs)).containsExactly(start("cccc", 1, UP), start("aaaa", 3, UP));
    }

    @Test
    void figuresPartedTogetherKeepTheirKindsThoughTheRowsBetweenWereTurnedByRule() {
        Plate base = started(plate("aaaa aa.aa", "bbbb aa.aa", "cccc aa.aa"), start("cccc", 1, UP));
        Plate mine = redrawn(base, "aaaa aa.aa", "bbbb .....", "cccc aa.aa");
        Plate theirs = redrawn(base, "aaaa aa.aa", "bbbb aa.aa", "nnnn aa.aa", "cccc aa.aa");

        assertThat(starts(base, mine, theirs))
                .containsExactly(start("cccc", 1, UP), start("aaaa", 1, UP), start("aaaa", 4, DOWN));
    }

    private static List<Start> starts(Plate base, Plate mine, Plate theirs) {
        Plate joined = Join.plate(Optional.of(base), mine, theirs, Hands.UNKNOWN);
        assertThat(Join.plate(Optional.of(base), theirs, mine, Hands.UNKNOWN)).isEqualTo(joined);
        return joined.starts();
    }
}
