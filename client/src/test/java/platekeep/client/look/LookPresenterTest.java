package platekeep.client.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.room.Place;
import platekeep.client.room.Sought;
import platekeep.client.room.TestRoom;
import platekeep.model.look.Mirror;
import platekeep.model.look.Wanted;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

class LookPresenterTest {
    private static final String[] BOAT = {
        "......w...........",
        "......ww..........",
        "......www.........",
        "......wwww........",
        ".b....wwwww....b..",
        ".bbbbbbbbbbbbbbb..",
        "..bbyybbyybbbbb...",
        "...bbbbbbbbbbb...."
    };
    private static final String[] HOUSE = {
        "...rrrrrrr........",
        "..rrrrrrrrr.......",
        ".rrrrrrrrrrr......",
        "..wwwwwwwww.......",
        "..wbbwwwbbw.......",
        "..wbbwwwbbw.......",
        "..wwwwdwwww.......",
        "..wwwwdwwww......."
    };

    @TempDir
    private Path folder;

    private TestRoom test;
    private final View view = new View();
    private LookPresenter look;
    private final Plate boat = plate(1, "Boat", BOAT);

    @BeforeEach
    void openALibrary() throws LibraryException {
        test = new TestRoom(folder);
        save("Drawn", boat, plate(2, "Boat the other way", mirrored(BOAT)), plate(3, "House", HOUSE));
        look = new LookPresenter(test.room, view);
        look.begin();
        test.open();
    }

    private Version save(String reason, Plate... plates) throws LibraryException {
        List<Change> changes = new ArrayList<>();
        Arrays.stream(plates).map(Change.PutPlate::new).forEach(changes::add);
        return test.library.save(new Saving(changes, reason, Optional.empty(), Optional.empty()));
    }

    private void putAway(Plate plate) throws LibraryException {
        test.library.save(
                new Saving(List.of(new Change.PutAway(plate.id())), "Worn", Optional.empty(), Optional.empty()));
    }

    private static Plate plate(int number, String title, String... rows) {
        List<Row> chart = new ArrayList<>();
        for (int i = 0; i < rows.length; i++) {
            chart.add(Row.of("r" + number + "0" + i, rows[i]));
        }
        Palette palette = Palette.EMPTY
                .with('b', new Colour("brick", "#A63C2B", 4))
                .with('d', new Colour("door", "#223344", 4))
                .with('r', new Colour("roof", "#884422", 4))
                .with('w', new Colour("chalk", "#F4F1E8", 4))
                .with('y', new Colour("lamp", "#E9B83C", 4));
        return new Draft(String.format("00000000-0000-4000-8000-%012d", number), title)
                .palette(palette)
                .pleats(Optional.of(new Pleats(1, 1 + rows[0].length())))
                .rows(chart)
                .build();
    }

    private static String[] mirrored(String... rows) {
        return Arrays.stream(rows)
                .map(row -> new StringBuilder(row).reverse().toString())
                .toArray(String[]::new);
    }

    private List<String> titles() {
        return view.state.cards().stream().map(LookCard::title).toList();
    }

    private LookCard first() {
        return view.state.cards().get(0);
    }

    @Test
    void atFirstItSaysHowToBegin() {
        assertThat(view.state.way()).isEqualTo(LookState.Way.LIKE);
        assertThat(view.state.summary()).startsWith("Choose a plate in the gallery");
        look.take(LookState.Way.MOTIF);
        assertThat(view.state.summary()).startsWith("On the Plate screen choose a part");
    }

    @Test
    void whatIsLikeAPlateComesWithTheReason() {
        look.search(new Sought.LikePlate(test.library, boat));
        assertThat(first().title()).isEqualTo("Boat the other way");
        assertThat(first().why()).isEqualTo("mirrored left to right, same shape, same colours");
        assertThat(titles()).doesNotContain("Boat");
        assertThat(view.state.progress()).isEmpty();
        look.open(first().key());
        assertThat(test.front.places)
                .containsExactly(
                        new Place.OnePlate(test.library, first().plate().id()));
    }

