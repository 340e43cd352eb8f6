package platekeep.model.join.edits;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import platekeep.model.join.edits.change.Change;
import platekeep.model.join.edits.change.Side;
import platekeep.model.join.edits.change.Together;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.join.edits.kind.EditKind;
import platekeep.model.join.edits.kind.SettleEdits;
import platekeep.model.join.edits.kind.Studio;
import platekeep.model.join.edits.scene.PictureMaker;
import platekeep.model.join.edits.scene.Words;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;

/**
 * A stream of cases out of a seed. In turn: every kind of edit with every other, several edits on each side, the same
 * change on both, plates whose clashes were left open, and rows without ids.
 */
public final class EditCases {
    private static final int TRIES = 40;
    /** One edit on each side, rows with ids. */
    private static final int PLAIN = 6;

    private static final List<EditKind> WITHOUT_IDS = List.of(
            EditKind.RECOLOUR,
            EditKind.DRAW,
            EditKind.ERASE,
            EditKind.PATCH,
            EditKind.INSERT,
            EditKind.DELETE,
            EditKind.WIDEN_LEFT,
            EditKind.WIDEN_RIGHT,
            EditKind.BOTH_ENDS,
            EditKind.CHANGE_COLOUR,
            EditKind.RENAME_KEY,
            EditKind.ADD_COLOUR_AND_PAINT,
            EditKind.RETITLE,
            EditKind.THEMES,
            EditKind.NOTES);
    private static final char MINE = '\uE000';
    private static final char THEIRS = '\uE800';
    private static final EditKind[] KINDS = EditKind.values();

    private final Random chance;
    private final long number;

    private EditCases(long seed, long number) {
        this.chance = new Random(seed * 1_000_003L + number * 7919L);
        this.chance.nextLong();
        this.number = number;
    }

    /** So many cases; the same seed gives the same cases. */
    public static Stream<Case> all(long seed, int count) {
        return IntStream.range(0, count).mapToObj(i -> new EditCases(seed, i).next());
    }

    private Case next() {
        EditKind a = KINDS[(int) (number % KINDS.length)];
        EditKind b = KINDS[(int) (number / KINDS.length % KINDS.length)];
        int family = chance.nextInt(12);
        for (int tries = 0; true; tries++) {
            try {
                return tries < TRIES
                        ? make(family, a, b)
                        : make(tries < 2 * TRIES ? family : PLAIN, anyKind(), anyKind());
            } catch (Undetermined open) {
                if (tries > 100 * TRIES) {
                    throw new IllegalStateException("no case to be found", open);
                }
            }
        }
    }

    private EditKind anyKind() {
        return KINDS[chance.nextInt(KINDS.length)];
    }

    private Case make(int family, EditKind a, EditKind b) {
        return switch (family) {
            case 0 -> same(a);
            case 1, 2 -> pair(plate(a, b), List.of(a, anyKind()), List.of(b, anyKind(), anyKind()), "several ");
            case 3 -> again(a, b);
            case 4 ->
                BareCases.of(pair(
                        plate(), List.of(Words.any(WITHOUT_IDS, chance)), List.of(Words.any(WITHOUT_IDS, chance)), ""));
            case 5 -> BareCases.twins(plate(a, b).plate(), chance);
            default -> pair(plate(a, b), List.of(a), List.of(b), "");
        };
    }

    private record Scene(Plate plate, PictureMaker maker) {}

    private Scene plate(EditKind... kinds) {
        PictureMaker maker = new PictureMaker(chance);
        boolean figures = List.of(kinds).stream().anyMatch(EditKind::needsFigures);
        return figures
                ? new Scene(maker.startOnEach().plate(2 + chance.nextInt(2)), maker)
                : new Scene(maker.plate(1 + chance.nextInt(3)), maker);
    }

    private Case same(EditKind a) {
        Scene scene = plate(a);
        Studio s = studio(scene, anyRow(scene), anyPosition(scene), MINE);
        a.make(s);
        Plate side = side(scene.plate(), s.change, chance.nextInt(3) > 0);
        if (!Together.of(scene.plate(), s.change, s.change).equals(side)) {
            throw new AssertionError("the same change twice is not itself: " + a);
        }
        return new Case("same " + a, scene.plate(), side, side, side);
    }

