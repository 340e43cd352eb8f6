package platekeep.model.compare;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.difflib.DiffUtils;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/**
 * The pairing of rows beside what is known of shortest edit scripts. Rows have no ids and two different ones share no
 * colour at any place, so that only equal rows are alike: then pairing rows is finding a common subsequence.
 */
class WorkedExampleTest {
    private static final Palette PALETTE = Palette.EMPTY
            .with('A', new Colour("apple", "#A63C2B", 4))
            .with('B', new Colour("bay", "#2B5BA6", 4))
            .with('C', new Colour("chalk", "#F4F1E8", 4))
            .with('D', new Colour("dune", "#E9B83C", 4))
            .with('E', new Colour("elder", "#5A2B6E", 4));

    /**
     * E. W. Myers, "An O(ND) Difference Algorithm and Its Variations", Algorithmica 1 (1986), figures 1 and 2: the
     * shortest edit script from ABCABBA to CBABAC has five steps, the longest common subsequence four symbols.
     */
    @ParameterizedTest
    @CsvSource({"apart", "over each other"})
    void theExampleOfMyersTakesFiveRowsPutInOrTakenOutAndPairsFour(String lie) {
        Comparison comparison = Comparison.of(plate("ABCABBA", lie), plate("CBABAC", lie));

        assertThat(count(comparison, RowPair.Kind.REMOVED)).isEqualTo(3);
        assertThat(count(comparison, RowPair.Kind.ADDED)).isEqualTo(2);
        assertThat(count(comparison, RowPair.Kind.SAME)).isEqualTo(4);
        assertThat(comparison.rows()).hasSize(9);
    }

    /** The oracle for the longest common subsequence is java-diff-utils 4.16, its exact algorithm of Myers. */
    @Property(tries = 500, seed = "20261125")
    void equalRowsArePairedAtLeastAsOftenAsInTheLongestCommonSubsequence(
            @ForAll("letters") String before, @ForAll("letters") String after) {
        List<Character> a = characters(before);
        List<Character> b = characters(after);
        int removed = DiffUtils.diff(a, b).getDeltas().stream()
                .mapToInt(delta -> delta.getSource().size())
                .sum();

        assertThat(equalPairs(Comparison.of(plate(before, "apart"), plate(after, "apart"))))
                .isGreaterThanOrEqualTo(before.length() - removed);
    }

    /** Each row of both plates stands in the comparison once, whatever is paired with what. */
    @Property(tries = 300, seed = "20261125")
    void everyRowOfBothPlatesIsShownOnce(@ForAll("letters") String before, @ForAll("letters") String after) {
        List<RowPair> rows =
                Comparison.of(plate(before, "apart"), plate(after, "apart")).rows();

        assertThat(rows.stream().map(RowPair::before).flatMap(Optional::stream))
                .containsExactlyInAnyOrderElementsOf(indexes(before));
        assertThat(rows.stream().map(RowPair::after).flatMap(Optional::stream))
                .containsExactlyElementsOf(indexes(after));
    }

    @Provide
    Arbitrary<String> letters() {
        return Arbitraries.strings()
                .withChars('A', 'B', 'C', 'D', 'E')
                .ofMinLength(0)
                .ofMaxLength(16);
    }

    private static List<Integer> indexes(String rows) {
        return IntStream.range(0, rows.length()).boxed().toList();
    }

    private static List<Character> characters(String text) {
        return text.chars().mapToObj(c -> (char) c).toList();
    }

    private static long count(Comparison comparison, RowPair.Kind kind) {
        return comparison.rows().stream().filter(pair -> pair.kind() == kind).count();
    }

    private static int equalPairs(Comparison comparison) {
        return (int) comparison.rows().stream()
                .filter(pair -> pair.before().isPresent() && pair.after().isPresent())
                .filter(pair -> comparison
                        .before()
                        .rows()
                        .get(pair.before().get())
                        .equals(comparison.after().rows().get(pair.after().get())))
                .count();
    }

    /** A plate without row ids, one letter a row: each letter at places of its own, or all at the same places. */
    private static Plate plate(String letters, String lie) {
        List<Row> rows = letters.chars()
                .mapToObj(c -> row((char) c, lie.equals("apart")))
                .toList();
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a11", "Rows of letters")
                .palette(PALETTE)
                .pleats(Optional.of(new Pleats(1, 16)))
                .rows(rows)
                .build();
    }

    private static Row row(char letter, boolean apart) {
        int first = apart ? (letter - 'A') * 3 : 6;
        return Row.bare(".".repeat(first) + String.valueOf(letter).repeat(2) + ".".repeat(13 - first));
    }
}
