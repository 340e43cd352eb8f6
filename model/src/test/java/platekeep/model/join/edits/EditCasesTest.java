package platekeep.model.join.edits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import platekeep.model.join.edits.wrong.WrongJoiner;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

class EditCasesTest {
    private static List<Case> cases;

    @BeforeAll
    @Timeout(value = 10, unit = TimeUnit.MINUTES)
    static void makeCases() {
        cases = EditCases.all(11, 700).toList();
    }

    @Test
    void theSameSeedGivesTheSameCases() {
        assertThat(EditCases.all(11, 40).toList()).isEqualTo(cases.subList(0, 40));
    }

    @Test
    void everyPlateOfACaseIsCanonicalText() {
        for (Case c : cases.subList(0, 300)) {
            for (Plate plate : List.of(c.base(), c.mine(), c.theirs(), c.want())) {
                assertThat(PlateText.read("plate.json", PlateText.bytes(plate)).value())
                        .as(c.kind())
                        .isEqualTo(Optional.of(plate));
            }
        }
    }

    @Test
    void theClashesThatDesignersRunIntoComeUp() {
        Set<Clash.What> seen = EnumSet.noneOf(Clash.What.class);
        cases.forEach(c -> c.want().clashes().forEach(x -> seen.add(x.what())));
        assertThat(seen)
                .contains(
                        Clash.What.CABLES,
                        Clash.What.ROW,
                        Clash.What.ROWS,
                        Clash.What.PLEATS,
                        Clash.What.FIELD,
                        Clash.What.COLOUR,
                        Clash.What.START);
    }

    @ParameterizedTest
    @EnumSource(WrongJoiner.class)
    void aJoinerThatIsWrongOnPurposeIsCaught(WrongJoiner wrong) {
        assertThat(cases)
                .anyMatch(c -> Verdict.of(c, (base, mine, theirs) -> wrong.join(base, mine, theirs, c.want()))
                                .verdict()
                        != Verdict.RIGHT);
    }

    @Test
    void theRightAnswerItselfIsRight() {
        assertThat(cases)
                .allMatch(c -> !c.declared().isEmpty()
                        || Verdict.of(c, (base, mine, theirs) -> c.want()).verdict() == Verdict.RIGHT);
    }
}
