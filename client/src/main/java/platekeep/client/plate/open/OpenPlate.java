package platekeep.client.plate.open;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import platekeep.client.draft.KeptDraft;
import platekeep.client.library.Library;
import platekeep.client.library.PlateVersion;
import platekeep.client.plate.edit.Steps;
import platekeep.client.plate.piece.Area;
import platekeep.client.plate.piece.Piece;
import platekeep.model.draw.Spot;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.KeptKinds;
import platekeep.model.stitch.Kinds;
import platekeep.model.stitch.RowIds;

/**
 * A plate that is open: as its newest version has it, and as it was drawn since. Each step keeps the kind of every cable
 * that was there before.
 */
public final class OpenPlate {
    private final Library library;
    private final String id;
    private Optional<Plate> saved;
    private Optional<String> seen;
    private final Steps steps;
    private List<PlateVersion> history = List.of();
    private Optional<Offer> offer = Optional.empty();
    private Optional<String> lookingAt = Optional.empty();
    private Spot cursor = new Spot(0, 0);
    private Plate painted;
    private Known known;
    private Optional<Area> chosen = Optional.empty();
    private Optional<Lifted> lifted = Optional.empty();
    private Kin kin = Kin.NONE;
    private OptionalInt axis = OptionalInt.empty();

    /**
     * What is chosen, taken off the plate, so that it can be moved over others and these are there again when it has
     * moved on.
     *
     * @param result the plate with the piece where it is now; when the plate is another, nothing is lifted any more
     * @param home where it was lifted off; empty when it never lay so
     */
    public record Lifted(Plate ground, Piece piece, Spot corner, Plate result, Optional<Home> home) {}

    /**
     * A draft of an earlier day that can be gone on with.
     *
     * @param words when it was kept and what differs in it
     */
    public record Offer(KeptDraft draft, String words) {}

    /** Where a piece lay, and the plate then. */
    public record Home(Spot corner, Plate plate) {}

    private record Known(Plate plate, Kinds kinds) {}

    private OpenPlate(Library library, Plate now, Optional<Plate> saved, Optional<String> seen) {
        this.library = library;
        this.id = now.id();
        this.saved = saved;
        this.seen = seen;
        this.steps = new Steps(now);
        this.cursor = new Spot(Math.max(0, now.rows().size() - 1), now.positions() / 2);
    }

    /** A plate as a version has it. */
    public static OpenPlate of(Library library, Plate saved, Optional<String> seen) {
        Plate withIds = RowIds.given(saved);
        return new OpenPlate(library, withIds, Optional.of(withIds), seen);
    }

    /** A plate that is in no version yet. */
    public static OpenPlate begun(Library library, Plate plate) {
        return new OpenPlate(library, plate, Optional.empty(), Optional.empty());
    }

    public Library library() {
        return library;
    }

    public String id() {
        return id;
    }

    public Steps steps() {
        return steps;
    }

    /** The plate as its newest version has it; empty when it is in none yet. */
    public Optional<Plate> saved() {
        return saved;
    }

    /** The version of the library that it is drawn from. */
    public Optional<String> seen() {
        return seen;
    }

    /** The plate as drawn. */
    public Plate now() {
        return steps.now();
    }

    /** Takes a step; every cable keeps the kind that it had. */
    public void step(String name, UnaryOperator<Plate> change) {
        steps.endStroke();
        Plate before = steps.now();
        steps.take(name, kept(before, change.apply(before)));
    }

    /** Takes a step after which kinds are as they should be. */
    public void stepAsMeant(String name, Plate after) {
        steps.take(name, after);
    }

    /** Goes on with a stroke from what it has come to. */
    public void stroke(String name, UnaryOperator<Plate> change) {
        Plate base = steps.strokeBase();
        painted = change.apply(base == steps.now() || painted == null ? steps.now() : painted);
        steps.stroke(name, kept(base, painted));
    }

    /** Makes a stroke anew, from what was before it. */
    public void strokeAnew(String name, UnaryOperator<Plate> change) {
        Plate base = steps.strokeBase();
        steps.stroke(name, kept(base, change.apply(base)));
    }

    private Plate kept(Plate before, Plate after) {
        boolean isSameChart = before.rows() == after.rows() && before.starts().equals(after.starts());
        return isSameChart || before == after || isRecoloured(before, after)
                ? after
                : KeptKinds.after(before, kinds(before), after);
    }