    @Test
    void aHitIsPutBesideWhatWasAskedFor() {
        look.search(new Sought.LikePlate(test.library, boat));
        look.choose(first().key());
        assertThat(view.detail.orElseThrow().besideTitle()).isEqualTo("Boat");
        assertThat(view.detail.orElseThrow().canCompare()).isTrue();
        assertThat(view.detail.orElseThrow().canBringBack()).isFalse();
        look.compare(first().key());
        Place.Compare place = (Place.Compare) test.front.places.get(0);
        assertThat(place.before().plateId()).isEqualTo(boat.id());
        assertThat(place.after().plateId()).isEqualTo(first().plate().id());
    }

    @Test
    void itGoesOnFromAHit() {
        look.search(new Sought.LikePlate(test.library, boat));
        look.likeThis(first().key());
        assertThat(view.state.askedTitle()).isEqualTo("Boat the other way");
        assertThat(first().title()).isEqualTo("Boat");
    }

    @Test
    void aPlateWithoutACableIsLikeNothing() {
        look.search(new Sought.LikePlate(test.library, plate(9, "Empty", "....")));
        assertThat(view.state.cards()).isEmpty();
        assertThat(view.state.summary()).isEqualTo("\"Empty\" has no cables yet, so there is nothing it looks like.");
    }

    @Test
    void aPlateThatWasPutAwayIsFoundByLookAndBroughtBack() throws LibraryException {
        Plate away = plate(4, "Old boat", BOAT);
        save("Once more", away);
        putAway(away);
        look.search(new Sought.LikePlate(test.library, boat));
        assertThat(titles()).doesNotContain("Old boat");
        look.times(Options.Times.ONCE_TOO);
        LookCard old = view.state.cards().stream()
                .filter(card -> card.title().equals("Old boat"))
                .findFirst()
                .orElseThrow();
        assertThat(old.mark()).isEqualTo("put away");
        assertThat(old.where()).contains("Wenna Tarrow: Once more");
        look.bringBack(old.key());
        assertThat(test.library.plate(away.id())).isEmpty();
        view.bringsBack = true;
        look.open(old.key());
        assertThat(test.library.plate(away.id()).flatMap(entry -> entry.plate()))
                .contains(away);
        assertThat(test.front.places).containsExactly(new Place.OnePlate(test.library, away.id()));
    }

    @Test
    void whatAPlateOnceLookedLikeLeadsToThatVersion() throws LibraryException {
        String was =
                save("A boat at first", plate(5, "Cottage", mirrored(BOAT))).id();
        save("A house now", plate(5, "Cottage", HOUSE));
        look.times(Options.Times.ONCE_TOO);
        look.search(new Sought.LikePlate(test.library, boat));
        LookCard old = view.state.cards().stream()
                .filter(card -> card.title().equals("Cottage"))
                .findFirst()
                .orElseThrow();
        assertThat(old.mark()).isEqualTo("once");
        look.open(old.key());
        Place.Compare place = (Place.Compare) test.front.places.get(0);
        assertThat(place.before().versionId()).contains(was);
        assertThat(place.after().versionId()).isEmpty();
    }

    @Test
    void wordsInOldVersionsAreFoundByFormBeginningAndSlipAsInTheGallery() throws LibraryException {
        Plate old = plate(5, "Gulls on the pier", HOUSE);
        save("Drawn for the harbour", old);
        save("Made a house of it", plate(5, "Cottage", HOUSE));
        for (String typed : List.of("gull", "pie", "gulsl", "pier gulls")) {
            look.search(new Sought.OnceSaid(typed));
            assertThat(titles()).as(typed).containsExactly("Gulls on the pier");
            assertThat(first().why()).isEqualTo("in its title");
            assertThat(first().where()).contains("Wenna Tarrow: Drawn for the harbour");
        }
        look.words("gulsl");
        assertThat(view.state.summary())
                .isEqualTo("1 plate once had these words. No version says \"gulsl\"; shown for gulls.");
        look.words("cottage");
        assertThat(titles()).isEmpty();
    }

    @Test
    void anOldVersionIsFoundByItsNameReasonAndHand() throws LibraryException {
        String was = save("Roof for the market", plate(5, "Hut", HOUSE)).id();
        test.library.nameVersion(plate(5, "Hut", HOUSE).id(), was, "Autumn class");
        save("Made a house of it", plate(5, "Cottage", HOUSE));
        look.words("classes");
        assertThat(titles()).containsExactly("Hut");
        assertThat(first().why()).isEqualTo("name of a version: Autumn class");
        assertThat(first().where()).startsWith("Autumn class, ");
        look.words("hut markets");
        assertThat(first().why()).isEqualTo("in its title; reason of a version: Roof for the market");
        look.words("tarrow hut");
        assertThat(first().why()).isEqualTo("who made a version: Wenna Tarrow; in its title");
    }