    /** A join whose base is itself a joined plate with clashes left open. */
    private Case again(EditKind a, EditKind b) {
        Scene scene = plate(a, b);
        EditKind kind = clashing();
        EditKind other = kind == EditKind.DELETE ? EditKind.RECOLOUR : kind;
        Case first = pair(scene, List.of(kind), List.of(other), "");
        if (!first.want().hasClashes()) {
            throw new Undetermined("no clash");
        }
        Scene joined = new Scene(first.want(), scene.maker());
        Studio m = studio(joined, anyRow(joined), anyPosition(joined), MINE);
        Studio t = studio(joined, anyRow(joined), anyPosition(joined), THEIRS);
        String how = SettleEdits.settle(m, t);
        if (chance.nextInt(3) > 0) {
            a.make(m);
        }
        if (chance.nextInt(3) > 0) {
            b.make(t);
        }
        return joined("again " + how + " " + a + "+" + b, joined.plate(), m.change, t.change, chance.nextInt(3) > 0);
    }

    private EditKind clashing() {
        EditKind[] often = {
            EditKind.PATCH, EditKind.PATCH, EditKind.RETITLE, EditKind.DELETE, EditKind.INSERT, EditKind.REDRAW_ROW
        };
        return often[chance.nextInt(often.length)];
    }

    private Case pair(Scene scene, List<EditKind> mine, List<EditKind> theirs, String prefix) {
        int row = anyRow(scene);
        int position = anyPosition(scene);
        Studio m = studio(scene, row, position, MINE);
        Studio t = studio(scene, near(row, scene.plate().rows().size()), nearPosition(scene, position), THEIRS);
        mine.forEach(k -> k.make(m));
        theirs.forEach(k -> k.make(t));
        String kind =
                prefix + (mine.size() == 1 ? mine.get(0) + "+" + theirs.get(0) : mine.size() + "+" + theirs.size());
        return joined(kind, scene.plate(), m.change, t.change, chance.nextInt(3) > 0);
    }

    private Case joined(String kind, Plate base, Change mine, Change theirs, boolean saved) {
        Plate m = side(base, mine, saved);
        Plate t = side(base, theirs, saved);
        if (m.equals(base) && t.equals(base)) {
            throw new Undetermined("nothing happened");
        }
        Plate want = Together.of(base, mine, theirs);
        check(kind, base, m, t, want);
        if (!want.equals(Together.of(base, theirs, mine))) {
            throw new AssertionError("who joins makes a difference: " + kind);
        }
        return new Case(kind + clashes(base, want), base, m, t, want);
    }

    private static void check(String kind, Plate base, Plate m, Plate t, Plate want) {
        if (m.equals(base) && !want.equals(t) || t.equals(base) && !want.equals(m)) {
            throw new AssertionError("one side alone does not come out as it is: " + kind);
        }
        if (m.equals(t) && !want.equals(m)) {
            throw new Undetermined("both alike, by different ways");
        }
    }

    private static String clashes(Plate base, Plate want) {
        List<String> whats = new ArrayList<>();
        want.clashes().stream()
                .filter(c -> !base.clashes().contains(c))
                .map(Clash::what)
                .distinct()
                .forEach(w -> whats.add("!" + w.word()));
        return whats.isEmpty() ? "" : " " + String.join(" ", whats);
    }

    private static Plate side(Plate base, Change change, boolean saved) {
        return saved ? Side.saved(base, change) : Side.raw(base, change);
    }

    private Studio studio(Scene scene, int row, int position, char ink) {
        return new Studio(chance, scene.plate(), scene.maker(), row, position, ink);
    }

    private int anyRow(Scene scene) {
        return chance.nextInt(scene.plate().rows().size());
    }

    private int anyPosition(Scene scene) {
        return scene.plate().from() + chance.nextInt(scene.plate().positions());
    }

    /** The same row, one beside it, or any. */
    private int near(int row, int rows) {
        int there =
                switch (chance.nextInt(3)) {
                    case 0 -> row;
                    case 1 -> row + (chance.nextBoolean() ? 1 : -1);
                    default -> chance.nextInt(rows);
                };
        return Math.max(0, Math.min(rows - 1, there));
    }

    private int nearPosition(Scene scene, int position) {
        int there = chance.nextInt(3) == 0 ? anyPosition(scene) : position + chance.nextInt(9) - 4;
        return Math.max(
                scene.plate().from(),
                Math.min(scene.plate().from() + scene.plate().positions() - 1, there));
    }
}
