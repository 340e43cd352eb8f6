package platekeep.model.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Age;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;

class FinderTest {
    private static final Plate BOATS =
            plate("a", "Two Sailing Boats", List.of("boats", "seaside"), Age.TODDLER, Age.CHILD);
    private static final Plate GULL = plate("b", "Möwe on a Post", List.of("gulls", "seaside"), Age.INFANT);
    private static final Plate FOX = plate("c", "Fox", List.of("foxes"), Age.TODDLER);
    private static final List<Series> SERIES =
            List.of(new Series("s", "Harbour Days", List.of("a", "b"), Palette.EMPTY, List.of(), Unknown.NONE));
    private static final List<Summary> ALL =
            List.of(BOATS, GULL, FOX).stream().map(p -> Summary.of(p, SERIES)).toList();

    private static Plate plate(String id, String title, List<String> themes, Age... ages) {
        return new Draft(id, title)
                .number(Optional.of("N-" + id))
                .themes(themes)
                .ages(List.of(ages))
                .build();
    }

    private static List<Integer> found(Query query) {
        return Finder.find(ALL, query).at();
    }

    @Test
    void nothingAskedFindsEverything() {
        assertThat(found(Query.ALL)).containsExactly(0, 1, 2);
    }

    @Test
    void aWordIsFoundInSingularAndPlural() {
        assertThat(found(Query.ALL.withWords("boat"))).containsExactly(0);
        assertThat(found(Query.ALL.withWords("BOATS"))).containsExactly(0);
        assertThat(found(Query.ALL.withWords("foxes"))).containsExactly(2);
    }

    @Test
    void aWordIsFoundWithoutItsAccents() {
        assertThat(found(Query.ALL.withWords("mowe"))).containsExactly(1);
        assertThat(found(Query.ALL.withWords("Möwe"))).containsExactly(1);
    }

    @Test
    void allWordsMustBeThere() {
        assertThat(found(Query.ALL.withWords("seaside gull"))).containsExactly(1);
        assertThat(found(Query.ALL.withWords("seaside fox"))).isEmpty();
    }

    @Test
    void allThemesButOneAgeMustBeThere() {
        assertThat(found(Query.ALL.turnTheme("seaside").turnTheme("gulls"))).containsExactly(1);
        assertThat(found(Query.ALL.turnAge(Age.INFANT).turnAge(Age.TODDLER))).containsExactly(0, 1, 2);
        assertThat(found(Query.ALL.turnAge(Age.INFANT).turnAge(Age.INFANT))).containsExactly(0, 1, 2);
    }

    @Test
    void countsSayWhatAskingForOneMoreWouldGive() {
        Found found = Finder.find(ALL, Query.ALL.turnTheme("seaside").turnAge(Age.TODDLER));
        assertThat(found.at()).containsExactly(0);
        assertThat(found.themes()).containsEntry("boats", 1).doesNotContainKey("gulls");
        assertThat(found.ages()).containsEntry(Age.INFANT, 1).containsEntry(Age.TODDLER, 1);
        assertThat(found.series()).containsEntry("Harbour Days", 1);
    }

    @Test
    void aSeriesIsFoundByItsTitleAsAWordToo() {
        assertThat(found(Query.ALL.turnSeries("Harbour Days"))).containsExactly(0, 1);
        assertThat(found(Query.ALL.withWords("harbour"))).containsExactly(0, 1);
    }
}
