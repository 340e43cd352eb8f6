package platekeep.model.join.edits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import platekeep.model.plate.Plate;

/**
 * Joining, and the pairing of rows, against cases whose answer is known from the edits themselves and worked out without
 * the code under test. {@link JoinScore} and {@link CompareScore} measure the same on many more.
 */
class GeneratedCasesTest {
    private static final int PART = 20;
    private static List<Case> cases = List.of();

    /** Made once in a run of Java, since making them takes longer than joining them. */
    @BeforeAll
    @Timeout(value = 10, unit = TimeUnit.MINUTES)
    static void makeCases() {
        if (cases.isEmpty()) {
            cases = EditCases.all(7, 6 * PART).toList();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void eachCaseIsJoinedIntoItsAnswerWhoeverJoins(int part) {
        for (Case c : cases.subList(part * PART, (part + 1) * PART)) {
            Verdict.Answer answer = Verdict.of(c, JoinScore::ours);
            assertThat(answer.verdict()).as("%s: %s", c.kind(), answer.why()).isEqualTo(Verdict.RIGHT);
        }
    }

    @Test
    void everyRowIsPairedWithItselfAndNearlyEveryOneAlsoWithoutItsId() {
        CompareScore score = new CompareScore();
        cases.stream()
                .filter(c -> hasAllIds(c.base()) && hasAllIds(c.mine()))
                .forEach(c -> score.measure(c.base(), c.mine()));
        assertThat(score.withIds()).isEqualTo(1.0);
        assertThat(score.bare()).isGreaterThan(0.97);
    }

    private static boolean hasAllIds(Plate plate) {
        return plate.rows().stream().allMatch(row -> row.id().isPresent());
    }
}
