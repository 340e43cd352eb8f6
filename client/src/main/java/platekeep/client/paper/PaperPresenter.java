package platekeep.client.paper;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.paper.bring.NameOrder;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.client.task.Tasks;
import platekeep.model.find.tag.Tagging;
import platekeep.model.find.tag.Tags;
import platekeep.model.plate.Plate;

/**
 * Goes through plates one after the other and takes what is typed of each; with many chosen it puts what is typed to all
 * of them, and takes from all what is to go. What is typed is kept on disk at once, apart from what is drawn on the Plate screen, and becomes one version of
 * the library when it is saved.
 */
public final class PaperPresenter implements RoomListener {
    private final Workroom room;
    private final Drafts drafts;
    private final PaperView view;
    private final List<Sheet> sheets = new ArrayList<>();
    private final Set<Integer> chosen = new TreeSet<>();
    private int current = -1;
    private Facts shown = Facts.NOTHING;
    private Optional<Facts> last = Optional.empty();
    private boolean isOffered;
    private boolean isReading;
    private boolean isPile = true;
    private final Deque<Sheet> toKeep = new ArrayDeque<>();
    private final Set<Library> stale = new HashSet<>();

    /**
     * @param drafts where what is typed here is kept, and nothing else
     */
    public PaperPresenter(Workroom room, Drafts drafts, PaperView view) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
        room.listen(this);
    }

    /** The screen comes to the front; with nothing asked for it shows what is only a scan yet. */
    public void entered() {
        if (sheets.isEmpty() && isPile && !isReading) {
            open(List.of());
        } else {
            show();
        }
    }

    /** Shows these plates; none: those that are only a scan yet. */
    public void open(List<Place.OnePlate> plates) {
        leave();
        isPile = plates.isEmpty();
        if (isPile) {
            List<Library> open = room.open();
            read(progress -> pile(open, progress));
        } else {
            Map<Library, List<String>> wanted = new LinkedHashMap<>();
            plates.forEach(plate -> wanted.computeIfAbsent(plate.library(), l -> new ArrayList<>())
                    .add(plate.plateId()));
            read(progress -> read(wanted));
        }
    }

    private void read(Tasks.Work<List<Sheet>> work) {
        isReading = true;
        show();
        room.work(
                work,
                read -> {
                    isReading = false;
                    sheets.clear();
                    sheets.addAll(read);
                    chosen.clear();
                    current = -1;
                    goTo(firstToFill());
                    if (!sheets.isEmpty()) {
                        view.toTitle();
                    }
                },
                () -> {
                    isReading = false;
                    show();
                });
    }

    private int firstToFill() {
        for (int i = 0; i < sheets.size(); i++) {
            if (!sheets.get(i).missing().isEmpty()) {
                return i;
            }
        }
        return sheets.isEmpty() ? -1 : 0;
    }

    private List<Sheet> read(Map<Library, List<String>> wanted) throws LibraryException {
        List<Sheet> all = new ArrayList<>();
        for (Map.Entry<Library, List<String>> of : wanted.entrySet()) {
            all.addAll(Sheet.read(of.getKey(), of.getValue(), drafts));
        }
        return all;
    }

    private List<Sheet> pile(List<Library> open, Progress progress) throws LibraryException {
        List<Sheet> all = new ArrayList<>();
        for (Library library : open) {
            Set<String> typed = drafts.all(library.folder()).stream()
                    .map(draft -> draft.plate().id())
                    .collect(Collectors.toSet());
            List<String> ids = library.list(progress).stream()
                    .flatMap(entry -> entry.plate().stream())
                    .filter(plate -> plate.rows().isEmpty() || typed.contains(plate.id()))
                    .map(Plate::id)
                    .toList();
            all.addAll(Sheet.read(library, ids, drafts).stream()
                    .sorted(Comparator.comparing(sheet -> sheet.saved().title(), NameOrder.NUMBERED))
                    .toList());
        }
        return all;
    }

    /** Takes what the form holds, all that it offers too, and goes on to the next plate. */
    public void takeAndGoOn() {
        if (current < 0) {
            return;
        }
        take(view.typed().plain(), view.lost());
        if (chosen.size() > 1) {
            chosen.clear();
            goTo(current);
        } else if (current + 1 < sheets.size()) {
            goTo(current + 1);
        } else {
            goTo(current);
            room.front()
                    .say(changed() == 0 ? "That was the last one." : "That was the last one. Ctrl+S saves them all.");
        }
        view.toTitle();
    }

    /** Goes to another plate; what was typed of this one is taken, what was only offered is not. */
    public void choose(List<Integer> places) {
        leave();
        chosen.clear();
        if (places.size() > 1) {
            chosen.addAll(places);
        }
        goTo(places.isEmpty() ? current : places.get(0));
    }

    /** Goes so many plates on, or back with a number below 0. */
    public void step(int by) {
        leave();
        chosen.clear();
        goTo(Math.max(0, Math.min(sheets.size() - 1, current + by)));
        view.toTitle();
    }

    /** Takes what was typed, before the screen is left. */
    public void leave() {
        if (current >= 0 && isTyping()) {
            take(view.typed().plain(), view.lost());
            shown = view.typed();
        }
    }

    private boolean isTyping() {
        return !view.typed().equals(shown) || !view.lost().isEmpty();
    }

    private void take(Facts facts, Tags lost) {
        Tagging losing = new Tagging(Tags.NONE, lost);
        boolean isOne = chosen.size() < 2;
        if (isOne && facts.title().isBlank()) {
            room.front().trouble("A plate needs a title; the old one stays.");
        }
        for (int at : isOne ? Set.of(current) : chosen) {
            Sheet sheet = sheets.get(at);
            Plate changed = isOne ? facts.on(sheet.now()) : facts.addedTo(losing.on(sheet.now()));
            if (!changed.equals(sheet.now())) {
                sheets.set(at, sheet.with(changed));
                keep(sheets.get(at));
            }
        }
        if (isOne) {
            last = Optional.of(facts);
        }
    }

    /** One after the other, so that what was typed last is what lies on disk in the end. */
    private void keep(Sheet sheet) {
        toKeep.add(sheet);
        if (toKeep.size() == 1) {
            keepNext();
        }
    }

    private void keepNext() {
        Sheet next = toKeep.element();
        room.work(
                (Progress progress) -> {
                    keepNow(next);
                    return next;
                },
                kept -> isKept(),
                this::isKept);
    }

    private void keepNow(Sheet sheet) throws LibraryException {
        if (sheet.isChanged()) {
            drafts.keep(sheet.library().folder(), sheet.now(), sheet.seen());
        } else {
            drafts.drop(sheet.library().folder(), sheet.saved().id());
        }
    }

    private void isKept() {
        toKeep.remove();
        if (!toKeep.isEmpty()) {
            keepNext();
        } else {
            Set<Library> waiting = Set.copyOf(stale);
            stale.clear();
            waiting.forEach(this::contentChanged);
        }
    }

    /** Makes sure that all that was typed is on disk; waits for it. */
    public void makeSafe() {
        leave();
        for (Sheet sheet : toKeep) {
            try {
                keepNow(sheet);
            } catch (LibraryException e) {
                room.trouble(e);
            }
        }
    }

    private void goTo(int at) {
        current = Math.min(at, sheets.size() - 1);
        Facts own = current < 0 || chosen.size() > 1
                ? Facts.NOTHING
                : Facts.of(sheets.get(current).now());
        boolean isBlank = current >= 0 && sheets.get(current).now().rows().isEmpty();
        shown = chosen.size() > 1 || !isBlank ? own : last.map(own::offered).orElse(own);
        isOffered = !shown.equals(own);
        show();
    }

    private void show() {
        if (sheets.isEmpty()) {
            view.show(new PaperState(
                    List.of(), -1, Facts.NOTHING, false, last, Shared.NONE, 0, isReading || room.isOpening()));
            return;
        }
        boolean areSeveral = room.open().size() > 1;
        List<PaperState.Line> lines = sheets.stream()
                .map(sheet -> new PaperState.Line(
                        sheet.key(),
                        sheet.now().title(),
                        sheet.missing(),
                        areSeveral ? room.nameOf(sheet.library()) : "",
                        sheet.picture(),
                        sheet.isChanged()))
                .toList();
        view.show(new PaperState(lines, current, shown, isOffered, last, shared(), changed(), isReading));
    }

    private Shared shared() {
        return chosen.size() < 2
                ? Shared.NONE
                : Shared.of(chosen.stream().map(at -> sheets.get(at).now()).toList());
    }

    private int changed() {
        return (int) sheets.stream().filter(Sheet::isChanged).count();
    }

    /** Opens the plate in front on the Plate screen. */
    public void openPlate() {
        if (current >= 0) {
            leave();
            Sheet sheet = sheets.get(current);
            room.go(new Place.OnePlate(sheet.library(), sheet.saved().id()));
        }
    }

    /** Saves what was typed, one version for each library. */
    public void save() {
        leave();
        Map<Library, List<Sheet>> byLibrary = sheets.stream()
                .filter(Sheet::isChanged)
                .collect(Collectors.groupingBy(Sheet::library, LinkedHashMap::new, Collectors.toList()));
        int count = changed();
        if (count == 0) {
            room.front().trouble("Nothing is changed here, so there is no version to save.");
            return;
        }
        view.askReason(count == 1 ? "Facts of one plate" : "Facts of " + count + " plates")
                .ifPresent(reason -> byLibrary.forEach(
                        (library, changed) -> room.withHand(library, () -> save(library, changed, reason))));
    }

    private void save(Library library, List<Sheet> changed, String reason) {
        room.save(
                progress -> {
                    List<Change> changes = changed.stream()
                            .map(sheet -> (Change) new Change.PutPlate(sheet.now()))
                            .toList();
                    library.save(new Saving(
                            changes, reason, Optional.empty(), changed.get(0).seen()));
                    for (Sheet sheet : changed) {
                        drafts.drop(library.folder(), sheet.saved().id());
                    }
                    return changed.size();
                },
                count -> {
                    forget(changed.stream().map(Sheet::key).collect(Collectors.toSet()));
                    room.front().say("Saved: " + reason + ".");
                    room.changed(library);
                });
    }

    private void forget(Set<String> saved) {
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            if (saved.contains(sheet.key())) {
                sheets.set(i, new Sheet(sheet.library(), sheet.now(), sheet.now(), sheet.seen(), sheet.picture()));
            }
        }
        show();
    }

    @Override
    public void librariesChanged() {
        if (sheets.removeIf(sheet -> !room.open().contains(sheet.library())) || sheets.isEmpty()) {
            chosen.clear();
            goTo(sheets.isEmpty() ? -1 : 0);
        } else {
            show();
        }
    }

    @Override
    public void contentChanged(Library library) {
        List<String> ids = sheets.stream()
                .filter(sheet -> sheet.library() == library)
                .map(sheet -> sheet.saved().id())
                .toList();
        if (!toKeep.isEmpty()) {
            stale.add(library);
        } else if (!ids.isEmpty()) {
            room.work(progress -> Sheet.read(library, ids, drafts), read -> renew(library, read));
        }
    }

    /** Takes over what is new in a library; the place in the pile and what is being typed stay. */
    private void renew(Library library, List<Sheet> read) {
        Map<String, Sheet> fresh = new HashMap<>();
        read.forEach(sheet -> fresh.put(sheet.key(), sheet));
        Optional<String> front =
                current < 0 ? Optional.empty() : Optional.of(sheets.get(current).key());
        boolean isTyping = current >= 0 && isTyping();
        sheets.removeIf(sheet -> sheet.library() == library && !fresh.containsKey(sheet.key()));
        sheets.replaceAll(sheet -> fresh.getOrDefault(sheet.key(), sheet));
        chosen.clear();
        int at = 0;
        for (int i = 0; i < sheets.size(); i++) {
            at = Optional.of(sheets.get(i).key()).equals(front) ? i : at;
        }
        if (isTyping && current >= 0 && current < sheets.size() && at == current) {
            show();
        } else {
            goTo(sheets.isEmpty() ? -1 : at);
        }
    }
}
