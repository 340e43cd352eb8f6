package platekeep.model.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.text.PlateText;
import platekeep.model.text.Reading;

/**
 * The laws of joining three versions, as the literature on three-way merging states them: what one side alone did is the
 * answer, what both did alike is the answer, and it does not matter who joins (Khanna, Kunal and Pierce 2007; in a
 * distributed setting also the condition for two libraries to come to the same bytes).
 */
class JoinLawsTest {

    /** A plate and two edits of it. */
    private record Three(Plate base, Plate mine, Plate theirs) {
        static Three of(long seed, Charted.Ids ids) {
            Random random = new Random(seed);
            Plate base = Charted.plate(random, 2 + random.nextInt(7), 3 + random.nextInt(8), ids, Charted.Ground.LOOSE);
            return new Three(
                    base,
                    Charted.edited(random, base, Charted.Hand.MINE),
                    Charted.edited(random, base, Charted.Hand.THEIRS));
        }
    }

    @Property(tries = 300, seed = "20261125")
    void whatOneSideDidAloneIsTheAnswer(@ForAll long seed, @ForAll Charted.Ids ids) {
        Three three = Three.of(seed, ids);
        assertThat(join(three.base(), three.mine(), three.base())).isEqualTo(three.mine());
        assertThat(join(three.base(), three.base(), three.theirs())).isEqualTo(three.theirs());
    }

    /** The same law, where the other side's edit is not nothing but lies wholly elsewhere. */
    @Property(tries = 500, seed = "20261125")
    void aNoteWrittenOnOneSideTakesNothingFromTheOther(@ForAll long seed, @ForAll Charted.Ids ids) {
        Three three = Three.of(seed, ids);
        Plate noted = noted(three.base());
        assertThat(PlateText.write(join(three.base(), three.mine(), noted)))
                .isEqualTo(PlateText.write(noted(three.mine())));
        assertThat(PlateText.write(join(three.base(), noted, three.theirs())))
                .isEqualTo(PlateText.write(noted(three.theirs())));
    }

    @Property(tries = 300, seed = "20261125")
    void whatBothDidAlikeIsTheAnswer(@ForAll long seed, @ForAll Charted.Ids ids) {
        Three three = Three.of(seed, ids);
        assertThat(join(three.base(), three.mine(), three.mine())).isEqualTo(three.mine());
    }

    @Property(tries = 1000, seed = "20261125")
    void sidesExchangedGiveTheSameBytes(@ForAll long seed, @ForAll Charted.Ids ids) {
        Three three = Three.of(seed, ids);
        assertThat(PlateText.write(join(three.base(), three.theirs(), three.mine())))
                .isEqualTo(PlateText.write(join(three.base(), three.mine(), three.theirs())));
    }

    /** Two plates found by the law before: both hands moved one row to the top, and one put another in beside it. */
    @Example
    void sidesExchangedGiveTheSameBytesWhereBothMovedOneRow() {
        sidesExchangedGiveTheSameBytes(286539, Charted.Ids.GIVEN);
        sidesExchangedGiveTheSameBytes(112, Charted.Ids.NONE);
    }

    @Property(tries = 1000, seed = "20261125")
    void aJoinedPlateIsReadBackWithNothingToMend(@ForAll long seed, @ForAll Charted.Ids ids) {
        Three three = Three.of(seed, ids);
        Plate joined = join(three.base(), three.mine(), three.theirs());
        Reading<Plate> reading = PlateText.read("joined.json", PlateText.bytes(joined));
        assertThat(reading).isEqualTo(new Reading.Good<>(joined, List.of()));
    }

    @Property(tries = 1000, seed = "20261125")
    void everyColourComesFromOneOfTheThreeAtThatPlace(@ForAll long seed) {
        Random random = new Random(seed);
        Plate base = Charted.plate(
                random, 3 + random.nextInt(8), 4 + random.nextInt(8), Charted.Ids.GIVEN, Charted.Ground.FULL);
        Plate mine = Charted.inPlace(random, base, Charted.Hand.MINE);
        Plate theirs = Charted.inPlace(random, base, Charted.Hand.THEIRS);
        Plate joined = join(base, mine, theirs);
        for (Row row : joined.rows()) {
            for (int k = 0; k < row.cells().length(); k++) {
                assertThat(coloursAt(row, k, List.of(base, mine, theirs)))
                        .as("row %s, position %d", row.text(), k)
                        .contains(row.cells().charAt(k));
            }
        }
    }

    private static Set<Character> coloursAt(Row row, int k, List<Plate> plates) {
        Set<Character> colours = new HashSet<>();
        for (Plate plate : plates) {
            int i = plate.indexOf(row.id().orElseThrow());
            if (i >= 0) {
                colours.add(plate.rows().get(i).cells().charAt(k));
            }
        }
        return colours;
    }

    private static Plate noted(Plate plate) {
        return plate.edit().notes(List.of("Stitch the gate last.")).build();
    }

    private static Plate join(Plate base, Plate mine, Plate theirs) {
        return Join.of(Optional.of(base), mine, theirs, Hands.UNKNOWN).plate();
    }
}
