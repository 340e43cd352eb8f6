package platekeep.client.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.room.LibraryNames;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.model.plate.Plate;

/** Copies and moves plates between the open libraries. */
public final class CarryPresenter {
    private final Workroom room;
    private final List<Drafts> drafts;
    private final CarryView view;

    /**
     * @param drafts where what is not saved is kept
     */
    public CarryPresenter(Workroom room, List<Drafts> drafts, CarryView view) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
    }

    /** Asks where to and carries plates of one library there. */
    public void carry(Way way, List<Place.OnePlate> plates) {
        if (plates.isEmpty()) {
            room.front().trouble("Choose one or more plates first.");
            return;
        }
        Library from = plates.get(0).library();
        if (plates.stream().anyMatch(plate -> plate.library() != from)) {
            room.front()
                    .trouble(
                            "These plates lie in several libraries. Choose plates of one of them; nothing was changed.");
            return;
        }
        List<Library> others =
                room.open().stream().filter(library -> library != from).toList();
        if (others.isEmpty()) {
            room.front()
                    .trouble("Only \"" + room.nameOf(from)
                            + "\" is open. Open the library that the plates are to go to (menu"
                            + " Library), then try again.");
            return;
        }
        List<String> ids = plates.stream().map(Place.OnePlate::plateId).toList();
        LibraryNames names = room.names();
        room.work(progress -> plans(way, Load.read(from, ids, drafts), others, names), this::ask);
    }

    private static List<Plan> plans(Way way, Load load, List<Library> others, LibraryNames names)
            throws LibraryException {
        List<Plan> plans = new ArrayList<>();
        for (Library to : others) {
            plans.add(Plan.of(way, load, to, names));
        }
        return plans;
    }

    private void ask(List<Plan> plans) {
        Plan any = plans.get(0);
        List<CarryView.Target> targets = plans.stream()
                .map(plan -> new CarryView.Target(plan.toName(), plan.words(), does(plan)))
                .toList();
        view.askTarget(any.way(), any.fromName(), targets)
                .map(plans::get)
                .ifPresent(plan ->
                        room.withHand(plan.to(), () -> room.withHand(plan.load().from(), () -> start(plan))));
    }

    private static CarryView.Does does(Plan plan) {
        return plan.doesSomething()
                ? CarryView.Does.CARRY
                : plan.different().isEmpty() ? CarryView.Does.NOTHING : CarryView.Does.COMPARE;
    }

    private void start(Plan plan) {
        if (!plan.doesSomething()) {
            offerToCompare(plan);
            return;
        }
        room.save(
                progress -> {
                    plan.carry();
                    return plan.reason() + ".";
                },
                done -> {
                    room.front().say(done);
                    tell(plan);
                    offerToCompare(plan);
                },
                () -> tell(plan));
    }

    private void tell(Plan plan) {
        room.changed(plan.to());
        room.changed(plan.load().from());
    }

    private void offerToCompare(Plan plan) {
        if (plan.different().isEmpty()) {
            return;
        }
        Plate plate = plan.different().get(0);
        String sentence = Plan.titles(plan.different()) + (plan.different().size() == 1 ? " is" : " are") + " in \""
                + plan.toName() + "\" already and different, so what is there was left as it is. Compare "
                + (plan.different().size() == 1 ? "the two" : "\"" + plate.title() + "\"") + "?";
        if (view.askCompare(sentence) == CarryView.Answer.COMPARE) {
            Library from = plan.load().from();
            room.go(new Place.Compare(
                    new Place.Side(plan.to(), plate.id(), Optional.empty(), "in " + plan.toName()),
                    new Place.Side(from, plate.id(), Optional.empty(), "in " + plan.fromName())));
        }
    }
}
