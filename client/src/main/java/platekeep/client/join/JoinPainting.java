package platekeep.client.join;

import java.util.List;
import java.util.Optional;
import platekeep.client.plate.edit.CableEdits;
import platekeep.client.plate.edit.PlaceWords;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.KeptKinds;

/** Paints on the joined chart: a colour of its palette, or nothing, to erase. */
final class JoinPainting {
    private final JoinPresenter join;
    private final JoinView view;
    private char colour = Row.EMPTY;
    private Spot cursor = new Spot(0, 0);
    private Optional<Spot> last = Optional.empty();
    private Optional<Sitting> painted = Optional.empty();

    JoinPainting(JoinPresenter join, JoinView view) {
        this.join = join;
        this.view = view;
    }

    /**
     * What painting shows.
     *
     * @param colour the key that is painted with; {@link Row#EMPTY} erases
     * @param cursor where the keys paint
     */
    record State(char colour, Spot cursor) {}

    State state() {
        return new State(colour, cursor);
    }

    /** A plate came on the table, or has changed: colour and cursor are held within it. */
    void boarded(Sitting sitting) {
        Plate now = sitting.now();
        boolean isOther = painted.filter(sitting::equals).isEmpty();
        painted = Optional.of(sitting);
        if (isOther || colour != Row.EMPTY && !now.palette().has(colour)) {
            colour = now.palette().entries().keySet().stream().findFirst().orElse(Row.EMPTY);
        }
        if (isOther) {
            toMatter(sitting);
        }
        cursor = held(cursor, now);
    }

    /** The keys paint where what is looked at begins. */
    void toMatter(Sitting sitting) {
        if (sitting.selected() >= 0 && sitting.isJoined()) {
            Boards.area(sitting.of(), sitting.now(), sitting.selected())
                    .ifPresent(area -> cursor = held(new Spot(area.top(), area.from()), sitting.now()));
        }
    }

    private static Spot held(Spot spot, Plate now) {
        return new Spot(
                Math.max(0, Math.min(now.rows().size() - 1, spot.row())),
                Math.max(0, Math.min(now.positions() - 1, spot.index())));
    }

    /** Chooses what is painted with. */
    void choose(char key) {
        colour = key;
        join.refresh();
    }

    /** Chooses the n-th colour, from 0; the one after the last erases. */
    void chooseNth(int n) {
        join.sitting().ifPresent(s -> {
            List<Character> keys = List.copyOf(s.now().palette().entries().keySet());
            if (n <= keys.size()) {
                choose(n == keys.size() ? Row.EMPTY : keys.get(n));
            }
        });
    }

    void press(Spot spot) {
        last = Optional.empty();
        drag(spot);
    }

    void drag(Spot spot) {
        List<Spot> way = CableEdits.line(last.orElse(spot), spot);
        last = Optional.of(spot);
        cursor = spot;
        lay(way, colour);
    }

    private void lay(List<Spot> way, char key) {
        join.sitting().ifPresent(s -> {
            String name = key == Row.EMPTY ? "Erase" : "Paint " + name(s.now(), key);
            join.stroke(name, plate -> CableEdits.paint(plate, way, key));
            tell(cursor);
        });
    }

    private static String name(Plate plate, char key) {
        return plate.palette().get(key).map(Colour::name).orElse(String.valueOf(key));
    }

    /** The pointer lets go: the stroke is a step, and cables far from it keep their kinds. */
    void release() {
        if (last.isPresent()) {
            last = Optional.empty();
            endStroke();
        }
    }

    private void endStroke() {
        join.sitting().ifPresent(s -> {
            Plate before = s.of().joined();
            join.stroke("Paint", plate -> kept(before, plate));
            join.endStroke();
        });
    }

    /** With the kinds kept that the cables had when the join was made. */
    private static Plate kept(Plate before, Plate plate) {
        boolean haveIds = before.rows().stream().allMatch(row -> row.id().isPresent())
                && plate.rows().stream().allMatch(row -> row.id().isPresent());
        return haveIds ? KeptKinds.after(before, plate) : plate;
    }

    /** Chooses the colour that lies at a spot. */
    void pick(Spot spot) {
        join.sitting().ifPresent(s -> choose(s.now().cellAt(spot.row(), s.now().from() + spot.index())));
    }

    void useAtCursor() {
        lay(List.of(cursor), colour);
        endStroke();
    }

    void eraseAtCursor() {
        lay(List.of(cursor), Row.EMPTY);
        endStroke();
    }

    void moveCursor(int rows, int positions) {
        join.sitting().ifPresent(s -> cursor(held(cursor.moved(rows, positions), s.now())));
    }

    void drawCursor(int rows, int positions) {
        join.sitting().ifPresent(s -> {
            Spot from = cursor;
            cursor = held(from.moved(rows, positions), s.now());
            lay(List.of(from, cursor), colour);
            endStroke();
        });
    }

    /** Moves the cursor to a spot. */
    void cursor(Spot spot) {
        cursor = spot;
        join.refresh();
        tell(spot);
    }

    /** The pointer is over a spot, or over none. */
    void hover(Optional<Spot> spot) {
        spot.ifPresentOrElse(this::tell, () -> view.place(""));
    }

    private void tell(Spot spot) {
        join.board()
                .map(Board::drawing)
                .ifPresent(drawing -> view.place(drawing.has(spot) ? PlaceWords.of(drawing, spot) : ""));
    }
}
