package platekeep.client.gallery.tag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.plate.TestPlates;
import platekeep.client.room.TestRoom;
import platekeep.client.task.Progress;
import platekeep.model.find.Summary;
import platekeep.model.find.Surroundings;
import platekeep.model.find.tag.Tagging;
import platekeep.model.find.tag.Tags;
import platekeep.model.find.tag.ThemeLine;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;

class TagPresenterTest {
    private static final String KITE = "00000000-0000-4000-8000-000000000001";
    private static final String BOAT = "00000000-0000-4000-8000-000000000002";

    @TempDir
    private Path folder;

    private TestRoom test;
    private final View view = new View();
    private TagPresenter tags;

    @BeforeEach
    void openALibraryOfTwo() throws LibraryException {
        test = new TestRoom(folder);
        for (Plate plate : List.of(plate(KITE, "Kite", "kite", "seaside"), plate(BOAT, "Boat", "boats", "kites"))) {
            test.library.save(
                    new Saving(List.of(new Change.PutPlate(plate)), "Drawn", Optional.empty(), Optional.empty()));
        }
        test.open();
        tags = new TagPresenter(test.room, view, this::summaries);
    }

    private static Plate plate(String id, String title, String... themes) {
        return TestPlates.block(id, title).edit().themes(List.of(themes)).build();
    }

    private List<Summary> summaries() {
        return test.library.list(Progress.NONE).stream()
                .flatMap(entry -> entry.plate().stream())
                .map(plate -> Summary.of(test.library.folder() + "\n" + plate.id(), plate, Surroundings.NONE))
                .toList();
    }

    private List<TagView.Chosen> both() {
        return summaries().stream()
                .map(summary -> new TagView.Chosen(test.library, summary))
                .toList();
    }

    private List<String> themes(String id) {
        return test.library.plate(id).flatMap(Entry::plate).orElseThrow().themes();
    }

    @Test
    void manyPlatesAreTaggedAsOneVersion() {
        view.answer = Optional.of(new TagView.Answer(
                new Tagging(
                        new Tags(List.of("summer"), List.of(Age.TODDLER), List.of(), List.of()),
                        new Tags(List.of("seaside"), List.of(), List.of(), List.of())),
                ""));
        int before = test.library.versions(99).size();
        tags.tag(both());
        assertThat(themes(KITE)).containsExactly("kite", "summer");
        assertThat(themes(BOAT)).containsExactly("boats", "kites", "summer");
        assertThat(test.library.versions(99)).hasSize(before + 1);
        assertThat(test.library.versions(1).get(0).reason()).isEqualTo("Tagged summer, toddler; no longer seaside");
        assertThat(test.front.said)
                .contains("Saved: Tagged summer, toddler; no longer seaside (2 plates). Ctrl+Z takes it back.");
    }

    @Test
    void whatIsSoAlreadyMakesNoVersion() {
        view.answer = Optional.of(new TagView.Answer(
                new Tagging(Tags.NONE, new Tags(List.of("foxes"), List.of(), List.of(), List.of())), ""));
        int before = test.library.versions(99).size();
        tags.tag(both());
        assertThat(test.library.versions(99)).hasSize(before);
        assertThat(test.front.said).contains("That is so already; there is nothing to save.");
        tags.tag(List.of());
        assertThat(test.front.troubles).containsExactly("Choose the plates to tag first.");
    }

    @Test
    void aThemeIsMergedOverTheLibraryAfterAPreview() {
        view.deed = lines -> Optional.of(new TagView.Deed.Rename("kite", "kites"));
        tags.themes(test.library);
        assertThat(view.lines).extracting(ThemeLine::theme).containsExactly("boats", "kite", "kites", "seaside");
        assertThat(view.preview)
                .isEqualTo("\"kite\" becomes \"kites\" on 1 plate. \"kites\" is a theme already, of 1 plate: the two"
                        + " become one. Looking for \"kite\" goes on finding them.");
        assertThat(view.changing).containsExactly("Kite");
        assertThat(themes(KITE)).containsExactly("kites", "seaside");
        assertThat(test.library.versions(1).get(0).reason()).isEqualTo("Theme \"kite\" is now \"kites\"");
    }

    @Test
    void aPreviewThatIsGivenUpChangesNothing() {
        view.deed = lines -> Optional.of(new TagView.Deed.Rename("kite", "kites"));
        view.agreed = false;
        tags.themes(test.library);
        assertThat(themes(KITE)).containsExactly("kite", "seaside");
    }

