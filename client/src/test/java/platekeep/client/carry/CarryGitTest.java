package platekeep.client.carry;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.cache.Cache;
import platekeep.client.draft.Drafts;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Hand;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Saving;
import platekeep.client.plate.TestPlates;
import platekeep.client.room.Place;
import platekeep.client.room.RecordingFront;
import platekeep.client.room.Workroom;
import platekeep.client.settings.Settings;
import platekeep.client.task.Progress;
import platekeep.client.task.SameThreadTasks;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Unknown;

/** Plates between an archive that stays at home and a library that is shared. */
class CarryGitTest {
    private static final Hand WENNA = new Hand("Wenna Tarrow", "wenna@workshop.example");
    private static final String KITE = "00000000-0000-4000-8000-000000000001";
    private static final String BOAT = "00000000-0000-4000-8000-000000000002";
    private static final byte[] SCAN = "\u00ff\u00d8\u00ff\u00e0kite".getBytes(StandardCharsets.ISO_8859_1);

    @TempDir
    private Path root;

    private final RecordingFront front = new RecordingFront();
    private final View view = new View();
    private GitLibraries libraries;
    private Workroom room;
    private Drafts drafts;
    private CarryPresenter carry;
    private Library archive;
    private Library ours;

    @BeforeEach
    void twoLibraries() throws LibraryException {
        libraries = new GitLibraries(Clock.systemUTC(), new Cache(root.resolve("cache")), Runnable::run);
        room = new Workroom(libraries, new SameThreadTasks(), Settings.in(root.resolve("settings.properties")));
        room.frontIs(front);
        drafts = new Drafts(root.resolve("drafts"));
        carry = new CarryPresenter(room, List.of(drafts), view);
        room.create(root.resolve("archive"), "Archive", WENNA, library -> archive = library);
        room.create(root.resolve("ours"), "Ours", WENNA, library -> ours = library);
        Plate kite = TestPlates.block(KITE, "Kite")
                .edit()
                .fromPlate(Optional.of(new FromPlate(BOAT, "0".repeat(40), Unknown.NONE)))
                .build();
        save(archive, "Drawn at home", new Change.PutPlate(kite), new Change.PutPicture(KITE, Picture.Kind.SCAN, SCAN));
        save(archive, "A boat", new Change.PutPlate(TestPlates.block(BOAT, "Boat")));
    }

    @AfterEach
    void close() {
        archive.close();
        ours.close();
    }

    private static void save(Library library, String reason, Change... changes) throws LibraryException {
        library.save(new Saving(List.of(changes), reason, Optional.empty(), Optional.empty()));
    }

    private static Optional<Plate> plate(Library library, String id) throws LibraryException {
        return library.plate(id).flatMap(Entry::plate);
    }

    private List<Place.OnePlate> these(String... ids) {
        return List.of(ids).stream().map(id -> new Place.OnePlate(archive, id)).toList();
    }

    @Test
    void aCopyKeepsItsIdWhatItWasStartedFromAndItsScan() throws LibraryException {
        Plate before = plate(archive, KITE).orElseThrow();
        carry.carry(Way.COPY, these(KITE, BOAT));
        assertThat(plate(ours, KITE)).hasValue(before);
        assertThat(plate(ours, KITE).flatMap(Plate::fromPlate)).isPresent();
        assertThat(ours.bytes(ours.pictures(KITE).get(0))).isEqualTo(SCAN);
        assertThat(plate(archive, KITE)).hasValue(before);
        assertThat(ours.versions(1).get(0).reason())
                .isEqualTo("\"Kite\" and \"Boat\" copied from \"Archive\" to \"Ours\"");
        assertThat(ours.history(KITE)).hasSize(1);
        assertThat(view.said).anyMatch(words -> words.contains("The history stays in \"Archive\""));
    }

    @Test
    void aMoveIsAVersionThereAndAVersionHere() throws LibraryException {
        int there = ours.versions(10).size();
        int here = archive.versions(10).size();
        carry.carry(Way.MOVE, these(KITE));
        assertThat(plate(ours, KITE)).isPresent();
        assertThat(plate(archive, KITE)).isEmpty();
        assertThat(archive.pictures()).isEmpty();
        assertThat(ours.versions(10)).hasSize(there + 1);
        assertThat(archive.versions(10)).hasSize(here + 1);
        assertThat(archive.history(KITE).get(0).version().reason())
                .isEqualTo(ours.history(KITE).get(0).version().reason())
                .isEqualTo("\"Kite\" moved from \"Archive\" to \"Ours\"");
        assertThat(archive.history(KITE)).hasSize(2);
        assertThat(archive.handEdits()).isEmpty();

        // and home again, to its old place and with its scan
        carry.carry(Way.MOVE, List.of(new Place.OnePlate(ours, KITE)));
        assertThat(view.said).anyMatch(words -> words.contains("was put away there once and comes back"));
        assertThat(plate(archive, KITE)).isPresent();
        assertThat(archive.bytes(archive.pictures(KITE).get(0))).isEqualTo(SCAN);
        assertThat(archive.history(KITE)).hasSize(3);
        assertThat(plate(ours, KITE)).isEmpty();
    }

