package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

class KeptKindsPropertyTest {

    @Property(tries = 300, seed = "20261125")
    void noEditChangesNothing(@ForAll("plates") Plate plate) {
        assertThat(KeptKinds.after(plate, plate)).isSameAs(plate);
    }

    @Property(tries = 400, seed = "20261125")
    void paintingAndErasingTurnNoOldCable(@ForAll("plates") Plate before, @ForAll Random random) {
        Plate edited = painted(before, random);
        Plate kept = KeptKinds.after(before, edited);

        assertEveryFigureKeepsItsKinds(before, kept);
        assertThat(KeptKinds.after(before, kept)).isEqualTo(kept);
    }

    @Property(tries = 400, seed = "20261125")
    void rowsPutInOrTakenOutTurnOnlyWhatLiesBeyondThem(@ForAll("plates") Plate before, @ForAll Random random) {
        Plate edited = rowsChanged(before, random);
        Plate kept = KeptKinds.after(before, edited);

        assertEveryFigureKeepsItsKinds(before, kept);
        assertThat(KeptKinds.after(before, kept)).isEqualTo(kept);
    }

    @Property(tries = 400, seed = "20261125")
    void bothAtOnceKeepTheKindsToo(@ForAll("plates") Plate before, @ForAll Random random) {
        Plate kept = KeptKinds.after(before, painted(rowsChanged(before, random), random));

        assertEveryFigureKeepsItsKinds(before, kept);
    }

    @Property(tries = 300, seed = "20261125")
    void noStartIsLeftOnARowThatIsGoneNorTwoMovedToOnePlace(@ForAll("plates") Plate before, @ForAll Random random) {
        Plate kept = KeptKinds.after(before, rowsChanged(before, random));
        Set<RowId> gone = new HashSet<>();
        before.rows().forEach(row -> gone.add(row.id().orElseThrow()));
        kept.rows().forEach(row -> gone.remove(row.id().orElseThrow()));

        assertThat(kept.starts()).noneMatch(start -> gone.contains(start.row()));
        assertThat(doubled(before)).containsAll(doubled(kept));
    }

    /** The places at which more than one start stands. */
    private static Set<List<Object>> doubled(Plate plate) {
        Set<List<Object>> once = new HashSet<>();
        Set<List<Object>> doubled = new HashSet<>();
        for (Start start : plate.starts()) {
            List<Object> place = List.of(start.row(), start.pleat());
            if (!once.add(place)) {
                doubled.add(place);
            }
        }
        return doubled;
    }

    /**
     * For each figure of the result and each old figure that it holds cables of: its old cables all have the kind that
     * they had, turned once for each row put in or taken out between them and a cable that did not turn. Where a figure
     * holds cables of one old figure only, that cable is its start, or without one its anchor. Where it was joined of
     * several, those of the old figure whose start counts are held to it and the others must at least agree.
     */
    private static void assertEveryFigureKeepsItsKinds(Plate before, Plate kept) {
        Kinds was = Kinds.of(before);
        Kinds is = Kinds.of(kept);
        int[] oldRow = OldKinds.rows(before, kept);
        Map<Integer, Map<Integer, List<int[]>>> cables = new HashMap<>();
        for (int r = kept.rows().size() - 1; r >= 0; r--) {
            for (int p = kept.from(); p < kept.from() + kept.positions(); p++) {
                int figure = is.figures().at(r, p);
                int old = oldRow[r] < 0 ? Figures.NONE : was.figures().at(oldRow[r], p);
                if (figure != Figures.NONE && old != Figures.NONE) {
                    cables.computeIfAbsent(figure, f -> new HashMap<>())
                            .computeIfAbsent(old, f -> new ArrayList<>())
                            .add(new int[] {r, p});
                }
            }
        }
        cables.forEach((figure, byOld) -> {
            if (byOld.size() == 1) {
                List<int[]> all = byOld.values().iterator().next();
                assertThat(turns(all, oldRow, was, is, reference(kept, is, figure, oldRow, was, all)))
                        .isZero();
            } else {
                byOld.values()
                        .forEach(all -> assertThat(turns(all, oldRow, was, is, all.get(0)))
                                .isIn(0, all.size()));
            }
        });
    }

    /** The start's cable where it says what the old cable there was, else the first of the figure's old cables from the bottom. */
    private static int[] reference(Plate kept, Kinds is, int figure, int[] oldRow, Kinds was, List<int[]> cables) {
        Optional<Start> own = is.startOf(figure);
        if (own.isPresent()) {
            int row = kept.indexOf(own.get().row());
            if (oldRow[row] >= 0
                    && was.at(oldRow[row], own.get().pleat())
                            .equals(Optional.of(own.get().cable()))) {
                return new int[] {row, own.get().pleat()};
            }
        }
        return cables.get(0);
    }

    /** How many of the cables do not have the kind that they had, turned by rows put in between them and the reference. */
    private static int turns(List<int[]> cables, int[] oldRow, Kinds was, Kinds is, int[] from) {
        int turned = 0;
        for (int[] cable : cables) {
            int between = cable[0] - from[0] - (oldRow[cable[0]] - oldRow[from[0]]);
            CableKind had = was.at(oldRow[cable[0]], cable[1]).orElseThrow();
            if (is.at(cable[0], cable[1]).orElseThrow() != had.turned(between)) {
                turned++;
            }
        }
        return turned;
    }

    private static Plate painted(Plate plate, Random random) {
        List<Row> rows = new ArrayList<>(plate.rows());
        if (rows.isEmpty()) {
            return plate;
        }
        int top = random.nextInt(rows.size());
        int left = random.nextInt(plate.positions());
        for (int r = top; r < Math.min(rows.size(), top + 1 + random.nextInt(2)); r++) {
            StringBuilder cells = new StringBuilder(rows.get(r).cells());
            for (int i = left; i < Math.min(cells.length(), left + 1 + random.nextInt(4)); i++) {
                cells.setCharAt(i, "...ab".charAt(random.nextInt(5)));
            }
            rows.set(r, rows.get(r).withCells(cells.toString()));
        }
        return plate.edit().rows(rows).build();
    }

    private static Plate rowsChanged(Plate plate, Random random) {
        List<Row> rows = new ArrayList<>(plate.rows());
        for (int n = 0; n < 1 + random.nextInt(3); n++) {
            if (random.nextBoolean() && !rows.isEmpty()) {
                rows.remove(random.nextInt(rows.size()));
            } else {
                StringBuilder cells = new StringBuilder();
                for (int i = 0; i < plate.positions(); i++) {
                    cells.append("..aab".charAt(random.nextInt(5)));
                }
                rows.add(random.nextInt(rows.size() + 1), Charts.fresh(n, cells.toString()));
            }
        }
        return plate.edit().rows(rows).build();
    }

    @Provide
    Arbitrary<Plate> plates() {
        return Charts.started();
    }
}
