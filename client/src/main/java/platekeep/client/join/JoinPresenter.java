package platekeep.client.join;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Arrivals;
import platekeep.client.library.Library;
import platekeep.client.room.Latest;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Finding;

/**
 * Leads through what has to be decided: plates that came from the partner, joined but not brought in yet, and plates of
 * the library with clashes from earlier. Nothing is a version before she saves; every step is kept on disk at once.
 */
final class JoinPresenter implements RoomListener {
    private static final String NOTHING =
            "Nothing waits for a decision. What you and your partner both changed comes here when you bring it in.";

    private final Workroom room;
    private final JoinView view;
    private final Search search;
    private final Keeping keeping;
    private final InOrder inOrder;
    private final Latest<Board> looking;
    private final Latest<List<String>> blaming;
    private final JoinPainting painting;
    private final JoinSaving saving;
    private final List<Sitting> sittings = new ArrayList<>();
    private Optional<Library> library = Optional.empty();
    private Optional<Arrivals> arrivals = Optional.empty();
    private Optional<String> newest = Optional.empty();
    private Optional<Board> board = Optional.empty();
    private Optional<Boards.Known> known = Optional.empty();
    private int chosen = -1;
    private boolean wasEntered;
    private boolean isRead;
    private boolean isToReveal;

    JoinPresenter(Workroom room, Drafts drafts, Drafts joins, JoinView view) {
        this.room = room;
        this.view = view;
        this.search = new Search(drafts, joins);
        this.keeping = new Keeping(room, drafts, joins);
        this.inOrder = new InOrder(room);
        this.looking = new Latest<>(room);
        this.blaming = new Latest<>(room);
        this.painting = new JoinPainting(this, view);
        this.saving = new JoinSaving(room, this, view, keeping);
        room.listen(this);
    }

    JoinPainting painting() {
        return painting;
    }

    // ---- where she is

    /** Shows a plate with open clashes, or with none named what came from the partner. */
    void show(Library wanted, Optional<String> plateId) {
        library = Optional.of(wanted);
        read(plateId, plateId.isEmpty() ? Search.Reach.PARTNER : Search.Reach.BEGUN);
    }

    /** Comes to the front from the rail. */
    void entered() {
        wasEntered = true;
        if (library.isEmpty() || !room.open().contains(library.get())) {
            library = room.open().stream().findFirst();
            isRead = false;
        }
        if (!isRead) {
            read(Optional.empty(), Search.Reach.BEGUN);
        }
    }

    void chooseLibrary(int index) {
        if (index >= 0 && index < room.open().size()) {
            library = Optional.of(room.open().get(index));
            read(Optional.empty(), Search.Reach.BEGUN);
        }
    }

    @Override
    public void librariesChanged() {
        if (library.isPresent() && !room.open().contains(library.get())) {
            library = Optional.empty();
            sittings.clear();
            chosen = -1;
            isRead = false;
        }
        if (library.isEmpty() && wasEntered) {
            entered();
        }
        refresh();
    }

    @Override
    public void contentChanged(Library changed) {
        if (library.filter(changed::equals).isPresent()) {
            read(sitting().map(s -> s.of().id()), Search.Reach.BEGUN);
        }
    }

    private void read(Optional<String> wanted, Search.Reach reach) {
        isRead = true;
        if (library.isEmpty()) {
            refresh();
            return;
        }
        Library from = library.get();
        room.front().busy("looking for what waits for a decision");
        inOrder.then(
                () -> progress -> search.in(from, reach, progress),
                found -> {
                    room.front().busy("");
                    if (library.filter(from::equals).isPresent()) {
                        take(from, found, wanted);
                    }
                },
                () -> room.front().busy(""));
    }

