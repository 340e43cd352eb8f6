package platekeep.model.stitch;

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
import platekeep.model.plate.Unknown;

class KeptKindsTest {

    @Test
    void anEditThatTurnsNothingLeavesThePlateAsItIs() {
        Plate before = started(plate("aaaa aa.a", "bbbb aa.a"), start("bbbb", 1, UP));
        Plate edited = redrawn(before, "aaaa ab.a", "bbbb aaaa");

        assertThat(KeptKinds.after(before, edited)).isSameAs(edited);
    }

    @Test
    void aStartWhoseCableIsErasedMovesAlongItsRowToTheNearestLeftFirst() {
        Plate before = started(plate("aaaa aaaaaa", "bbbb aaaaaa"), start("bbbb", 3, UP));

        assertThat(starts(before, "aaaa aaaaaa", "bbbb aa.aaa")).containsExactly(start("bbbb", 2, DOWN));
        assertThat(starts(before, "aaaa aaaaaa", "bbbb ....aa")).containsExactly(start("bbbb", 5, UP));
    }

    @Test
    void aStartWhoseRowIsErasedMovesUpwardsBeforeItMovesDownwards() {
        Plate before = started(plate("aaaa aaa", "bbbb aaa", "cccc aaa", "dddd aaa"), start("cccc", 2, UP));

        assertThat(starts(before, "aaaa aaa", "bbbb aaa", "cccc ...", "dddd aaa"))
                .containsExactly(start("bbbb", 2, DOWN));
        assertThat(starts(before, "aaaa aaa", "bbbb ...", "cccc ...", "dddd aaa"))
                .containsExactly(start("aaaa", 2, UP));
        assertThat(starts(before, "aaaa ...", "bbbb ...", "cccc ...", "dddd aaa"))
                .containsExactly(start("dddd", 2, DOWN));
    }

    @Test
    void aStartWhoseRowGoesKeepsTheKindsAboveAndTurnsThoseBelow() {
        Plate before = started(plate("aaaa aaa", "bbbb aaa", "cccc aaa"), start("bbbb", 2, UP));
        Plate edited = redrawn(before, "aaaa aaa", "cccc aaa");

        Plate kept = KeptKinds.after(before, edited);

        assertThat(kept.starts()).containsExactly(start("aaaa", 2, DOWN));
        assertThat(Drawn.kinds(before)).containsExactly("udu", "dud", "udu");
        assertThat(Drawn.kinds(kept)).containsExactly("udu", "dud");
    }

    @Test
    void aMovedStartTakesItsGatheringRowAlong() {
        Start first = new Start(start("aaaa", 1, UP).row(), 1, UP, Optional.of("5"), Unknown.NONE);
        Plate before = started(plate("aaaa aa"), first);

        assertThat(starts(before, "aaaa .a")).containsExactly(first.at(first.row(), 2, DOWN));
    }

    @Test
    void aStartThatNeverHadASayIsTurnedTogetherWithItsDouble() {
        Plate before =
                started(plate("aaaa aaa"), start("aaaa", 2, DOWN), start("aaaa", 3, DOWN), start("aaaa", 3, DOWN));
        Plate kept = KeptKinds.after(before, redrawn(before, "aaaa a.a"));

        assertThat(Drawn.kinds(before)).containsExactly("udu");
        assertThat(Drawn.kinds(kept)).containsExactly("u.u");
    }

    @Test
    void aStartWhoseFigureIsGoneGoesAndThoseThatFollowedItKeepTheirKinds() {
        Plate before = started(plate("aaaa aa.aa"), start("aaaa", 1, DOWN));
        Plate kept = KeptKinds.after(before, redrawn(before, "aaaa ...aa"));

        assertThat(Drawn.kinds(before)).containsExactly("du.ud");
        assertThat(kept.starts()).containsExactly(start("aaaa", 4, UP));
        assertThat(Drawn.kinds(kept)).containsExactly("...ud");
    }

    @Test
    void oneNewStartIsEnoughForAllThatFollowedTheOneThatIsGone() {
        Plate before = started(plate("aaaa aa.aa.aa"), start("aaaa", 1, DOWN));

        assertThat(starts(before, "aaaa ...aa.aa")).containsExactly(start("aaaa", 4, UP));
    }

