package platekeep.client.plate.work;

import java.util.List;
import java.util.Optional;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Hand;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.plate.open.Suggestions;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.client.ui.Dates;
import platekeep.model.compare.Comparison;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.RowIds;

/**
 * Makes versions of the plate that is open and leads through those that there are: saves, looks at old ones, brings
 * them back, names and compares them, puts the plate away.
 */
public final class HistoryPresenter {
    private final Workroom room;
    private final Drafts drafts;
    private final PlateView view;
    private final PlatePresenter plates;

    HistoryPresenter(Workroom room, Drafts drafts, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
        this.plates = plates;
    }

    /** Saves a version, once a reason is given. */
    public void save() {
        plates.current()
                .filter(OpenPlate::isDrawn)
                .ifPresentOrElse(
                        opened -> room.withHand(opened.library(), () -> suggest(opened)),
                        () -> room.front().say("Nothing has changed since the newest version."));
    }

    private void suggest(OpenPlate opened) {
        opened.steps().endStroke();
        Plate drawn = opened.now();
        Plate plate = RowIds.given(drawn);
        Optional<Plate> saved = opened.saved();
        room.work(
                (Progress progress) -> saved.map(
                                before -> Comparison.of(before, plate).words())
                        .orElse(List.of("First version")),
                words -> askReason(opened, new Ready(plate, drawn), words));
    }

    /** What is to be saved, and as what it stood on the chart. */
    private record Ready(Plate plate, Plate drawn) {}

    private void askReason(OpenPlate opened, Ready ready, List<String> words) {
        Hand own = opened.library().hand().orElseThrow();
        List<Hand> hands = Suggestions.hands(own, opened.history());
        view.askReason(Suggestions.reason(words), hands.stream().map(Hand::name).toList())
                .ifPresent(answer -> {
                    Optional<Hand> other = Optional.of(hands.get(answer.hand())).filter(hand -> !hand.equals(own));
                    save(opened, ready, answer.reason(), other);
                });
    }

    private void save(OpenPlate opened, Ready ready, String reason, Optional<Hand> inNameOf) {
        Saving saving = new Saving(List.of(new Change.PutPlate(ready.plate())), reason, inNameOf, opened.seen());
        room.save(
                progress -> {
                    Version version = opened.library().save(saving);
                    drafts.drop(opened.library().folder(), opened.id());
                    return version;
                },
                version -> {
                    opened.savedAs(ready.plate(), ready.drawn(), version.id());
                    plates.keep(opened);
                    room.front().say("Saved: " + reason);
                    room.draftsChanged();
                    room.changed(opened.library());
                });
    }

    /** Looks at an old version; the newest one leads to the plate as it is now. */
    public void lookAt(String versionId) {
        plates.current().ifPresent(opened -> {
            boolean isNewest = opened.history().stream()
                    .findFirst()
                    .filter(newest -> newest.version().id().equals(versionId))
                    .isPresent();
            opened.lookAt(isNewest && !opened.isDrawn() ? Optional.empty() : Optional.of(versionId));
            plates.refresh();
        });
    }

    /** Goes back from an old version to the plate as it is now. */
    public void lookAtNow() {
        plates.current().ifPresent(opened -> {
            opened.lookAt(Optional.empty());
            plates.refresh();
        });
    }

    /** Brings the version that is looked at back, as a new version; what was drawn can be had again by undo. */
    public void bringBack() {
        plates.current()
                .ifPresent(opened -> opened.lookingAt()
                        .flatMap(opened::version)
                        .ifPresent(step -> step.entry()
                                .flatMap(Entry::plate)
                                .ifPresent(plate -> bringBack(
                                        opened, Dates.day(step.version().on()), plate))));
    }

    private void bringBack(OpenPlate opened, String day, Plate plate) {
        opened.lookAt(Optional.empty());
        opened.steps().take("Bring back the version of " + day, RowIds.given(plate));
        plates.drawn();
        if (opened.isDrawn()) {
            List<String> words = List.of("Version of " + day + " brought back");
            Ready ready = new Ready(RowIds.given(opened.now()), opened.now());
            room.withHand(opened.library(), () -> askReason(opened, ready, words));
        }
    }

    /** Gives a name to a version. */
    public void nameVersion(String versionId) {
        plates.current()
                .ifPresent(opened -> opened.version(versionId)
                        .ifPresent(step -> view.askVersionName(
                                        Dates.day(step.version().on()) + ": "
                                                + step.version().reason())
                                .ifPresent(
                                        name -> room.withHand(opened.library(), () -> name(opened, versionId, name)))));
    }

    private void name(OpenPlate opened, String versionId, String name) {
        room.work(
                progress -> {
                    opened.library().nameVersion(opened.id(), versionId, name);
                    return name;
                },
                done -> {
                    room.front().say("The version is called \"" + name + "\" now.");
                    room.changed(opened.library());
                });
    }

    /** Puts two versions side by side, the older one first. */
    public void compare(String versionId, String otherVersionId) {
        plates.current().ifPresent(opened -> {
            List<Place.Side> newestFirst = opened.history().stream()
                    .filter(step -> step.version().id().equals(versionId)
                            || step.version().id().equals(otherVersionId))
                    .map(step -> side(opened, step))
                    .toList();
            if (newestFirst.size() == 2) {
                room.go(new Place.Compare(newestFirst.get(1), newestFirst.get(0)));
            }
        });
    }

    /** Puts the version that is looked at beside the newest one. */
    public void compareWithNow() {
        plates.current()
                .ifPresent(opened -> opened.lookingAt()
                        .ifPresent(id -> opened.history().stream()
                                .findFirst()
                                .ifPresent(
                                        newest -> compare(id, newest.version().id()))));
    }

    private static Place.Side side(OpenPlate opened, PlateVersion step) {
        String words = Dates.day(step.version().on()) + ", by "
                + step.version().inNameOf().name();
        return new Place.Side(
                opened.library(), opened.id(), Optional.of(step.version().id()), words);
    }

    /** Puts the plate away, with a reason. */
    public void putAway() {
        plates.current()
                .filter(opened -> opened.saved().isPresent())
                .ifPresent(opened -> view.askPutAway(opened.now().title())
                        .ifPresent(reason -> room.withHand(opened.library(), () -> putAway(opened, reason))));
    }

    private void putAway(OpenPlate opened, String reason) {
        Saving saving = new Saving(List.of(new Change.PutAway(opened.id())), reason, Optional.empty(), opened.seen());
        room.work(
                progress -> {
                    Version version = opened.library().save(saving);
                    drafts.drop(opened.library().folder(), opened.id());
                    return version;
                },
                version -> {
                    plates.forget(opened);
                    room.front()
                            .say("\"" + opened.now().title() + "\" was put away; it can be brought back at any time.");
                    room.draftsChanged();
                    room.changed(opened.library());
                    room.go(new Place.Gallery());
                });
    }
}