    private void take(Library from, Search.Found found, Optional<String> wanted) {
        found.trouble().ifPresent(room::trouble);
        arrivals = found.arrivals();
        newest = found.newest();
        Map<String, Sitting> before = new LinkedHashMap<>();
        sittings.forEach(s -> before.put(s.of().id() + s.of().mark(), s));
        sittings.clear();
        for (Search.Hit hit : found.hits()) {
            Sitting there = before.get(hit.of().id() + hit.of().mark());
            sittings.add(there != null ? there : new Sitting(hit.of(), hit.kept()));
        }
        sittings.stream().filter(Sitting::isArrived).forEach(s -> keeping.keep(from, newest, s));
        chosen = sittings.isEmpty() ? -1 : 0;
        for (int i = 0; i < sittings.size(); i++) {
            if (wanted.filter(sittings.get(i).of().id()::equals).isPresent()) {
                chosen = i;
            }
        }
        otherPlate();
        reveal();
        refresh();
    }

    /** Looks again for what waits. */
    void again() {
        read(sitting().map(s -> s.of().id()), Search.Reach.BEGUN);
    }

    /** Goes to another plate. */
    void choosePlate(int index) {
        inOrder.then(() -> {
            if (index >= 0 && index < sittings.size() && index != chosen) {
                chosen = index;
                otherPlate();
                reveal();
                refresh();
            }
        });
    }

    private void otherPlate() {
        board = Optional.empty();
        known = Optional.empty();
    }

    /** Goes so many plates on; after the last comes the first. */
    void nextPlate(int by) {
        if (!sittings.isEmpty()) {
            choosePlate(Math.floorMod(chosen + by, sittings.size()));
        }
    }

    // ---- what is looked at

    /** Looks at a matter. */
    void select(int matter) {
        inOrder.then(() -> sitting().ifPresent(s -> {
            int all = s.of().clashes().size() + s.of().settlements().size();
            if (matter >= 0 && matter < all && matter != s.selected()) {
                s.select(matter);
                reveal();
                refresh();
            }
        }));
    }

    /** Goes to the next open clash, or the one before by -1; in this plate, then in the next. */
    void nextOpen(int by) {
        inOrder.then(() -> sitting().ifPresent(s -> {
            Optional<Integer> here = openFrom(s, s.selected(), by);
            if (here.isPresent()) {
                s.select(here.get());
            } else {
                for (int i = 1; i < sittings.size(); i++) {
                    int at = Math.floorMod(chosen + i * by, sittings.size());
                    if (sittings.get(at).open() > 0) {
                        chosen = at;
                        otherPlate();
                        openFrom(sittings.get(at), -by, by).ifPresent(sittings.get(at)::select);
                        break;
                    }
                }
            }
            reveal();
            refresh();
        }));
    }

