package platekeep.client.plate.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import platekeep.client.draft.Drafts;
import platekeep.client.draft.KeptDraft;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Version;
import platekeep.client.plate.open.Kin;
import platekeep.client.plate.open.Moved;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.plate.open.Suggestions;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.room.Latest;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Sought;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.client.ui.Dates;
import platekeep.model.compare.Comparison;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Check;
import platekeep.model.stitch.CheckSettings;
import platekeep.model.stitch.Finding;

/**
 * Opens a plate and keeps what is drawn on it safe. A plate that was opened once stays open with all its steps, whatever
 * else she looks at meanwhile.
 */
public final class PlatePresenter implements RoomListener {
    private final Workroom room;
    private final Drafts drafts;
    private final PlateView view;
    private final Map<String, OpenPlate> open = new HashMap<>();
    private final Latest<Plate> keeping;
    private final Latest<List<Finding>> checking;
    private final Latest<Kin> kinReading;
    private final DrawPresenter draw;
    private final ChoicePresenter choice;
    private final ChartPresenter chart;
    private final PalettePresenter palette;
    private final MotifPresenter motifs;
    private final FoundPresenter found;
    private final RemarkPresenter remarks;
    private final ExtrasPresenter extras;
    private final LinePresenter lines;
    private final HistoryPresenter history;
    private Optional<OpenPlate> current = Optional.empty();
    private List<Finding> findings = List.of();
    private Drawing drawing;