    @Test
    void nearDoublesComeInGroups() {
        look.take(LookState.Way.DOUBLES);
        assertThat(titles()).containsExactly("Boat", "Boat the other way");
        assertThat(view.state.summary()).isEqualTo("1 group of near doubles, 2 plates in them");
        assertThat(view.state.cards()).extracting(LookCard::group).containsExactly(1, 1);
        assertThat(view.state.cards().get(1).why()).isEqualTo("mirrored left to right, same shape, same colours");
        look.choose(view.state.cards().get(1).key());
        assertThat(view.detail.orElseThrow().besideTitle()).isEqualTo("Boat");
        look.choose(first().key());
        assertThat(view.detail.orElseThrow().canCompare()).isFalse();
    }

    @Test
    void platesThatContainAMotifAreFound() {
        Plate motif = plate(8, "Part", "b....w", "bbbbbb", ".bbyyb");
        look.search(new Sought.WithMotif(motif, "Boat"));
        assertThat(titles()).containsExactlyInAnyOrder("Boat", "Boat the other way");
        assertThat(view.state.askedTitle()).isEqualTo("Part of Boat");
        assertThat(view.state.summary()).isEqualTo("2 plates contain it");
        assertThat(first().why()).startsWith("from row 4 down, from pleat 2");
        assertThat(first().places()).containsExactly(new Outlined.Place(4, 1, 3, 6, Mirror.NONE));
        look.wanted(new Wanted(Wanted.Colours.ANY, Wanted.Gaps.APART, Wanted.Mirrors.NONE, Wanted.Kind.ANY));
        assertThat(titles()).containsExactly("Boat");
    }

    @Test
    void aPlateWithTheMotifIsOpenedWhereItsCablesLie() {
        look.search(new Sought.WithMotif(plate(8, "Part", "b....w", "bbbbbb"), "Boat"));
        for (LookCard card : view.state.cards()) {
            look.open(card.key());
            Place.InPlate place = (Place.InPlate) test.front.places.get(test.front.places.size() - 1);
            assertThat(place.plateId()).isEqualTo(card.plate().id());
            assertThat(place.parts())
                    .hasSameSizeAs(card.places())
                    .allSatisfy(part -> assertThat(part.stream()
                                    .map(spot -> place.seen()
                                            .rows()
                                            .get(spot.row())
                                            .cells()
                                            .charAt(spot.index()))
                                    .map(String::valueOf)
                                    .sorted()
                                    .reduce("", String::concat))
                            .isEqualTo("bbbbbbbw"));
        }
    }

    @Test
    void wordsThatAPlateNoLongerHasAreFound() throws LibraryException {
        save("Renamed", plate(3, "Cottage", HOUSE));
        look.take(LookState.Way.ONCE);
        assertThat(view.state.summary()).startsWith("Type a word");
        look.words("houses");
        assertThat(titles()).containsExactly("House");
        assertThat(first().why()).isEqualTo("in its title");
        look.words("boat");
        assertThat(view.state.cards()).isEmpty();
        assertThat(view.state.summary()).isEqualTo("No version that is no more has these words.");
        look.words("drawn");
        assertThat(first().why()).isEqualTo("reason of a version: Drawn");
    }

    @Test
    void aClosedLibraryTakesItsPicturesAlong() {
        look.search(new Sought.LikePlate(test.library, boat));
        test.room.close(test.library);
        assertThat(view.state.cards()).isEmpty();
        assertThat(view.state.asked()).isEmpty();
        assertThat(view.state.summary()).isEqualTo("No library is open.");
    }

    /** Remembers what it was shown. */
    private static final class View implements LookView {
        LookState state;
        Optional<LookState.Detail> detail = Optional.empty();
        boolean bringsBack;

        @Override
        public void show(LookState newState) {
            state = newState;
        }

        @Override
        public void show(Optional<LookState.Detail> newDetail) {
            detail = newDetail;
        }

        @Override
        public boolean askBringBack(String question) {
            return bringsBack;
        }
    }
}
