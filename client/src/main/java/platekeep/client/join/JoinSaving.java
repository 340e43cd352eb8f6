package platekeep.client.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.client.library.Arrivals;
import platekeep.client.library.BroughtIn;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.model.plate.Plate;

/** Makes a version of what was decided: of all that came from the partner together, of another plate by itself. */
final class JoinSaving {
    private final Workroom room;
    private final JoinPresenter join;
    private final JoinView view;
    private final Keeping keeping;

    JoinSaving(Workroom room, JoinPresenter join, JoinView view, Keeping keeping) {
        this.room = room;
        this.join = join;
        this.view = view;
        this.keeping = keeping;
    }

    void save() {
        join.library()
                .ifPresent(library -> join.sitting().ifPresent(sitting -> {
                    if (sitting.isArrived()) {
                        saveArrived(library);
                    } else if (sitting.isChanged()) {
                        saveOne(library, sitting);
                    } else {
                        room.front().say("Nothing is decided yet.");
                    }
                }));
    }

    private void saveArrived(Library library) {
        List<Sitting> arrived =
                join.sittings().stream().filter(Sitting::isArrived).toList();
        Optional<String> unjoined = arrived.stream()
                .filter(s -> !s.isJoined())
                .map(s -> s.of().before().title())
                .findFirst();
        if (unjoined.isPresent()) {
            room.front()
                    .trouble("\"" + unjoined.get()
                            + "\" is as it was before the join, so there is nothing of it to save."
                            + " Do the join again (Ctrl+Y), then save.");
            return;
        }
        int open = arrived.stream().mapToInt(Sitting::open).sum();
        if (open == 0 || consents(open)) {
            join.arrivals().ifPresent(seen -> room.withHand(library, () -> bringIn(library, seen, arrived)));
        }
    }

    private boolean consents(int open) {
        String clashes = open == 1 ? "One clash is open yet. It stays" : open + " clashes are open yet. They stay";
        return view.askConsent(
                        clashes + " open in the plate, with both sides kept, until one of you decides.",
                        "Save, decide later")
                == JoinView.Consent.YES;
    }

    private void bringIn(Library library, Arrivals seen, List<Sitting> arrived) {
        List<Plate> settled = arrived.stream()
                .filter(s -> !s.now().equals(s.of().joined()))
                .map(Sitting::now)
                .toList();
        room.front().busy("saving the join");
        room.work(
                progress -> {
                    BroughtIn done = library.bringIn(seen, settled, progress);
                    for (Sitting sitting : arrived) {
                        keeping.forget(library, sitting.of());
                    }
                    return done;
                },
                done -> {
                    room.front().busy("");
                    room.front().say(told(done));
                    room.changed(library);
                    room.go(new Place.Partner(library));
                },
                () -> room.front().busy(""));
    }

    private static String told(BroughtIn done) {
        List<String> parts = new ArrayList<>();
        parts.add(plates(done.joined().size()) + " joined");
        if (!done.clashing().isEmpty()) {
            parts.add(plates(done.clashing().size()) + " with clashes left open");
        }
        if (!done.tookOver().isEmpty()) {
            parts.add(plates(done.tookOver().size()) + " taken over");
        }
        return "Saved as one version: " + String.join(", ", parts) + ".";
    }

    private static String plates(int n) {
        return n + (n == 1 ? " plate" : " plates");
    }

    private void saveOne(Library library, Sitting sitting) {
        if (sitting.open() > 0 && !consents(sitting.open())) {
            return;
        }
        Optional<String> reason = view.askReason(reason(sitting));
        if (reason.isEmpty() || reason.get().isBlank()) {
            return;
        }
        Plate plate = sitting.now();
        Saving saving =
                new Saving(List.of(new Change.PutPlate(plate)), reason.get().strip(), Optional.empty(), join.newest());
        room.withHand(
                library,
                () -> room.work(
                        progress -> {
                            Version saved = library.save(saving);
                            keeping.forget(library, sitting.of());
                            return saved;
                        },
                        saved -> {
                            room.front().say("Version saved.");
                            room.draftsChanged();
                            room.changed(library);
                        }));
    }

    private static String reason(Sitting sitting) {
        String decided = sitting.of().clashes().stream()
                .filter(c -> !ClashAnswers.isOpen(c, sitting.now()))
                .map(c -> ValueWords.place(sitting.of().joined(), c))
                .limit(3)
                .collect(Collectors.joining("; "));
        return decided.isEmpty() ? "Clashes decided" : "Decided: " + decided;
    }
}
