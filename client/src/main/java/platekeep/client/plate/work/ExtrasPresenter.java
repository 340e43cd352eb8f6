package platekeep.client.plate.work;

import java.util.Optional;
import platekeep.client.plate.edit.ExtraEdits;
import platekeep.client.plate.edit.MarkEdits;
import platekeep.client.plate.open.OpenPlate;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Unknown;

/** What is worked or sewn on beside the cables of the picture: single stitches and notions. */
public final class ExtrasPresenter {
    private final PlateView view;
    private final PlatePresenter plates;
    private String stitch = MarkEdits.STITCHES.get(0);
    private Optional<Mark> held = Optional.empty();

    ExtrasPresenter(PlateView view, PlatePresenter plates) {
        this.view = view;
        this.plates = plates;
    }

    /** Which single stitch is put on. */
    public String stitch() {
        return stitch;
    }

    /** Takes another single stitch. */
    public void take(String newStitch) {
        stitch = newStitch;
    }

    /** A press with the single stitch in hand: takes hold of the one that lies there, or puts one on. */
    void press(OpenPlate opened, Spot spot) {
        held = MarkEdits.at(opened.now(), spot);
        if (held.isEmpty()) {
            plates.draw()
                    .colour()
                    .ifPresent(key -> plates.draw()
                            .facts("Put a " + stitch + " on", plate -> MarkEdits.add(plate, spot, stitch, key)));
        }
    }

    /** Moves the stitch that is held. */
    void drag(OpenPlate opened, Spot spot) {
        held.ifPresent(mark -> {
            opened.strokeAnew("Move a " + mark.stitch(), plate -> MarkEdits.move(plate, mark, spot));
            plates.drawn();
        });
    }

    /** Takes the single stitch at the cursor off; tells whether there was one. */
    boolean eraseAt(OpenPlate opened, Spot spot) {
        Optional<Mark> there = MarkEdits.at(opened.now(), spot);
        there.ifPresent(mark ->
                plates.draw().facts("Take a " + mark.stitch() + " off", plate -> MarkEdits.remove(plate, mark)));
        return there.isPresent();
    }

    /** Adds something that is sewn on. */
    public void addNotion() {
        plates.current()
                .ifPresent(opened -> view.askNotion(new Notion("button", Optional.empty(), 1, Unknown.NONE))
                        .ifPresent(notion -> {
                            int at = opened.now().notions().size();
                            plates.draw()
                                    .facts("Add a " + notion.kind(), plate -> ExtraEdits.putNotion(plate, at, notion));
                        }));
    }

    /** Changes something that is sewn on. */
    public void changeNotion(int at) {
        plates.current()
                .filter(o -> at < o.now().notions().size())
                .ifPresent(opened -> view.askNotion(opened.now().notions().get(at))
                        .ifPresent(notion -> plates.draw()
                                .facts("Change a " + notion.kind(), plate -> ExtraEdits.putNotion(plate, at, notion))));
    }

    /** Takes something out that is sewn on. */
    public void removeNotion(int at) {
        plates.draw().facts("Take a notion out", plate -> ExtraEdits.removeNotion(plate, at));
    }

    /** Asks on which cloth it is to be worked: gathering rows, their spacing, fullness, holding rows. */
    public void cloth() {
        plates.current()
                .ifPresent(opened -> view.askCloth(opened.now().cloth())
                        .ifPresent(cloth -> plates.draw()
                                .facts(
                                        "Change the cloth",
                                        plate -> plate.edit().cloth(cloth).build())));
    }
}
