package platekeep.client.partner;

import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import platekeep.client.library.Arrivals;
import platekeep.client.library.BroughtIn;
import platekeep.client.library.Library;
import platekeep.client.library.Version;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Workroom;
import platekeep.model.compare.Comparison;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.plate.Plate;

/** Looks at the shared copy, brings in and sends; all in the background, told in plain words. */
final class PartnerPresenter implements RoomListener {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ENGLISH);
    /** A plate that changed in more ways than this is told shortly. */
    private static final int MOST_WORDS = 12;

    private final Workroom room;
    private final PartnerView view;
    private Optional<Library> library = Optional.empty();
    private Optional<Arrivals> arrivals = Optional.empty();
    private PartnerState state = PartnerState.NOTHING;
    private boolean wasEntered;
    private boolean isLooking;

    PartnerPresenter(Workroom room, PartnerView view) {
        this.room = room;
        this.view = view;
        room.listen(this);
    }

    /** What a look gave, with the words already made. */
    private record Look(
            Optional<String> sharedCopy, Optional<Arrivals> arrivals, List<String> came, List<String> waits) {}

    void show(Library chosen) {
        library = Optional.of(chosen);
        arrivals = Optional.empty();
        state = PartnerState.NOTHING;
        look();
    }

    void choose(int index) {
        if (index >= 0 && index < room.open().size()) {
            show(room.open().get(index));
        }
    }

    /** Comes to the front: the first open library is looked at where none was chosen. */
    void entered() {
        wasEntered = true;
        if (library.isEmpty() || !room.open().contains(library.get())) {
            library = room.open().stream().findFirst();
        }
        look();
    }

    @Override
    public void librariesChanged() {
        if (library.isPresent() && !room.open().contains(library.get())) {
            library = Optional.empty();
            arrivals = Optional.empty();
        }
        if (library.isEmpty() && wasEntered && !room.open().isEmpty()) {
            entered();
        } else {
            refresh(state.sharedCopy(), List.of(), List.of(), false);
        }
    }

    void look() {
        if (library.isEmpty()) {
            refresh(Optional.empty(), List.of(), List.of(), false);
            return;
        }
        Library looked = library.get();
        isLooking = true;
        refresh(state.sharedCopy(), state.came(), state.waits(), false);
        room.saying(
                "Looking at the shared copy …",
                progress -> {
                    Optional<Path> shared = looked.sharedCopy();
                    if (shared.isEmpty()) {
                        return new Look(Optional.empty(), Optional.empty(), List.of(), List.of());
                    }
                    Arrivals seen = looked.look(progress);
                    return new Look(shared.map(Path::toString), Optional.of(seen), came(seen), waits(seen));
                },
                look -> {
                    if (library.filter(looked::equals).isEmpty()) {
                        return;
                    }
                    isLooking = false;
                    arrivals = look.arrivals();
                    refresh(
                            look.sharedCopy(),
                            look.came(),
                            look.waits(),
                            look.arrivals().isPresent());
                },
                () -> {
                    isLooking = false;
                    refresh(state.sharedCopy(), List.of(), List.of(), false);
                });
    }

    void share(Path folder) {
        library.ifPresent(l -> room.work(
                progress -> {
                    l.share(folder);
                    return folder;
                },
                done -> {
                    room.front().say("The shared copy is in " + folder + ".");
                    look();
                }));
    }

    /**
     * Brings in. Where both changed something in two ways, that is decided first, on the Join screen, and what came is
     * brought in together with the decisions.
     */
    void bringIn() {
        if (library.isEmpty() || arrivals.isEmpty()) {
            return;
        }
        Library into = library.get();
        Arrivals seen = arrivals.get();
        room.saying(
                "Joining plates …", progress -> seen.plates().stream().anyMatch(PartnerPresenter::clashes), clashes -> {
                    if (clashes) {
                        room.go(new Place.Join(into, Optional.empty()));
                    } else {
                        bringIn(into, seen);
                    }
                });
    }

    private static boolean clashes(Arrivals.Arrival arrival) {
        return arrival.isToJoin()
                && Join.plate(
                                arrival.base(),
                                arrival.mine().orElseThrow(),
                                arrival.theirs().orElseThrow(),
                                Hands.UNKNOWN)
                        .hasClashes();
    }

    private void bringIn(Library into, Arrivals seen) {
        room.withHand(into, () -> {
            room.saying(
                    "Bringing in …",
                    progress -> into.bringIn(seen, List.of(), progress),
                    done -> {
                        room.front().say(told(done));
                        room.changed(into);
                        look();
                    },
                    () -> {
                        // it may have come so far that a version is there
                        room.changed(into);
                    });
        });
    }

    void send() {
        library.ifPresent(from -> {
            room.saying("Sending …", from::send, sent -> {
                room.front().say(count(sent.versions(), "version") + " sent.");
                room.changed(from);
                look();
            });
        });
    }

    private static String told(BroughtIn done) {
        List<String> parts = new ArrayList<>();
        parts.add(count(done.tookOver().size(), "plate") + " taken over");
        parts.add(count(done.joined().size(), "plate") + " joined");
        if (!done.clashing().isEmpty()) {
            parts.add(count(done.clashing().size(), "plate") + " with something to decide");
        }
        if (!done.kept().isEmpty()) {
            parts.add(count(done.kept().size(), "plate") + " kept though the other had put it away");
        }
        return "Brought in: " + String.join(", ", parts) + ".";
    }

    private static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    private static List<String> came(Arrivals seen) {
        List<String> lines = new ArrayList<>();
        seen.incoming().forEach(v -> lines.add(line(v)));
        for (Arrivals.Arrival arrival : seen.plates()) {
            lines.add("");
            lines.add(
                    title(arrival) + (arrival.bothChanged() ? "  (you changed it too: the edits will be joined)" : ""));
            words(arrival).forEach(w -> lines.add("· " + w));
        }
        return lines;
    }

    private static List<String> waits(Arrivals seen) {
        return seen.waiting().stream().map(PartnerPresenter::line).toList();
    }

    private static String line(Version v) {
        return v.on().format(DAY) + ", " + v.inNameOf().name() + ": "
                + v.reason().lines().findFirst().orElse("");
    }

    private static String title(Arrivals.Arrival arrival) {
        return arrival.theirs()
                .or(arrival::mine)
                .or(arrival::base)
                .map(Plate::title)
                .orElse("A plate");
    }

    private static List<String> words(Arrivals.Arrival arrival) {
        if (arrival.theirs().isEmpty()) {
            return List.of("put away");
        }
        if (arrival.base().isEmpty()) {
            return List.of("new");
        }
        List<String> words =
                Comparison.of(arrival.base().get(), arrival.theirs().get()).words();
        if (words.size() <= MOST_WORDS) {
            return words;
        }
        List<String> some = new ArrayList<>(words.subList(0, MOST_WORDS));
        some.add("and " + count(words.size() - MOST_WORDS, "change") + " more");
        return some;
    }

    private void refresh(Optional<String> sharedCopy, List<String> came, List<String> waits, boolean looked) {
        List<Library> open = room.open();
        state = new PartnerState(
                open.stream().map(room::nameOf).toList(),
                library.map(open::indexOf).orElse(-1),
                sharedCopy,
                came,
                waits,
                looked,
                isLooking || room.isOpening());
        view.show(state);
    }
}
