package platekeep.client.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Hand;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/** The promises of the Join screen, over the real join. */
class JoinPresenterTest {
    private static final Plate KITE = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Kite")
            .palette(Palette.EMPTY
                    .with('b', new Colour("brick", "#A63C2B", 4))
                    .with('c', new Colour("chalk", "#F4F1E8", 4))
                    .with('y', new Colour("lamp yellow", "#E9B83C", 4)))
            .pleats(Optional.of(new Pleats(1, 13)))
            .rows(List.of(
                    Row.of("r5r5", "...bbbbbb..."),
                    Row.of("r4r4", "..bbbbbbbb.."),
                    Row.of("r3r3", "..bbbbbbbb.."),
                    Row.of("r2r2", "..bbbbbbbb.."),
                    Row.of("r1r1", "..bbbbbbbb..")))
            .build();
    private static final Plate SNAIL = KITE.edit()
            .id("1b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10")
            .title("Snail")
            .build();

    private static final Hand ISOLDE = new Hand("Isolde Marsh", "isolde@workshop.example");

    private final RecordingJoinView view = new RecordingJoinView();
    private TestRoom test;
    private JoinPresenter join;

    @TempDir
    private Path root;

    @BeforeEach
    void twoPlates() throws LibraryException {
        test = new TestRoom(root);
        save("Begun", KITE, SNAIL);
    }

    private void save(String reason, Plate... plates) throws LibraryException {
        List<Change> changes = List.of(plates).stream()
                .map(p -> (Change) new Change.PutPlate(p))
                .toList();
        test.library.save(new Saving(changes, reason, Optional.empty(), Optional.empty()));
    }

    /** Both change the plates; what the partner did has come. */
    private void bothChange(List<Plate> mine, List<Plate> theirs) throws LibraryException {
        save("Mine", mine.toArray(Plate[]::new));
        test.library.arrives(ISOLDE, List.of(KITE, SNAIL), theirs);
        test.open();
        sit();
    }

    private Version newest() {
        return test.library.newest().orElseThrow();
    }

    private Plate saved(Plate plate) {
        return test.library.plate(plate.id()).flatMap(Entry::plate).orElseThrow();
    }

    private Drafts joins() {
        return new Drafts(root.resolve("joins"));
    }

    private static Plate with(Plate plate, String id, String cells) {
        return plate.edit()
                .rows(plate.rows().stream()
                        .map(row -> row.id().orElseThrow().text().equals(id) ? row.withCells(cells) : row)
                        .toList())
                .build();
    }

    private static final Plate MINE = with(with(KITE, "r3r3", "..bbyyyybb.."), "r1r1", "..cbbbbbbb..")
            .edit()
            .title("Kite at night")
            .build();
    private static final Plate THEIRS = with(with(KITE, "r3r3", "..bbccccbb.."), "r5r5", "...bbccbb...")
            .edit()
            .title("Kite by day")
            .themes(List.of("wind"))
            .build();

    /** Row 3 and the title clash; row 1, row 5 and the theme do not. */
    private void kiteClashes() throws LibraryException {
        bothChange(List.of(MINE), List.of(THEIRS));
    }

    private void sit() {
        begin();
        join.show(test.library, Optional.empty());
    }

    private void begin() {
        join = new JoinPresenter(test.room, test.drafts, joins(), view);
        join.entered();
    }

    private String cells(String id) {
        return view.board().drawing().plate().rows().stream()
                .filter(row -> row.id().orElseThrow().text().equals(id))
                .map(Row::cells)
                .findFirst()
                .orElse("gone");
    }

    private void take(String who) {
        List<String> all =
                view.board().answers().stream().map(Board.Answer::who).toList();
        assertThat(all).contains(who);
        join.answer(all.indexOf(who));
    }

    private int matter(String words) {
        List<String> all =
                view.board().matters().stream().map(Board.Matter::words).toList();
        return all.indexOf(
                all.stream().filter(w -> w.contains(words)).findFirst().orElseThrow());
    }

    private Board.State state(String words) {
        return view.board().matters().get(matter(words)).state();
    }

    private List<String> standing() {
        return view.board().answers().stream()
                .filter(Board.Answer::stands)
                .map(Board.Answer::who)
                .toList();
    }

    @Test
    void whatCameIsJoinedOnTheScreenAndNothingIsSaved() throws LibraryException {
        String before = newest().id();
        kiteClashes();
        assertThat(view.board().counter()).isEqualTo("2 of 2 open");
        assertThat(cells("r3r3")).as("what was before stands").isEqualTo("..bbbbbbbb..");
        assertThat(cells("r1r1")).isEqualTo("..cbbbbbbb..");
        assertThat(cells("r5r5")).isEqualTo("...bbccbb...");
        assertThat(newest().reason()).isEqualTo("Mine");
        assertThat(newest().parents()).containsExactly(before);
    }

