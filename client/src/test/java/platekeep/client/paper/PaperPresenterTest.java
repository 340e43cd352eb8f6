package platekeep.client.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Saving;
import platekeep.client.paper.picture.Shots;
import platekeep.client.plate.TestPlates;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.model.find.tag.Tags;
import platekeep.model.plate.Age;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Plate;

class PaperPresenterTest {
    private static final String BOAT = "00000000-0000-4000-8000-000000000009";

    @TempDir
    private Path folder;

    private TestRoom test;
    private Drafts typedThere;
    private final View view = new View();
    private PaperPresenter paper;

    @BeforeEach
    void aLibraryWithThreeScansAndAChart() throws LibraryException {
        test = new TestRoom(folder);
        typedThere = new Drafts(folder.resolve("paper"));
        List<Change> changes = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            Plate scan = new Draft(id(i), "sheet " + i).build();
            changes.add(new Change.PutPlate(scan));
            changes.add(
                    new Change.PutPicture(scan.id(), Picture.Kind.SCAN, Shots.written(Shots.sheet(40 + i, 30), "png")));
        }
        changes.add(new Change.PutPlate(TestPlates.block(BOAT, "Boat")));
        test.library.save(new Saving(changes, "Brought in", Optional.empty(), Optional.empty()));
        paper = new PaperPresenter(test.room, typedThere, view);
        test.open();
    }

    private static String id(int number) {
        return "00000000-0000-4000-8000-00000000000" + number;
    }

    private Plate saved(String id) {
        return test.library.plate(id).flatMap(Entry::plate).orElseThrow();
    }

    private static Facts facts(String title, String themes, String place) {
        return new Facts(title, "", themes, Set.of(Age.TODDLER), "bought", "the market", place, "partner");
    }

    @Test
    void thePileIsWhatIsOnlyAScanYet() {
        paper.entered();
        assertThat(view.state.lines())
                .extracting(PaperState.Line::title)
                .containsExactly("sheet 1", "sheet 2", "sheet 3");
        assertThat(view.state.lines()).allSatisfy(line -> {
            assertThat(line.picture()).isPresent();
            assertThat(line.missing()).isEqualTo("nothing said yet");
        });
        assertThat(view.state.current()).isZero();
    }

    @Test
    void enterTakesWhatIsTypedAndOffersTheRestToTheNext() throws LibraryException {
        paper.entered();
        view.types(facts("Crab", "crabs, seaside", "binder 3, page 9"));
        paper.takeAndGoOn();
        assertThat(view.state.current()).isEqualTo(1);
        assertThat(view.state.lines().get(0).title()).isEqualTo("Crab");
        assertThat(view.state.lines().get(0).missing()).isEmpty();
        assertThat(view.state.offered()).isTrue();
        assertThat(view.state.facts())
                .isEqualTo(
                        new Facts("sheet 2", "", "", Set.of(), "bought", "the market", "binder 3, page 10", "partner"));
        assertThat(view.state.before().orElseThrow().themes()).isEqualTo("crabs, seaside");
        // what is only offered is not taken by walking past
        paper.step(1);
        assertThat(view.state.changed()).isEqualTo(1);
        // and by Enter it is
        paper.step(-1);
        view.types(new Facts("Gull", "", "gulls", Set.of(), "bought", "the market", "binder 3, page 10", "partner"));
        paper.takeAndGoOn();
        paper.takeAndGoOn();
        assertThat(view.state.changed()).isEqualTo(3);
        assertThat(test.library.versions(10)).hasSize(1);

        paper.save();
        assertThat(view.suggested).isEqualTo("Facts of 3 plates");
        assertThat(test.library.versions(10)).hasSize(2);
        assertThat(saved(id(1)).themes()).containsExactly("crabs", "seaside");
        assertThat(saved(id(1)).ages()).containsExactly(Age.TODDLER);
        assertThat(saved(id(1)).origin().use()).hasValue("partner");
        assertThat(saved(id(2)).title()).isEqualTo("Gull");
        assertThat(saved(id(3)).origin().place()).hasValue("binder 3, page 11");
        assertThat(view.state.changed()).isZero();
        assertThat(typedThere.all(test.library.folder())).isEmpty();
    }

    @Test
    void whatIsTypedIsThereAgainAfterTheWindowWasClosed() throws LibraryException {
        paper.entered();
        view.types(facts("Crab", "crabs", ""));
        paper.makeSafe();
        assertThat(typedThere.all(test.library.folder())).hasSize(1);

        // meanwhile the partner's version of the plate came in
        Plate hers = saved(id(1)).edit().notes(List.of("Stitch it in red.")).build();
        test.library.save(new Saving(List.of(new Change.PutPlate(hers)), "Hers", Optional.empty(), Optional.empty()));
        View later = new View();
        PaperPresenter again = new PaperPresenter(test.room, typedThere, later);
        again.entered();
        assertThat(later.state.lines().get(0).title()).isEqualTo("Crab");
        assertThat(later.state.changed()).isEqualTo(1);
        again.save();
        assertThat(saved(id(1)).title()).isEqualTo("Crab");
        assertThat(saved(id(1)).notes()).containsExactly("Stitch it in red.");
    }

    @Test
    void manyChosenGetWhatIsTypedBesideWhatTheyHave() {
        paper.open(List.of(
                new Place.OnePlate(test.library, id(1)),
                new Place.OnePlate(test.library, id(2)),
                new Place.OnePlate(test.library, BOAT)));
        view.types(facts("Crab", "crabs", "box 1"));
        paper.choose(List.of(0, 1, 2));
        assertThat(view.state.many()).isEqualTo(3);
        assertThat(view.state.facts()).isEqualTo(Facts.NOTHING);
        view.types(new Facts("", "", "harbour", Set.of(Age.CHILD), "", "", "box 2", ""));
        paper.takeAndGoOn();
        paper.save();
        assertThat(saved(id(1)).title()).isEqualTo("Crab");
        assertThat(saved(id(1)).themes()).containsExactly("crabs", "harbour");
        assertThat(saved(id(1)).ages()).containsExactly(Age.TODDLER, Age.CHILD);
        assertThat(saved(id(1)).origin().place()).hasValue("box 2");
        assertThat(saved(id(1)).origin().use()).hasValue("partner");
        assertThat(saved(id(2)).title()).isEqualTo("sheet 2");
        assertThat(saved(BOAT).themes()).contains("harbour");
        assertThat(saved(BOAT).rows()).isNotEmpty();
    }

    @Test
    void themesAndAgesAreTakenFromManyAsOneVersion() {
        paper.open(List.of(new Place.OnePlate(test.library, id(1)), new Place.OnePlate(test.library, id(2))));
        view.types(facts("Crab", "crabs, seaside", "box 1"));
        paper.takeAndGoOn();
        view.types(new Facts("Gull", "", "gulls, seaside", Set.of(Age.TODDLER, Age.CHILD), "", "", "", ""));
        paper.choose(List.of(0, 1));
        assertThat(view.state.shared().themes()).isEqualTo(Map.of("crabs", 1, "gulls", 1, "seaside", 2));
        assertThat(view.state.shared().ages()).isEqualTo(Map.of(Age.TODDLER, 2, Age.CHILD, 1));

        view.types(new Facts("", "", "harbour", Set.of(), "", "", "", ""));
        view.losing = new Tags(List.of("seaside", "gulls"), List.of(Age.TODDLER), List.of(), List.of());
        int before = test.library.versions(10).size();
        paper.takeAndGoOn();
        paper.save();

        assertThat(test.library.versions(10)).hasSize(before + 1);
        assertThat(saved(id(1)).themes()).containsExactly("crabs", "harbour");
        assertThat(saved(id(1)).ages()).isEmpty();
        assertThat(saved(id(2)).themes()).containsExactly("harbour");
        assertThat(saved(id(2)).ages()).containsExactly(Age.CHILD);
        assertThat(saved(id(1)).origin().place()).hasValue("box 1");
    }

    @Test
    void aTitleIsNeverLost() {
        paper.entered();
        view.types(facts("  ", "crabs", ""));
        paper.takeAndGoOn();
        assertThat(test.front.troubles).containsExactly("A plate needs a title; the old one stays.");
        assertThat(view.state.lines().get(0).title()).isEqualTo("sheet 1");
    }

    @Test
    void aVersionThatCannotBeSavedLosesNothing() {
        paper.entered();
        view.types(facts("Crab", "crabs", ""));
        paper.takeAndGoOn();
        test.library.failNext("The disk is full.");
        paper.save();
        assertThat(test.front.troubles).containsExactly("The disk is full.");
        assertThat(view.state.changed()).isEqualTo(1);
        paper.save();
        assertThat(saved(id(1)).title()).isEqualTo("Crab");
    }

    @Test
    void thePageNumberGoesOn() {
        assertThat(Facts.next("binder 3, page 12")).isEqualTo("binder 3, page 13");
        assertThat(Facts.next("box 09 (loose)")).isEqualTo("box 10 (loose)");
        assertThat(Facts.next("page 099")).isEqualTo("page 100");
        assertThat(Facts.next("top drawer")).isEqualTo("top drawer");
        assertThat(Facts.next("")).isEmpty();
    }

    /** A form that holds what it was shown until something else is typed. */
    private static final class View implements PaperView {
        private PaperState state = PaperState.NOTHING;
        private Facts held = Facts.NOTHING;
        private String suggested = "";
        private Tags losing = Tags.NONE;

        void types(Facts facts) {
            held = facts;
        }

        @Override
        public void show(PaperState newState) {
            if (!newState.facts().equals(state.facts()) || newState.current() != state.current()) {
                held = newState.facts();
            }
            if (!newState.shared().equals(state.shared())) {
                losing = Tags.NONE;
            }
            state = newState;
        }

        @Override
        public void toTitle() {
            // there is no cursor
        }

        @Override
        public Facts typed() {
            return held;
        }

        @Override
        public Tags lost() {
            return losing;
        }

        @Override
        public Optional<String> askReason(String suggestion) {
            suggested = suggestion;
            return Optional.of(suggestion);
        }
    }
}
