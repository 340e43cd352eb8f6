package platekeep.model.join.back;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.join.Joined;
import platekeep.model.join.edits.Case;
import platekeep.model.join.edits.EditCases;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Unknown;

/** Taking back is the opposite of taking over, whatever the change was. */
class ReversalTest {
    private static final Plate BASE = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Kite")
            .palette(Palette.EMPTY
                    .with('b', new Colour("brick", "#A63C2B", 4))
                    .with('c', new Colour("chalk", "#F4F1E8", 4)))
            .pleats(Optional.of(new Pleats(1, 9)))
            .rows(List.of(
                    Row.of("r4r4", "..bbbb.."),
                    Row.of("r3r3", "..bccb.."),
                    Row.of("r2r2", ".bbbbbb."),
                    Row.of("r1r1", "bbbbbbbb")))
            .build();

    private static Plate rows(Row... rows) {
        return BASE.edit().rows(List.of(rows)).build();
    }

    private static List<Reversal> reversals(Plate mine, Plate theirs) {
        return Reversal.of(BASE, mine, theirs, join(mine, theirs));
    }

    private static Joined join(Plate mine, Plate theirs) {
        return Join.of(Optional.of(BASE), mine, theirs, Hands.UNKNOWN);
    }

    private static Reversal only(Plate theirs) {
        List<Reversal> all = reversals(BASE, theirs);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    @Test
    void aRowThatWasPutInGoesAndComesWithWhatLiesOnIt() {
        Plate theirs = rows(
                        Row.of("r4r4", "..bbbb.."),
                        Row.of("n1n1", "..cccc.."),
                        Row.of("r3r3", "..bccb.."),
                        Row.of("r2r2", ".bbbbbb."),
                        Row.of("r1r1", "bbbbbbbb"))
                .edit()
                .marks(List.of(new Mark("french knot", new RowId("n1n1"), "4", 'b', Unknown.NONE)))
                .build();
        Reversal row = reversals(BASE, theirs).stream()
                .filter(r -> r.settled().words().contains("row added"))
                .findFirst()
                .orElseThrow();
        Plate out = row.out(theirs);
        assertThat(out.rows()).isEqualTo(BASE.rows());
        assertThat(out.marks()).isEmpty();
        assertThat(row.standing(out)).isEqualTo(Reversal.Standing.OUT);
        assertThat(row.in(out)).isEqualTo(theirs);
    }

    @Test
    void aRowThatWasTakenOutComesBackToItsPlace() {
        Plate theirs = rows(Row.of("r4r4", "..bbbb.."), Row.of("r2r2", ".bbbbbb."), Row.of("r1r1", "bbbbbbbb"));
        Reversal gone = only(theirs);
        assertThat(gone.out(theirs).rows()).isEqualTo(BASE.rows());
        assertThat(gone.in(gone.out(theirs)).rows()).isEqualTo(theirs.rows());
    }

    @Test
    void ofAChangeThatClashesInPartOnlyTheRestIsTakenBack() {
        Plate mine = rows(
                Row.of("r4r4", "..bbbb.."),
                Row.of("r3r3", "..bccb.."),
                Row.of("r2r2", ".bccccb."),
                Row.of("r1r1", "bbbbbbbb"));
        Plate theirs = rows(
                Row.of("r4r4", "..bbbb.."),
                Row.of("r3r3", "..bccb.."),
                Row.of("r2r2", ".b..bbb."),
                Row.of("r1r1", "bbbbbbbb"));
        Plate joined = join(mine, theirs).plate();
        assertThat(joined.clashes()).hasSize(1);
        Reversal chalk = reversals(mine, theirs).stream()
                .filter(r -> r.settled().words().contains("chalk"))
                .findFirst()
                .orElseThrow();
        assertThat(joined.rows().get(2).cells()).isEqualTo(".bbbccb.");
        assertThat(chalk.standing(joined)).isEqualTo(Reversal.Standing.IN);
        assertThat(chalk.out(joined).rows().get(2).cells()).isEqualTo(".bbbbbb.");
    }

    @Test
    void whatWasPaintedOverSinceStaysPainted() {
        Plate theirs = rows(
                Row.of("r4r4", "..bbbb.."),
                Row.of("r3r3", "..bccb.."),
                Row.of("r2r2", ".bccccb."),
                Row.of("r1r1", "bbbbbbbb"));
        Plate painted = rows(
                Row.of("r4r4", "..bbbb.."),
                Row.of("r3r3", "..bccb.."),
                Row.of("r2r2", ".bcc..b."),
                Row.of("r1r1", "bbbbbbbb"));
        Reversal chalk = only(theirs);
        assertThat(chalk.standing(painted)).isEqualTo(Reversal.Standing.PARTLY);
        assertThat(chalk.out(painted).rows().get(2).cells()).isEqualTo(".bbb..b.");
    }

    @Test
    void aFactIsTakenBackByItself() {
        Plate theirs = BASE.edit()
                .title("Kite at noon")
                .themes(List.of("wind"))
                .palette(BASE.palette().with('b', new Colour("brick", "#8C2F27", 4)))
                .build();
        List<Reversal> all = reversals(BASE, theirs);
        assertThat(all).hasSize(3).allMatch(r -> r.isAlone(theirs));
        Plate now = theirs;
        for (Reversal one : all) {
            now = one.out(now);
            assertThat(one.standing(now)).isEqualTo(Reversal.Standing.OUT);
        }
        assertThat(now).isEqualTo(BASE);
    }

    /** What the generator of edits does is taken back change by change, and put in again in the opposite order. */
    @Test
    void nearlyAllThatDesignersDoIsTakenBackChangeByChange() {
        int changes = 0;
        int alone = 0;
        int plates = 0;
        int back = 0;
        int again = 0;
        for (Case of : EditCases.all(5, 300).toList()) {
            boolean haveIds = of.base().rows().stream().allMatch(r -> r.id().isPresent())
                    && of.theirs().rows().stream().allMatch(r -> r.id().isPresent());
            if (!haveIds || of.base().hasClashes()) {
                continue;
            }
            plates++;
            Joined joined = Join.of(Optional.of(of.base()), of.base(), of.theirs(), Hands.UNKNOWN);
            List<Reversal> all = new ArrayList<>(Reversal.of(of.base(), of.base(), of.theirs(), joined));
            changes += all.size();
            alone += (int) all.stream().filter(r -> r.isAlone(joined.plate())).count();
            Plate now = joined.plate();
            for (Reversal one : all) {
                now = one.out(now);
            }
            back += bare(now).equals(bare(of.base())) ? 1 : 0;
            Collections.reverse(all);
            for (Reversal one : all) {
                now = one.in(now);
            }
            again += bare(now).equals(bare(of.theirs())) ? 1 : 0;
        }
        assertThat(plates).isGreaterThan(150);
        assertThat(alone).as("of %d changes", changes).isGreaterThan(changes * 94 / 100);
        assertThat(back).as("of %d plates", plates).isGreaterThan(plates * 88 / 100);
        assertThat(again).as("of %d plates", plates).isGreaterThan(plates * 92 / 100);
    }

    /** Starts follow the kinds of the cables and so come and go by themselves. */
    private static Plate bare(Plate plate) {
        return plate.edit().starts(List.of()).build();
    }
}