    @Test
    void eachClashShowsBeforeHersAndThePartnersWithNameDayAndSpot() throws LibraryException {
        kiteClashes();
        assertThat(view.board().matter().orElseThrow().words()).contains("row 3");
        assertThat(view.board().answers())
                .extracting(Board.Answer::who)
                .containsExactly("Before", "Yours", "Isolde Marsh");
        assertThat(view.board().answers())
                .extracting(Board.Answer::detail)
                .containsExactly("as you both had it", "Wenna Tarrow, 3 Mar 2026", "2 Mar 2026");
        assertThat(view.board().answers())
                .extracting(Board.Answer::words)
                .containsExactly("4 brick", "4 lamp yellow", "4 chalk");
        assertThat(view.board().answers()).allSatisfy(answer -> {
            Board.Spotted spot = answer.spot().orElseThrow();
            assertThat(spot.area()).isEqualTo(new Area(2, 2, 4, 7));
            assertThat(spot.window().rows()).isGreaterThan(spot.area().rows());
        });
        assertThat(view.board().answers().get(2).spot().orElseThrow().drawing().rgb(2, 5))
                .isEqualTo(0xF4F1E8);
        assertThat(view.revealed).contains(new Area(2, 2, 4, 7));
    }

    @Test
    void theDecisionsAndTheJoinAreOneVersionWithBothParents() throws LibraryException {
        kiteClashes();
        String mine = newest().id();
        String theirs = join.arrivals().orElseThrow().partnerHead().orElseThrow();
        take("Isolde Marsh");
        join.nextOpen(1);
        take("Yours");
        assertThat(view.board().counter()).isEqualTo("All 2 decided");
        join.save();
        assertThat(newest().parents()).containsExactly(mine, theirs);
        assertThat(view.questions).isEmpty();
        assertThat(saved(KITE).hasClashes()).isFalse();
        assertThat(saved(KITE).title()).isEqualTo("Kite at night");
        assertThat(saved(KITE).rows()).extracting(Row::cells).contains("..bbccccbb..", "..cbbbbbbb..", "...bbccbb...");
        assertThat(test.front.places).last().isInstanceOf(Place.Partner.class);
        assertThat(joins().all(test.library.folder())).isEmpty();
    }

    @Test
    void whatWasSettledByItselfIsListedAndTakenBackOneByOne() throws LibraryException {
        kiteClashes();
        assertThat(state("row 1:")).isEqualTo(Board.State.IN);
        assertThat(state("row 5:")).isEqualTo(Board.State.IN);
        assertThat(state("theme wind")).isEqualTo(Board.State.IN);
        assertThat(view.board().matters())
                .as("what clashes is to decide, not settled too")
                .extracting(Board.Matter::words)
                .noneMatch(words -> words.startsWith("title") || words.startsWith("row 3"));
        join.select(matter("row 5:"));
        assertThat(view.revealed).contains(new Area(0, 0, 5, 6));
        assertThat(standing()).containsExactly("Isolde Marsh");
        take("Before");
        assertThat(cells("r5r5")).isEqualTo("...bbbbbb...");
        assertThat(cells("r1r1")).as("the other change stays").isEqualTo("..cbbbbbbb..");
        assertThat(state("row 5:")).isEqualTo(Board.State.OUT);
        assertThat(standing()).containsExactly("Before");
        join.select(matter("row 1:"));
        take("Before");
        assertThat(cells("r1r1")).isEqualTo("..bbbbbbbb..");
        join.select(matter("theme wind"));
        take("Before");
        assertThat(view.board().drawing().plate().themes()).isEmpty();
        take("Isolde Marsh");
        assertThat(view.board().drawing().plate().themes()).containsExactly("wind");
        join.select(matter("row 5:"));
        take("Isolde Marsh");
        assertThat(cells("r5r5")).isEqualTo("...bbccbb...");
    }

    @Test
    void goingBackReachesHerPlateBeforeTheJoinAndForthAgain() throws LibraryException {
        kiteClashes();
        take("Isolde Marsh");
        join.undo();
        assertThat(view.board().counter()).isEqualTo("2 of 2 open");
        join.undo();
        assertThat(view.board().drawing().plate()).isEqualTo(MINE);
        assertThat(view.board().isJoined()).isFalse();
        assertThat(view.board().undo()).isEmpty();
        join.save();
        assertThat(newest().reason()).isEqualTo("Mine");
        join.redo();
        join.redo();
        assertThat(cells("r3r3")).isEqualTo("..bbccccbb..");
        assertThat(view.board().counter()).isEqualTo("1 of 2 open");
    }