    @Test
    void aMergedThemeIsTakenBackWithTheListOfThemes() throws LibraryException {
        var facts = test.library.facts();
        view.deed = lines -> Optional.of(new TagView.Deed.Rename("kite", "kites"));
        tags.themes(test.library);
        tags.takingBack().takeBackLast();
        assertThat(themes(KITE)).containsExactly("kite", "seaside");
        assertThat(themes(BOAT)).containsExactly("boats", "kites");
        assertThat(test.library.facts()).isEqualTo(facts);
        assertThat(test.library.versions(1).get(0).reason()).isEqualTo("Taken back: Theme \"kite\" is now \"kites\"");
        assertThat(view.changing).containsExactly("Kite");
        tags.takingBack().takeBackLast();
        assertThat(themes(KITE)).containsExactly("kites", "seaside");
    }

    @Test
    void onlyTagsAreTakenBackAndWhatCannotBeIsCounted() throws LibraryException {
        tagSummer();
        Plate kite = test.library.plate(KITE).flatMap(Entry::plate).orElseThrow();
        save(kite.edit()
                .title("Kite in the Wind")
                .themes(List.of("summer", "wind"))
                .build());
        test.library.save(new Saving(List.of(new Change.PutAway(BOAT)), "Worn", Optional.empty(), Optional.empty()));
        view.version = Optional.of(0);
        tags.takingBack().takeBackFrom(test.library);
        assertThat(view.versions).hasSize(1);
        assertThat(view.versions.get(0)).contains("Tagged summer").endsWith("(2 plates)");
        assertThat(view.preview)
                .contains(", on 1 plate. Only tags are put back")
                .contains("1 plate is no longer there to be changed (Boat)");
        assertThat(themes(KITE)).containsExactly("wind");
        assertThat(test.library.plate(KITE).flatMap(Entry::plate).orElseThrow().title())
                .isEqualTo("Kite in the Wind");
    }

    @Test
    void aPlateWhoseThemeWasRenamedOnceMoreIsLeft() throws LibraryException {
        view.deed = lines -> Optional.of(new TagView.Deed.Rename("kite", "sky"));
        tags.themes(test.library);
        Plate kite = test.library.plate(KITE).flatMap(Entry::plate).orElseThrow();
        save(kite.edit().themes(List.of("clouds", "seaside")).build());
        view.version = Optional.of(0);
        tags.takingBack().takeBackFrom(test.library);
        assertThat(view.preview)
                .startsWith("Taken back: Theme \"kite\" is now \"sky\", of ")
                .contains(", on the list of themes.")
                .contains("1 plate had those tags changed again since (Kite)");
        assertThat(themes(KITE)).containsExactly("clouds", "seaside");
    }

    @Test
    void withNothingTaggedNothingIsTakenBack() {
        tags.takingBack().takeBackLast();
        assertThat(test.front.said).last().asString().startsWith("Nothing was tagged since");
        tags.takingBack().takeBackFrom(test.library);
        assertThat(test.front.said).last().asString().endsWith("changed tags alone.");
    }

    private void tagSummer() {
        view.answer = Optional.of(new TagView.Answer(
                new Tagging(new Tags(List.of("summer"), List.of(), List.of(), List.of()), Tags.NONE), ""));
        tags.tag(both());
    }

    private void save(Plate plate) throws LibraryException {
        test.library.save(
                new Saving(List.of(new Change.PutPlate(plate)), "Drawn on", Optional.empty(), Optional.empty()));
    }

    /** Answers as it was told to. */
    private static final class View implements TagView {
        private Optional<Answer> answer = Optional.empty();
        private Function<List<ThemeLine>, Optional<Deed>> deed = lines -> Optional.empty();
        private boolean agreed = true;
        private List<ThemeLine> lines = new ArrayList<>();
        private List<String> versions = List.of();
        private Optional<Integer> version = Optional.empty();
        private String preview = "";
        private List<String> changing = List.of();

        @Override
        public Optional<Answer> askTags(List<Summary> plates, List<String> suggested, List<String> known) {
            return answer;
        }

        @Override
        public Optional<Deed> askThemes(String library, List<ThemeLine> themes) {
            lines = themes;
            return deed.apply(themes);
        }

        @Override
        public Optional<Integer> askTagVersion(String library, List<String> offered) {
            versions = offered;
            return version;
        }

        @Override
        public boolean agrees(String sentence, List<String> plates) {
            preview = sentence;
            changing = plates;
            return agreed;
        }
    }
}