    /** The kinds of a plate, kept for the next question; of a stroke all questions are about what was before it. */
    private Kinds kinds(Plate plate) {
        if (known == null) {
            known = new Known(plate, Kinds.of(plate));
        } else if (known.plate() != plate) {
            known = new Known(plate, Kinds.of(plate, known.kinds()));
        }
        return known.kinds();
    }

    /** Whether cables lie where they lay, so that at most colours have changed, and every kind is what it was. */
    private static boolean isRecoloured(Plate before, Plate after) {
        boolean isSameShape = before.starts().equals(after.starts())
                && before.pleats().equals(after.pleats())
                && before.rows().size() == after.rows().size();
        for (int r = 0; isSameShape && r < before.rows().size(); r++) {
            isSameShape = before.rows().get(r).liesLike(after.rows().get(r));
        }
        return isSameShape;
    }

    /** The plates that it was started from, and those started from it. */
    public Kin kin() {
        return kin;
    }

    public void kin(Kin newKin) {
        kin = newKin;
    }

    /** What was chosen on the chart. */
    public Optional<Area> chosen() {
        return chosen;
    }

    public void chosen(Optional<Area> area) {
        chosen = area;
        lifted = Optional.empty();
    }

    /** What was lifted off, as long as nothing else was done since. */
    public Optional<Lifted> lifted() {
        return lifted.filter(l -> l.result() == steps.now());
    }

    /** Something that was lifted was put down again. */
    public void putDown(Lifted piece) {
        lifted = Optional.of(piece);
        chosen = Optional.of(piece.piece().at(piece.corner()));
    }

    /** The axis that is drawn about as in a mirror: the sum of two indices that face each other; widening leaves it where it is. */
    public OptionalInt axis() {
        return axis.isPresent() ? OptionalInt.of(axis.getAsInt() - 2 * now().from()) : axis;
    }

    public void axis(OptionalInt newAxis) {
        axis = newAxis.isPresent() ? OptionalInt.of(newAxis.getAsInt() + 2 * now().from()) : newAxis;
    }

    /** Whether there is something to save. */
    public boolean isDrawn() {
        return saved.isEmpty() || !saved.get().equals(now());
    }

    /**
     * It was saved so.
     *
     * @param drawn what it was when saving began; what was drawn since is drawn on that version
     */
    public void savedAs(Plate plate, Plate drawn, String version) {
        if (steps.now() == drawn) {
            steps.settle(plate);
        }
        saved = Optional.of(plate);
        seen = Optional.of(version);
    }

    public List<PlateVersion> history() {
        return history;
    }

    public void history(List<PlateVersion> versions) {
        history = List.copyOf(versions);
    }

    /** A step of the history by its version. */
    public Optional<PlateVersion> version(String versionId) {
        return history.stream()
                .filter(step -> step.version().id().equals(versionId))
                .findFirst();
    }

    /**
     * The library moved on. What the plate became there is taken over; where it was drawn on here meanwhile, the two
     * are joined, and what they disagree about stays open in the plate.
     *
     * @return what to tell her, if anything
     */
    public Optional<String> movedOn(Moved moved) {
        history = moved.history();
        if (moved.plate().isEmpty() || moved.plate().equals(saved)) {
            if (saved.isPresent() && moved.plate().isPresent()) {
                seen = moved.newest();
            }
            return Optional.empty();
        }
        Plate theirs = moved.plate().get();
        boolean wasDrawn = isDrawn();
        Plate next = wasDrawn ? Join.of(saved, now(), theirs, Hands.UNKNOWN).plate() : theirs;
        saved = moved.plate();
        seen = moved.newest();
        steps.take("Take over what the library has", next);
        return wasDrawn
                ? Optional.of("\"" + theirs.title() + "\" has changed in the library; your draft was joined with it.")
                : Optional.empty();
    }

    public Optional<Offer> offer() {
        return offer;
    }

    public void offer(Optional<Offer> newOffer) {
        offer = newOffer;
    }

    public Optional<String> lookingAt() {
        return lookingAt;
    }

    public void lookAt(Optional<String> version) {
        lookingAt = version;
    }

    public Spot cursor() {
        return cursor;
    }

    /** Moves the cursor, held on the chart. */
    public void cursor(Spot spot) {
        Plate now = steps.now();
        cursor = new Spot(
                Math.max(0, Math.min(now.rows().size() - 1, spot.row())),
                Math.max(0, Math.min(now.positions() - 1, spot.index())));
    }
}