    @Test
    void whatIsDecidedIsOnDiskAtOnceAndThereAfterARestart() throws LibraryException {
        kiteClashes();
        take("Isolde Marsh");
        begin();
        assertThat(view.board().counter()).isEqualTo("1 of 2 open");
        assertThat(cells("r3r3")).isEqualTo("..bbccccbb..");
        assertThat(newest().reason()).isEqualTo("Mine");
        join.undo();
        join.undo();
        assertThat(view.board().drawing().plate()).isEqualTo(MINE);
    }

    @Test
    void laterKeepsTheClashAsDataAndAsksFirst() throws LibraryException {
        kiteClashes();
        take("Yours");
        join.save();
        assertThat(view.questions).hasSize(1);
        assertThat(newest().reason()).isEqualTo("Mine");
        view.consent = JoinView.Consent.YES;
        join.save();
        Plate now = saved(KITE);
        assertThat(now.clashes()).extracting(Clash::what).containsExactly(Clash.What.FIELD);
        assertThat(now.clashes().get(0).sides())
                .extracting(side -> side.by().orElse(""))
                .containsExactlyInAnyOrder("Wenna Tarrow", "Isolde Marsh");
        assertThat(newest().isJoin()).isTrue();
    }

    @Test
    void aClashLeftOpenIsDecidedLaterAsAVersionOfItsOwn() throws LibraryException {
        kiteClashes();
        view.consent = JoinView.Consent.YES;
        join.save();
        Version joined = newest();
        assertThat(view.state.plates()).extracting(JoinState.Waiting::origin).containsExactly(Case.Origin.OPEN);
        take("Isolde Marsh");
        join.nextOpen(1);
        take("Before");
        view.reason = Optional.of("We agreed at the table");
        join.save();
        Version saved = newest();
        assertThat(saved.parents()).containsExactly(joined.id());
        assertThat(saved.reason()).isEqualTo("We agreed at the table");
        assertThat(saved(KITE).hasClashes()).isFalse();
        assertThat(saved(KITE).title()).isEqualTo("Kite");
        assertThat(view.state.plates()).isEmpty();
    }

    @Test
    void theAnswerIsPaintedInTheChartAndTakenAsPainted() throws LibraryException {
        kiteClashes();
        join.painting().choose('c');
        join.painting().press(new Spot(2, 4));
        join.painting().release();
        join.painting().choose('y');
        join.painting().press(new Spot(2, 5));
        join.painting().drag(new Spot(2, 6));
        join.painting().release();
        assertThat(cells("r3r3")).isEqualTo("..bbcyybbb..");
        assertThat(view.board().counter()).as("painting alone decides nothing").isEqualTo("2 of 2 open");
        join.takePainted();
        assertThat(view.board().counter()).isEqualTo("1 of 2 open");
        assertThat(standing()).containsExactly("Painted");
        join.undo();
        join.undo();
        join.undo();
        assertThat(cells("r3r3")).isEqualTo("..bbbbbbbb..");
    }

    @Test
    void aDecisionIsChangedOrMadeOpenAgain() throws LibraryException {
        kiteClashes();
        take("Isolde Marsh");
        assertThat(standing()).containsExactly("Isolde Marsh");
        take("Yours");
        assertThat(standing()).containsExactly("Yours");
        assertThat(cells("r3r3")).isEqualTo("..bbyyyybb..");
        join.reopen();
        assertThat(view.board().counter()).isEqualTo("2 of 2 open");
    }

    @Test
    void allTheRestIsDecidedAtOnceForAllOrForOneKind() throws LibraryException {
        kiteClashes();
        assertThat(join.openKinds()).containsOnlyKeys(Clash.What.CABLES, Clash.What.FIELD);
        join.bulk(new Bulk(Bulk.Whose.THEIRS, Optional.of(Clash.What.FIELD)));
        assertThat(view.board().drawing().plate().title()).isEqualTo("Kite by day");
        assertThat(view.board().counter()).isEqualTo("1 of 2 open");
        join.bulk(new Bulk(Bulk.Whose.MINE, Optional.empty()));
        assertThat(cells("r3r3")).isEqualTo("..bbyyyybb..");
        assertThat(view.board().counter()).isEqualTo("All 2 decided");
        join.undo();
        join.undo();
        join.bulk(new Bulk(Bulk.Whose.BEFORE, Optional.empty()));
        assertThat(view.board().drawing().plate().title()).isEqualTo("Kite");
        assertThat(cells("r3r3")).isEqualTo("..bbbbbbbb..");
    }