    @Test
    void whereTheStartThatIsNowTheFirstSaysTheSameNoneIsAdded() {
        Plate before =
                started(plate("aaaa aa.aa", "bbbb .....", "cccc aa..."), start("cccc", 1, DOWN), start("aaaa", 4, UP));

        assertThat(starts(before, "aaaa aa.aa", "bbbb .....", "cccc .....")).containsExactly(start("aaaa", 4, UP));
    }

    @Test
    void ofTwoStartsThatLoseTheirCablesToOnePlaceTheFirstIsKept() {
        Plate before = started(plate("aaaa aaa"), start("aaaa", 1, UP), start("aaaa", 2, DOWN));

        assertThat(starts(before, "aaaa ..a")).containsExactly(start("aaaa", 3, UP));
    }

    @Test
    void aStartThatLosesItsCableGivesWayToOneThatStandsThere() {
        Plate before = started(plate("aaaa aa"), start("aaaa", 1, UP), start("aaaa", 2, DOWN));

        assertThat(starts(before, "aaaa .a")).containsExactly(start("aaaa", 2, DOWN));
    }

    @Test
    void aRowPutInTurnsWhatLiesBeyondItInItsFigureAndNothingElse() {
        Plate before = started(plate("aaaa aa.aa", "bbbb aa.aa", "cccc aa..."), start("cccc", 1, DOWN));
        Plate edited = redrawn(before, "aaaa aa.aa", "bbbb aa.aa", "nnnn aa...", "cccc aa...");

        Plate kept = KeptKinds.after(before, edited);

        assertThat(Drawn.kinds(before)).containsExactly("du.ud", "ud.du", "du...");
        assertThat(Drawn.kinds(kept)).containsExactly("ud.ud", "du.du", "ud...", "du...");
        assertThat(kept.starts()).containsExactly(start("cccc", 1, DOWN), start("bbbb", 4, DOWN));
    }

    @Test
    void aBlankRowPutInPartsAFigureFromItsStartAndItsKindsStay() {
        Plate before = started(plate("aaaa aa", "bbbb aa"), start("bbbb", 1, DOWN));
        Plate kept = KeptKinds.after(before, redrawn(before, "aaaa aa", "nnnn ..", "bbbb aa"));

        assertThat(Drawn.kinds(kept)).containsExactly("ud", "..", "du");
        assertThat(kept.starts()).containsExactly(start("bbbb", 1, DOWN), start("aaaa", 1, UP));
    }

    @Test
    void aFigurePartedFromAStartThatIsNotTheFirstGetsOneOfItsOwn() {
        Plate before = started(plate("aaaa aaa", "bbbb ...", "cccc aaa"), start("cccc", 1, DOWN), start("aaaa", 1, UP));
        Plate kept = KeptKinds.after(before, redrawn(before, "aaaa a.a", "bbbb ...", "cccc aaa"));

        assertThat(Drawn.kinds(before)).containsExactly("udu", "...", "dud");
        assertThat(Drawn.kinds(kept)).containsExactly("u.u", "...", "dud");
        assertThat(kept.starts()).containsExactly(start("cccc", 1, DOWN), start("aaaa", 1, UP), start("aaaa", 3, UP));
    }

    @Test
    void newCablesBelowAFigureDoNotTakeItsAnchor() {
        Plate before = started(plate("aaaa ..a", "bbbb ...", "cccc a.."), start("cccc", 1, DOWN));
        Plate edited = redrawn(before, "aaaa ..a", "nnnn ..b", "bbbb ...", "cccc a..");

        assertThat(KeptKinds.after(before, edited).starts())
                .containsExactly(start("cccc", 1, DOWN), start("aaaa", 3, DOWN));
    }

    @Test
    void turningAStartTurnsItsOwnFigureAndNotThoseThatFollowIt() {
        Plate before = started(plate("aaaa aa.aa"), start("aaaa", 1, DOWN));
        Plate kept = KeptKinds.after(before, started(before, start("aaaa", 1, UP)));

        assertThat(Drawn.kinds(kept)).containsExactly("ud.ud");
        assertThat(kept.starts()).containsExactly(start("aaaa", 1, UP), start("aaaa", 4, UP));
    }

    @Test
    void aStartPutInBelowTheFirstTurnsNothingElse() {
        Plate before = started(plate("aaaa a.a.a", "bbbb a...."), start("aaaa", 5, DOWN));
        Plate kept = KeptKinds.after(before, started(before, start("aaaa", 5, DOWN), start("bbbb", 1, DOWN)));

        assertThat(Drawn.kinds(before)).containsExactly("d.d.d", "u....");
        assertThat(Drawn.kinds(kept)).containsExactly("u.d.d", "d....");
    }

