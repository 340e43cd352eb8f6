package platekeep.model.find.tag;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import platekeep.model.find.Summary;
import platekeep.model.find.Surroundings;
import platekeep.model.plate.Age;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;
import platekeep.model.text.LibraryFacts;

class TagsTest {
    private static final Plate BOAT = plate("a", "Boat", "boat", "seaside");

    private static Plate plate(String id, String title, String... themes) {
        return new Draft(id, title)
                .themes(List.of(themes))
                .ages(List.of(Age.CHILD))
                .build();
    }

    private static Summary summary(Plate plate, Series... series) {
        return Summary.of(plate.id(), plate, Surroundings.of(new LibraryFacts("id", "Harbour"), List.of(series)));
    }

    @Test
    void tagsAreGivenAndTakenAndKeepTheirOrder() {
        Tagging tagging = new Tagging(
                new Tags(List.of("kites"), List.of(Age.INFANT), List.of("yoke"), List.of("Wenna Tarrow")),
                new Tags(List.of("boat"), List.of(), List.of(), List.of()));
        Plate tagged = tagging.on(BOAT);
        assertThat(tagged.themes()).containsExactly("kites", "seaside");
        assertThat(tagged.ages()).containsExactly(Age.INFANT, Age.CHILD);
        assertThat(tagged.uses()).containsExactly("yoke");
        assertThat(tagged.designers()).containsExactly("Wenna Tarrow");
        assertThat(tagging.on(tagged)).isSameAs(tagged);
        assertThat(tagging.words()).isEqualTo("Tagged kites, infant, yoke, Wenna Tarrow; no longer boat");
    }

    @Test
    void aThemeIsRenamedOnPlatesAndOnTheListAndItsOldWordStillFinds() {
        ThemeRename rename = new ThemeRename("boat", "boats");
        assertThat(rename.on(BOAT).themes()).containsExactly("boats", "seaside");
        assertThat(rename.on(plate("b", "Ship", "boat", "boats")).themes()).containsExactly("boats");
        Plate other = plate("c", "Fox", "foxes");
        assertThat(rename.on(other)).isSameAs(other);
        LibraryFacts facts = new LibraryFacts("id", "Harbour")
                .withThemes(Map.of("boat", List.of("dinghy"), "boats", List.of("ships")));
        assertThat(rename.on(facts).themes()).containsExactly(Map.entry("boats", List.of("boat", "dinghy", "ships")));
    }

    @Test
    void unusedAndNearlyEqualThemesArePointedOut() {
        List<ThemeLine> lines = ThemeLine.of(
                List.of(
                        summary(plate("a", "A", "boat", "lighthouses")),
                        summary(plate("b", "B", "Boats", "lighthousse")),
                        summary(plate("c", "C", "goats"))),
                Map.of("seaside", List.of("sea"), "goats", List.of()));
        assertThat(lines)
                .extracting(ThemeLine::theme)
                .containsExactly("boat", "Boats", "goats", "lighthouses", "lighthousse", "seaside");
        assertThat(lines.get(1).near()).containsExactly("boat");
        assertThat(lines.get(2).near()).isEmpty();
        assertThat(lines.get(3).near()).containsExactly("lighthousse");
        assertThat(lines.get(5).isUnused()).isTrue();
        assertThat(lines.get(5).also()).containsExactly("sea");
    }

    @Test
    void themesAreSuggestedFromTheSeriesAndFromLikeTitles() {
        Series days = new Series("s", "Days", List.of("a", "b"), Palette.EMPTY, List.of(), Unknown.NONE);
        Summary boat = summary(BOAT, days);
        List<Summary> all = List.of(
                boat,
                summary(plate("b", "Harbour", "harbour", "seaside"), days),
                summary(plate("c", "Boats on the Pond", "ponds", "boat")),
                summary(plate("d", "Fox", "foxes")));
        assertThat(Suggested.themes(List.of(boat), all, 5)).containsExactly("ponds", "harbour");
        assertThat(Suggested.themes(List.of(boat), all, 1)).containsExactly("ponds");
    }
}