    public PlatePresenter(Workroom room, Drafts drafts, Motifs motifs, PlateView view) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
        this.keeping = new Latest<>(room);
        this.checking = new Latest<>(room);
        this.kinReading = new Latest<>(room);
        this.draw = new DrawPresenter(room, view, this);
        this.choice = new ChoicePresenter(room, view, this);
        this.chart = new ChartPresenter(room, view, this);
        this.palette = new PalettePresenter(room, view, this);
        this.motifs = new MotifPresenter(room, view, this, motifs);
        this.found = new FoundPresenter(room, view, this);
        this.remarks = new RemarkPresenter(room, view, this);
        this.extras = new ExtrasPresenter(view, this);
        this.lines = new LinePresenter(room, view, this);
        this.history = new HistoryPresenter(room, drafts, view, this);
        room.listen(this);
    }

    /** What draws on the plate that is open. */
    public DrawPresenter draw() {
        return draw;
    }

    /** What does something with a chosen part of its picture. */
    public ChoicePresenter choice() {
        return choice;
    }

    /** What changes its rows and pleats. */
    public ChartPresenter chart() {
        return chart;
    }

    /** What changes its colours. */
    public PalettePresenter palette() {
        return palette;
    }

    /** What keeps motifs and puts them in. */
    public MotifPresenter motifs() {
        return motifs;
    }

    /** What leads to where a motif was found in it. */
    public FoundPresenter found() {
        return found;
    }

    /** What the designers say to each other about it. */
    public RemarkPresenter remarks() {
        return remarks;
    }

    /** What places geometric lines. */
    public LinePresenter lines() {
        return lines;
    }

    /** What puts on single stitches and notions, and says on what cloth. */
    public ExtrasPresenter extras() {
        return extras;
    }

    /** What saves it and leads through its versions. */
    public HistoryPresenter history() {
        return history;
    }

    /** The plate that is open. */
    public Optional<OpenPlate> current() {
        return current;
    }

    /** The plate that is open, if it can be drawn on: looked at as it is now, with a chart and no draft on offer. */
    Optional<OpenPlate> drawable() {
        return current.filter(o -> o.lookingAt().isEmpty()
                && o.offer().isEmpty()
                && !o.now().rows().isEmpty());
    }

    /** Opens a plate, or goes back to it where it is open. */
    public void open(Library library, String plateId) {
        open(library, plateId, opened -> {});
    }

    /** Opens a plate and marks what was found in it. */
    public void open(Place.InPlate place) {
        open(place.library(), place.plateId(), opened -> found.show(opened, place));
    }

    private void open(Library library, String plateId, Consumer<OpenPlate> then) {
        OpenPlate there = open.get(key(library, plateId));
        if (there != null) {
            present(there);
            then.accept(there);
            return;
        }
        room.work(progress -> read(library, plateId), opened -> {
            present(opened);
            then.accept(opened);
        });
    }

    private static String key(Library library, String plateId) {
        return library.folder() + "\n" + plateId;
    }

    private OpenPlate read(Library library, String plateId) throws LibraryException {
        Optional<KeptDraft> draft = drafts.of(library.folder(), plateId);
        Optional<Plate> saved = library.plate(plateId).flatMap(Entry::plate);
        if (saved.isEmpty()) {
            return draft.map(kept -> OpenPlate.begun(library, kept.plate()))
                    .orElseThrow(() -> new LibraryException("This plate is no longer in \"" + library.name()
                            + "\"; if it was put away, it can be brought back from the menu Plates."));
        }
        OpenPlate opened = OpenPlate.of(library, saved.get(), library.newest().map(Version::id));
        opened.history(library.history(plateId));
        Optional<KeptDraft> caughtUp =
                draft.isEmpty() ? draft : Optional.of(caughtUp(library, draft.get(), saved.get()));
        opened.offer(caughtUp.filter(kept -> !kept.plate().equals(opened.now()))
                .map(kept -> new OpenPlate.Offer(kept, offerWords(kept, saved.get()))));
        return opened;
    }

    /** The draft with what the library got since it was drawn, so that going on with it takes nothing back. */
    private static KeptDraft caughtUp(Library library, KeptDraft kept, Plate saved) {
        Optional<Plate> before = kept.seen().flatMap(version -> plateAt(library, saved.id(), version));
        return before.isEmpty() || before.get().equals(saved)
                ? kept
                : kept.with(Join.plate(before, kept.plate(), saved, Hands.UNKNOWN));
    }

    private static Optional<Plate> plateAt(Library library, String plateId, String version) {
        try {
            return library.plateAt(plateId, version).flatMap(Entry::plate);
        } catch (LibraryException e) {
            return Optional.empty(); // another library stands in this folder now, which never had that version
        }
    }

    private void present(OpenPlate opened) {
        open.put(key(opened.library(), opened.id()), opened);
        current = Optional.of(opened);
        draw.opened(opened);
        findings = List.of();
        refresh();
        readKin(opened);
    }

    private void readKin(OpenPlate opened) {
        Plate plate = opened.now();
        kinReading.ask(progress -> Kin.read(opened.library(), plate, progress), kin -> {
            opened.kin(kin);
            if (current.filter(c -> c == opened).isPresent()) {
                refresh();
            }
        });
    }

    /** Opens a plate that this one was started from, or that was started from it. */
    public void openRelative(String plateId) {
        current.ifPresent(opened -> open(opened.library(), plateId));
    }

    /** Shows everything anew, after anything has changed. */
    void refresh() {
        if (current.isEmpty()) {
            view.show(PlateState.NOTHING);
            return;
        }
        OpenPlate opened = current.get();
        Plate shown = shown(opened);
        if (drawing == null || drawing.plate() != shown) {
            drawing = drawing == null ? Drawing.of(shown) : drawing.changedTo(shown);
            check(shown);
        }
        view.show(state(opened));
    }

    private Plate shown(OpenPlate opened) {
        return opened.lookingAt()
                .flatMap(opened::version)
                .flatMap(PlateVersion::entry)
                .flatMap(Entry::plate)
                .orElseGet(opened::now);
    }

    private void check(Plate plate) {
        checking.ask(progress -> Check.of(plate, CheckSettings.DEFAULT), found -> {
            findings = found;
            current.ifPresent(opened -> view.show(state(opened)));
        });
    }

    private PlateState state(OpenPlate opened) {
        boolean isNow = opened.lookingAt().isEmpty();
        boolean canDraw =
                isNow && opened.offer().isEmpty() && !opened.now().rows().isEmpty();
        return new PlateState(
                Optional.of(drawing),
                room.nameOf(opened.library()),
                canDraw ? PlateState.Mode.DRAW : PlateState.Mode.LOOK,
                opened.isDrawn(),
                opened.steps().undoName(),
                opened.steps().redoName(),
                draw.tool(),
                draw.colour(),
                new PlateState.Hand(
                        opened.cursor(),
                        draw.firstEnd(),
                        isNow ? opened.chosen() : Optional.empty(),
                        opened.axis(),
                        isNow ? lines.inHand(opened.now()) : OptionalInt.empty()),
                findings,
                opened.history().stream().map(PlatePresenter::step).toList(),
                opened.kin(),
                opened.lookingAt(),
                opened.offer().map(OpenPlate.Offer::words));
    }

    private static HistoryStep step(PlateVersion step) {
        Version version = step.version();
        boolean same = version.inNameOf().name().equals(version.enteredBy().name());
        String hand = version.inNameOf().name()
                + (same ? "" : ", entered by " + version.enteredBy().name());
        return new HistoryStep(
                version.id(),
                step.entry().map(Entry::content).orElse(""),
                step.entry().flatMap(Entry::plate),
                Dates.shortDay(version.on()),
                hand,
                step.entry().isPresent() ? version.reason() : "Put away: " + version.reason(),
                step.names());
    }

    private static String offerWords(KeptDraft draft, Plate saved) {
        String when = Dates.time(draft.on().atZone(java.time.ZoneId.systemDefault()));
        List<String> words = Comparison.of(saved, draft.plate()).words();
        String reason = Suggestions.reason(words.subList(0, Math.min(2, words.size())));
        String what = reason.isEmpty() ? "" : " " + reason + ".";
        return "A draft of " + when + " was not saved as a version." + what;
    }

    /** The plate was changed by drawing: it is kept as a draft at once, and shown. */
    void drawn() {
        current.ifPresent(this::keep);
        refresh();
    }

    /** Keeps what was drawn and is in no version as a draft, and drops the draft where there is nothing such; in the background. */
    void keep(OpenPlate opened) {
        Plate now = opened.now();
        boolean isDrawn = opened.isDrawn();
        keeping.ask(
                progress -> {
                    keepNow(opened, now, isDrawn);
                    return now;
                },
                kept -> room.draftsChanged());
    }

    private void keepNow(OpenPlate opened, Plate now, boolean isDrawn) throws LibraryException {
        if (isDrawn) {
            drafts.keep(opened.library().folder(), now, opened.seen());
        } else {
            drafts.drop(opened.library().folder(), opened.id());
        }
    }

    /** Makes sure that everything drawn is on disk; waits for it. */
    public void makeSafe() {
        for (OpenPlate opened : open.values()) {
            try {
                if (opened.isDrawn() && opened.offer().isEmpty()) {
                    keepNow(opened, opened.now(), true);
                }
            } catch (LibraryException e) {
                room.trouble(e);
            }
        }
    }

    /** Goes on with the draft that is offered. */
    public void takeOffer() {
        current.ifPresent(opened -> {
            opened.offer()
                    .ifPresent(offer -> opened.steps()
                            .take("Go on with the draft", offer.draft().plate()));
            opened.offer(Optional.empty());
            drawn();
        });
    }

    /** Gives the draft up that is offered, or all that was drawn since the newest version. */
    public void giveUp() {
        current.ifPresent(opened -> {
            if (opened.saved().isEmpty()) {
                return;
            }
            if (view.askConsent("Give the draft up? The newest version stays as it is.", "Give it up")
                    == PlateView.Consent.YES) {
                opened.offer(Optional.empty());
                opened.steps().take("Give the draft up", opened.saved().get());
                drawn();
            }
        });
    }

    @Override
    public void contentChanged(Library library) {
        List.copyOf(open.values()).stream()
                .filter(opened -> opened.library() == library)
                .forEach(opened -> room.work(
                        (Progress progress) -> Moved.read(library, opened.id()), moved -> movedOn(opened, moved)));
    }

    private void movedOn(OpenPlate opened, Moved moved) {
        opened.movedOn(moved).ifPresent(room.front()::say);
        if (current.filter(c -> c == opened).isPresent()) {
            draw.opened(opened);
            refresh();
        }
    }

    /** A plate is no longer there. */
    void forget(OpenPlate opened) {
        open.remove(key(opened.library(), opened.id()));
        if (current.filter(c -> c == opened).isPresent()) {
            current = Optional.empty();
            refresh();
        }
    }

    @Override
    public void librariesChanged() {
        open.values().removeIf(opened -> !room.open().contains(opened.library()));
        if (current.isPresent() && !room.open().contains(current.get().library())) {
            current = Optional.empty();
            refresh();
        }
    }

    /** Goes to where the plate's open clashes are settled. */
    public void settle() {
        current.ifPresent(opened -> room.go(new Place.Join(opened.library(), Optional.of(opened.id()))));
    }

    /** Searches for plates like this one. */
    public void findLike() {
        current.ifPresent(opened -> room.go(new Place.Search(new Sought.LikePlate(opened.library(), opened.now()))));
    }

    /** Goes to the plate that this one was started from, where it is in this library. */
    public void openOrigin() {
        current.flatMap(opened -> opened.now().fromPlate().map(from -> from.id()))
                .ifPresent(id -> open(current.get().library(), id));
    }

    /** Shows where a finding is. */
    public void pointOut(Finding finding) {
        current.ifPresent(opened -> finding.row().ifPresent(row -> {
            Plate plate = drawing.plate();
            int index = finding.pleat().orElse(plate.from()) - plate.from();
            pointOut(new Spot(plate.rows().size() - row, Math.max(0, Math.min(plate.positions() - 1, index))));
        }));
    }

    /** Moves the cursor to a spot and shows it. */
    void pointOut(Spot spot) {
        current.ifPresent(opened -> {
            opened.cursor(spot);
            view.pointOut(opened.cursor());
            refresh();
        });
    }

    /** The plate as it is shown. */
    Optional<Drawing> drawing() {
        return current.map(opened -> drawing);
    }

    /** Tells the listener of the plate as it is shown. */
    public void withDrawing(Consumer<Drawing> listener) {
        if (current.isPresent()) {
            listener.accept(drawing);
        }
    }
}