    @Test
    void aPlateWithoutStartsKeepsItsKindsWhenItsLowestRowIsPaintedAnew() {
        Plate before = plate("aaaa aa.", "bbbb ...", "cccc ...");
        Plate kept = KeptKinds.after(before, redrawn(before, "aaaa aa.", "bbbb ...", "cccc b.."));

        assertThat(kept.starts()).isEmpty();
        Plate turned = KeptKinds.after(before, redrawn(before, "aaaa aa.", "bbbb ...", "cccc .b."));
        assertThat(turned.starts()).containsExactly(start("aaaa", 1, DOWN));
    }

    @Test
    void anIgnoredStartThatComesToCountIsOverruled() {
        Plate before = started(plate("aaaa aaa"), start("aaaa", 1, DOWN), start("aaaa", 3, UP));
        Plate kept = KeptKinds.after(before, redrawn(before, "aaaa a.a"));

        assertThat(Drawn.kinds(kept)).containsExactly("d.d");
    }

    @Test
    void aStartThatStoodOnNothingDoesNotTurnWhatGrowsTowardsIt() {
        Plate before = started(plate("aaaa aa.a"), start("aaaa", 1, DOWN), start("aaaa", 3, UP));
        Plate kept = KeptKinds.after(before, redrawn(before, "aaaa ..aa"));

        assertThat(Drawn.kinds(before)).containsExactly("du.u");
        assertThat(Drawn.kinds(kept)).containsExactly("..du");
    }

    @Test
    void aStartOnARowThatNeverWasThereIsKept() {
        Plate before = started(plate("aaaa aa"), start("aaaa", 1, UP), start("zzzz", 1, UP));

        assertThat(starts(before, "aaaa ba")).isEqualTo(before.starts());
    }

    @Test
    void aPictureMovedWithItsStartTakesThoseThatFollowAlong() {
        Plate before = started(plate("aaaa aab.ac...", "bbbb aa.....b."), start("bbbb", 1, DOWN));
        Plate edited = started(redrawn(before, "aaaa .aab.ac..", "bbbb .aa.....b"), start("bbbb", 2, DOWN));

        assertThat(KeptKinds.after(before, edited)).isSameAs(edited);
    }

    @Test
    void aPictureMirroredWithItsStartTakesThoseThatFollowAlong() {
        Plate before = started(plate("aaaa aab.cc", "bbbb aa...."), start("bbbb", 1, DOWN));
        Plate edited = started(redrawn(before, "aaaa cc.baa", "bbbb ....aa"), start("bbbb", 6, DOWN));

        Plate kept = KeptKinds.after(before, edited);

        assertThat(Drawn.kinds(before)).containsExactly("udu.ud", "du....");
        assertThat(Drawn.kinds(kept)).containsExactly("du.udu", "....ud");
    }

    @Test
    void aPictureTurnedUpsideDownWithItsStartTakesThoseThatFollowAlong() {
        Plate before = started(plate("aaaa a..b", "bbbb a..c", "cccc aa.."), start("cccc", 1, DOWN));
        Plate edited = started(redrawn(before, "aaaa aa..", "bbbb a..c", "cccc a..b"), start("aaaa", 1, UP));

        Plate kept = KeptKinds.after(before, edited);

        assertThat(Drawn.kinds(before)).containsExactly("d..u", "u..d", "du..");
        assertThat(Drawn.kinds(kept)).containsExactly("ud..", "d..u", "u..d");
    }

    @Test
    void aFigureGetsItsOwnStartWithTheKindsThatItHas() {
        Plate before = started(plate("aaaa aa.aa"), start("aaaa", 1, DOWN));

        Plate own = KeptKinds.withOwnStart(before, 0, 5);

        assertThat(own.starts()).containsExactly(start("aaaa", 1, DOWN), start("aaaa", 4, UP));
        assertThat(KeptKinds.withOwnStart(own, 0, 5)).isSameAs(own);
        assertThat(KeptKinds.withOwnStart(own, 0, 3)).isSameAs(own);
    }

    private static List<Start> starts(Plate before, String... rows) {
        return KeptKinds.after(before, redrawn(before, rows)).starts();
    }
}