    private static Optional<Integer> openFrom(Sitting s, int from, int by) {
        List<Clash> clashes = s.of().clashes();
        for (int i = 1; i <= clashes.size(); i++) {
            int at = Math.floorMod(
                    Math.min(from, by > 0 ? clashes.size() - 1 : clashes.size()) + i * by, clashes.size());
            if (ClashAnswers.isOpen(clashes.get(at), s.now())) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    /** Brings what is looked at into sight, as soon as it is worked out. */
    private void reveal() {
        isToReveal = true;
    }

    private void revealNow() {
        isToReveal = false;
        sitting()
                .filter(s -> s.selected() >= 0 && s.isJoined())
                .flatMap(s -> Boards.area(s.of(), s.now(), s.selected()))
                .ifPresent(view::reveal);
    }

    /** Shows where a finding is, and which changes a new one comes from. */
    void pointOut(Faults.Fault fault) {
        sitting().ifPresent(s -> {
            Plate plate = s.now();
            Finding finding = fault.finding();
            finding.row().ifPresent(row -> {
                int index = finding.pleat().orElse(plate.from()) - plate.from();
                Spot spot = new Spot(plate.rows().size() - row, Math.max(0, Math.min(plate.positions() - 1, index)));
                painting.cursor(spot);
                view.pointOut(spot);
            });
            view.causes(List.of());
            if (fault.isNew()) {
                blaming.ask(progress -> Causes.of(s.of(), plate, finding), view::causes);
            }
        });
    }

    // ---- what is decided

    /** Takes one of the answers to what is looked at. */
    void answer(int index) {
        sitting().ifPresent(s -> {
            int matter = s.selected();
            inOrder.then(
                    () -> {
                        Plate now = s.now();
                        boolean isJoined = s.isJoined();
                        return progress -> {
                            List<Choice> choices = isJoined ? Boards.choices(s.of(), now, matter) : List.of();
                            if (index < 0 || index >= choices.size()) {
                                return Optional.<Taken>empty();
                            }
                            Choice choice = choices.get(index);
                            return Optional.of(new Taken(
                                    choice.who() + name(s.of(), matter),
                                    choice.take().apply(now)));
                        };
                    },
                    taken -> taken.ifPresent(t -> step(s, t.name(), t.plate())));
        });
    }

    /** A step worked out in the background. */
    private record Taken(String name, Plate plate) {}

    private static String name(Case of, int matter) {
        int clashes = of.clashes().size();
        String what = matter < clashes
                ? ValueWords.place(of.joined(), of.clashes().get(matter))
                : of.settlements().get(matter - clashes).words();
        return ": " + what;
    }

    /** Takes what was painted as the answer, where a clash of cables is looked at. */
    void takePainted() {
        sitting()
                .flatMap(s -> board.map(b ->
                        b.answers().stream().map(Board.Answer::who).toList().indexOf("Painted")))
                .filter(at -> at >= 0)
                .ifPresentOrElse(
                        this::answer, () -> room.front().say("Paint the cables of the clash in the chart first."));
    }

    /** Leaves a decided clash open again. */
    void reopen() {
        sitting()
                .filter(s ->
                        s.selected() >= 0 && s.selected() < s.of().clashes().size())
                .ifPresent(s -> {
                    Clash clash = s.of().clashes().get(s.selected());
                    change(
                            "Leave open" + name(s.of(), s.selected()),
                            plate -> Reopening.of(s.of().joined(), plate, clash));
                });
    }

    /** Takes one answer for all clashes of the plate that are open yet. */
    void bulk(Bulk bulk) {
        sitting()
                .ifPresent(s -> change(bulkName(bulk, s), plate -> {
                    Plate out = plate;
                    for (Clash clash : s.of().clashes()) {
                        if (bulk.takes(clash) && ClashAnswers.isOpen(clash, out)) {
                            Plate here = out;
                            out = ClashAnswers.forAll(s.of(), clash, bulk.whose())
                                    .map(take -> take.apply(here))
                                    .orElse(here);
                        }
                    }
                    return out;
                }));
    }

    private static String bulkName(Bulk bulk, Sitting s) {
        String whose =
                switch (bulk.whose()) {
                    case MINE -> "Yours";
                    case THEIRS -> s.of().theirs().name().orElse("The other side");
                    case BEFORE -> "Before";
                };
        return whose + ": all the rest";
    }

    /** The kinds of clashes that are open yet in the plate, with how many. */
    Map<Clash.What, Integer> openKinds() {
        Map<Clash.What, Integer> kinds = new LinkedHashMap<>();
        sitting()
                .filter(Sitting::isJoined)
                .ifPresent(s -> s.of().clashes().stream()
                        .filter(c -> ClashAnswers.isOpen(c, s.now()))
                        .forEach(c -> kinds.merge(c.what(), 1, Integer::sum)));
        return kinds;
    }

    /** Whose answers there are: the partner's name as far as it is known. */
    String partnerName() {
        return sitting().flatMap(s -> s.of().theirs().name()).orElse("the other side");
    }

    /** Takes a step that is worked out in the background. */
    void change(String name, UnaryOperator<Plate> change) {
        sitting()
                .ifPresent(s -> inOrder.then(
                        () -> {
                            Plate now = s.now();
                            boolean isJoined = s.isJoined();
                            return progress -> isJoined ? change.apply(now) : now;
                        },
                        plate -> step(s, name, plate)));
    }

    /** Takes a part of a stroke. */
    void stroke(String name, UnaryOperator<Plate> change) {
        sitting()
                .ifPresent(s -> inOrder.then(
                        () -> {
                            Plate now = s.now();
                            boolean isJoined = s.isJoined();
                            return progress -> isJoined ? change.apply(now) : now;
                        },
                        plate -> {
                            s.steps().stroke(name, plate);
                            stepped(s);
                        }));
    }

    /** Ends a stroke, with its last part. */
    void endStroke() {
        sitting().ifPresent(s -> inOrder.then(() -> s.steps().endStroke()));
    }

    private void step(Sitting s, String name, Plate plate) {
        s.steps().take(name, plate);
        stepped(s);
    }

    private void stepped(Sitting s) {
        library.ifPresent(l -> keeping.keep(l, newest, s));
        refresh();
    }

    /** Takes the last step back; the first step of all is the join itself. */
    void undo() {
        sitting()
                .ifPresent(s -> inOrder.then(() -> {
                    s.steps().undoName().ifPresent(name -> room.front().say("Taken back: " + name));
                    s.steps().undo();
                    stepped(s);
                }));
    }

    /** Does the step again that was taken back last. */
    void redo() {
        sitting()
                .ifPresent(s -> inOrder.then(() -> {
                    s.steps().redoName().ifPresent(name -> room.front().say("Done again: " + name));
                    s.steps().redo();
                    stepped(s);
                }));
    }

    /** Saves what is decided as one version. */
    void save() {
        inOrder.then(saving::save);
    }

    /** Makes sure that everything decided is on disk; waits for it. */
    void makeSafe() {
        library.ifPresent(l -> keeping.makeSafe(l, newest, sittings));
    }

    // ---- what it knows

    Optional<Library> library() {
        return library;
    }

    Optional<Arrivals> arrivals() {
        return arrivals;
    }

    Optional<String> newest() {
        return newest;
    }

    List<Sitting> sittings() {
        return sittings;
    }

    /** The plate that is worked on. */
    Optional<Sitting> sitting() {
        return chosen >= 0 && chosen < sittings.size() ? Optional.of(sittings.get(chosen)) : Optional.empty();
    }

    Optional<Board> board() {
        return board;
    }

    /** Shows everything anew. */
    void refresh() {
        Optional<Sitting> now = sitting();
        if (now.isEmpty()) {
            board = Optional.empty();
            view.show(state());
            return;
        }
        Sitting s = now.get();
        Boards.Standing standing = s.standing();
        int selected = s.selected();
        Optional<Boards.Known> before = known;
        if (!Boards.isLarge(s.now())) {
            looking.ask(progress -> Boards.of(standing, selected, before), made -> boarded(s, made));
            return;
        }
        looking.ask(progress -> Boards.of(standing, selected, before, Boards.Depth.FIRST), first -> {
            boarded(s, first);
            Optional<Boards.Known> drawn = known;
            looking.ask(progress -> Boards.of(standing, selected, drawn), made -> boarded(s, made));
        });
    }

    private void boarded(Sitting of, Board made) {
        if (sitting().filter(of::equals).isPresent()) {
            board = Optional.of(made);
            Optional<Plate> checked =
                    made.isComplete() ? Optional.of(made.drawing().plate()) : known.flatMap(Boards.Known::checked);
            known = Optional.of(new Boards.Known(made.drawing(), made.faults(), checked));
            painting.boarded(of);
            if (isToReveal) {
                painting.toMatter(of);
            }
            view.show(state());
            if (isToReveal) {
                revealNow();
            }
        }
    }

    private JoinState state() {
        List<Library> open = room.open();
        return new JoinState(
                open.stream().map(room::nameOf).toList(),
                library.map(open::indexOf).orElse(-1),
                sittings.stream()
                        .map(s -> new JoinState.Waiting(
                                s.of().id(),
                                s.now().title(),
                                s.open(),
                                s.of().clashes().size(),
                                s.of().origin()))
                        .toList(),
                chosen,
                board,
                painting.state(),
                nothing());
    }

    private String nothing() {
        if (library.isPresent()) {
            return NOTHING;
        }
        return room.isOpening() ? "Opening the library …" : "Open a library first.";
    }
}