    @Test
    void whatIsThereAndDifferentIsLeftAloneAndComparingIsOffered() throws LibraryException {
        carry.carry(Way.COPY, these(KITE));
        Plate changed = plate(ours, KITE).orElseThrow().edit().title("Dragon").build();
        save(ours, "A dragon now", new Change.PutPlate(changed));
        view.compare = CarryView.Answer.COMPARE;
        carry.carry(Way.MOVE, these(KITE, BOAT));
        assertThat(plate(ours, KITE)).hasValue(changed);
        assertThat(plate(archive, KITE)).isPresent();
        assertThat(plate(ours, BOAT)).isPresent();
        assertThat(plate(archive, BOAT)).isEmpty();
        assertThat(front.places).singleElement().satisfies(place -> {
            Place.Compare compare = (Place.Compare) place;
            assertThat(compare.before().library()).isSameAs(ours);
            assertThat(compare.after().library()).isSameAs(archive);
        });
    }

    @Test
    void whatIsThereJustTheSameIsSaidAndNoVersionIsMade() throws LibraryException {
        carry.carry(Way.COPY, these(KITE));
        int there = ours.versions(10).size();
        carry.carry(Way.COPY, these(KITE));
        assertThat(view.said).anyMatch(words -> words.contains("\"Kite\" is there already, just the same."));
        assertThat(ours.versions(10)).hasSize(there);
    }

    @Test
    void whatIsDrawnAndNotSavedIsNotMoved() throws LibraryException {
        Plate drawn = plate(archive, KITE)
                .orElseThrow()
                .edit()
                .title("Kite, drawn on")
                .build();
        drafts.keep(archive.folder(), drawn, Optional.empty());
        carry.carry(Way.MOVE, these(KITE));
        assertThat(plate(archive, KITE)).isPresent();
        assertThat(plate(ours, KITE)).isEmpty();
        assertThat(view.said).anyMatch(words -> words.contains("drawn on and not saved"));
        carry.carry(Way.COPY, these(KITE));
        assertThat(plate(ours, KITE).map(Plate::title)).hasValue("Kite");
    }

    @Test
    void sendingNeverCrossesAndWhatIsForHerOnlyIsPointedOut() throws LibraryException {
        Plate mine = plate(archive, BOAT)
                .orElseThrow()
                .edit()
                .origin(new Origin(
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("mine"), Unknown.NONE))
                .build();
        save(archive, "For me only", new Change.PutPlate(mine));
        ours.share(root.resolve("shared"));
        view.target = Optional.empty();
        carry.carry(Way.COPY, these(BOAT));
        assertThat(view.said)
                .anyMatch(words ->
                        words.startsWith("Mind: \"Boat\" is for you only") && words.contains("goes to your partner"));
        assertThat(plate(ours, BOAT)).isEmpty();

        view.target = Optional.of(0);
        carry.carry(Way.COPY, these(KITE));
        ours.send(Progress.NONE);
        try (Library partners =
                libraries.copyFrom(root.resolve("shared"), root.resolve("hers"), new Hand("Isolde Marsh", "i@m"))) {
            assertThat(partners.list(Progress.NONE)).hasSize(1);
            assertThat(partners.pictures()).hasSize(1);
            assertThat(partners.versions(50))
                    .noneMatch(version -> version.reason().equals("Drawn at home")
                            || version.reason().equals("For me only"));
        }
        assertThat(archive.sharedCopy()).isEmpty();
    }

    @Test
    void withOneLibraryOpenItIsSaid() {
        room.close(ours);
        carry.carry(Way.COPY, these(KITE));
        assertThat(front.troubles.get(0)).startsWith("Only \"Archive\" is open.");
    }

    private static final class View implements CarryView {
        private final List<String> said = new ArrayList<>();
        private Optional<Integer> target = Optional.of(0);
        private Answer compare = Answer.LEAVE;

        @Override
        public Optional<Integer> askTarget(Way way, String from, List<Target> targets) {
            targets.forEach(t -> said.addAll(t.words()));
            return target;
        }

        @Override
        public Answer askCompare(String sentence) {
            said.add(sentence);
            return compare;
        }
    }
}