    @Test
    void rowsPutInByBothAreKeptOfOneOfBothOrOfNeither() throws LibraryException {
        Plate mine = put(KITE, "m1m1", "..bbyyyybb..");
        Plate theirs = put(KITE, "t1t1", "..bbccccbb..");
        bothChange(List.of(mine), List.of(theirs));
        assertThat(view.board().answers())
                .extracting(Board.Answer::who)
                .containsExactly("Yours", "Isolde Marsh", "Both", "Neither");
        take("Neither");
        assertThat(view.board().drawing().rows()).isEqualTo(5);
        assertThat(standing()).containsExactly("Neither");
        take("Both");
        assertThat(view.board().drawing().rows()).isEqualTo(7);
        assertThat(standing()).containsExactly("Both");
        take("Yours");
        assertThat(cells("m1m1")).isEqualTo("..bbyyyybb..");
        assertThat(cells("t1t1")).isEqualTo("gone");
        assertThat(standing()).containsExactly("Yours");
        take("Isolde Marsh");
        assertThat(cells("m1m1")).isEqualTo("gone");
        assertThat(cells("t1t1")).isEqualTo("..bbccccbb..");
    }

    private static Plate put(Plate plate, String id, String cells) {
        List<Row> rows = new ArrayList<>(plate.rows());
        rows.add(2, Row.of(id, cells));
        return plate.edit().rows(rows).build();
    }

    @Test
    void severalPlatesAreGoneThroughAndSavedTogether() throws LibraryException {
        bothChange(
                List.of(MINE, with(SNAIL, "r2r2", "..yyyyyyyy..")),
                List.of(THEIRS, with(SNAIL, "r2r2", "..cccccccc..")));
        assertThat(view.state.plates()).extracting(JoinState.Waiting::title).hasSize(2);
        take("Yours");
        join.nextOpen(1);
        take("Yours");
        join.nextOpen(1);
        assertThat(view.state.chosen())
                .as("the next open clash is in the next plate")
                .isEqualTo(1);
        take("Isolde Marsh");
        join.save();
        assertThat(newest().isJoin()).isTrue();
        assertThat(saved(KITE).title()).isEqualTo("Kite at night");
        assertThat(saved(SNAIL).rows()).extracting(Row::cells).contains("..cccccccc..");
        assertThat(test.library.history(SNAIL.id()).get(0).version()).isEqualTo(newest());
    }

    @Test
    void aFaultThatNeitherSideHadIsToldAsNewAndPointedOut() throws LibraryException {
        Plate mine = with(KITE, "r5r5", "............");
        List<Row> rows = new ArrayList<>(KITE.rows());
        rows.add(0, Row.of("t6t6", "....bbbb...."));
        bothChange(List.of(mine), List.of(KITE.edit().rows(rows).build()));
        assertThat(view.board().total()).isZero();
        Faults.Fault fresh = view.board().faults().get(0);
        assertThat(fresh.isNew()).isTrue();
        assertThat(fresh.finding().rule()).isEqualTo("blank-row");
        join.pointOut(fresh);
        assertThat(view.pointedOut).isPresent();
        assertThat(view.causes).hasSize(2);
        assertThat(view.causes.get(0)).startsWith("Yours: ").contains("taken out");
        assertThat(view.causes.get(1)).startsWith("Isolde Marsh: ").contains("1 row added");
        join.select(matter("added"));
        take("Before");
        assertThat(view.board().faults()).noneMatch(Faults.Fault::isNew);
    }

    @Test
    void theAnswersToAClashOfAColourShowItsShade() throws LibraryException {
        bothChange(List.of(brick("#B4492F")), List.of(brick("#7C2F57")));
        assertThat(view.board().matter().orElseThrow().words()).isEqualTo("The colour brick");
        assertThat(view.board().answers())
                .extracting(Board.Answer::shade)
                .containsExactly(Optional.of(0xA63C2B), Optional.of(0xB4492F), Optional.of(0x7C2F57));
        take("Isolde Marsh");
        assertThat(standing()).containsExactly("Isolde Marsh");
        assertThat(view.board().drawing().rgb(0, 4)).isEqualTo(0x7C2F57);
    }

    private static Plate brick(String srgb) {
        return KITE.edit()
                .palette(KITE.palette().with('b', new Colour("brick", srgb, 4)))
                .build();
    }

    @Test
    void closingTheWindowSettlesNothing() throws LibraryException {
        kiteClashes();
        take("Yours");
        join.makeSafe();
        assertThat(newest().reason()).isEqualTo("Mine");
        assertThat(saved(KITE)).isEqualTo(MINE);
        assertThat(joins().all(test.library.folder())).hasSize(1);
    }
}
