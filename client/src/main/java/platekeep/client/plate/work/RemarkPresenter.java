package platekeep.client.plate.work;

import java.security.SecureRandom;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import platekeep.client.library.Hand;
import platekeep.client.plate.edit.RemarkEdits;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.plate.piece.Area;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Remark;

/** What the designers say to each other about places of a plate. */
public final class RemarkPresenter {
    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private final RandomGenerator random = new SecureRandom();

    RemarkPresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    /** Pins a remark to what is chosen, at its lowest row, or else to the cursor. */
    public void say() {
        withHand((opened, said) -> {
            Optional<Area> chosen = opened.chosen();
            Spot first = chosen.map(a -> new Spot(a.bottom(), a.left())).orElse(opened.cursor());
            Spot last = chosen.map(a -> new Spot(a.bottom(), a.right())).orElse(opened.cursor());
            plates.draw().facts("Remark", plate -> RemarkEdits.say(plate, said, first, last, random));
        });
    }

    /** Answers a remark. */
    public void answer(Remark remark) {
        withHand((opened, said) ->
                plates.draw().facts("Answer", plate -> RemarkEdits.answer(plate, said, remark, random)));
    }

    private interface Saying {
        void say(OpenPlate opened, RemarkEdits.Said said);
    }

    private void withHand(Saying then) {
        plates.drawable()
                .ifPresent(opened -> room.withHand(
                        opened.library(),
                        () -> view.askRemark().ifPresent(text -> {
                            String by = opened.library().hand().map(Hand::name).orElse("");
                            then.say(opened, new RemarkEdits.Said(by, LocalDate.now(), text));
                        })));
    }

    /** Ticks a remark off, or opens it again. */
    public void tick(Remark remark) {
        plates.draw()
                .facts(
                        remark.done() ? "Open a remark again" : "Tick a remark off",
                        plate -> RemarkEdits.tick(plate, remark.id()));
    }

    /** Takes a remark out. */
    public void remove(Remark remark) {
        plates.draw().facts("Take a remark out", plate -> RemarkEdits.remove(plate, remark.id()));
    }

    /** Shows the place of a remark. */
    public void show(Remark remark) {
        Consumer<OpenPlate> there = opened -> remark.row()
                .map(opened.now()::indexOf)
                .filter(row -> row >= 0)
                .ifPresent(row -> plates.pointOut(new Spot(
                        row,
                        remark.from().orElse(opened.now().from()) - opened.now().from())));
        plates.current().ifPresent(there);
    }
}
