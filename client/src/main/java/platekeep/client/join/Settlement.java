package platekeep.client.join;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Side;
import platekeep.model.join.Joined;
import platekeep.model.join.Settled;
import platekeep.model.join.Settling;
import platekeep.model.join.back.Reversal;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/**
 * What was settled by itself, to be looked at and taken back.
 *
 * @param words what it is, in the rows and pleats of the joined plate
 * @param isAlone whether it can be taken back alone
 */
record Settlement(Reversal reversal, String words, boolean isAlone) {
    /** Charts with more cables than this keep the words of the side's own plate, which cost nothing more. */
    private static final int MOST_CELLS = 100_000;

    /** More statements than this say less than one. */
    private static final int MOST_STATEMENTS = 2;

    Settled settled() {
        return reversal.settled();
    }

    /** All that holds of what both sides did, hers first; without what a clash is about, which is decided there. */
    static List<Settlement> of(Plate base, Plate mine, Plate theirs, Joined joined) {
        Plate plate = joined.plate();
        List<Plate> decided = decided(plate);
        Set<RowId> rows = rows(plate);
        List<Settlement> out = new ArrayList<>();
        for (Reversal reversal : Reversal.of(base, mine, theirs, joined)) {
            boolean isAlone = reversal.isAlone(plate);
            boolean isDecidedElsewhere = reversal.isAllOpen(plate)
                    || isOf(rows, reversal)
                    || isAlone && decided.stream().anyMatch(d -> reversal.standing(d) == Reversal.Standing.OUT);
            if (!isDecidedElsewhere) {
                String words =
                        isAlone ? words(reversal, plate) : reversal.settled().words();
                out.add(new Settlement(reversal, words, isAlone));
            }
        }
        out.sort(Comparator.comparing(settlement -> settlement.settled().by()));
        return out;
    }

    /** The rows that clashes are about as a whole. */
    private static Set<RowId> rows(Plate plate) {
        Set<RowId> out = new HashSet<>();
        for (Clash clash : plate.clashes()) {
            if (clash.what() == Clash.What.ROWS) {
                Areas.ids(Settling.bothRuns(clash)).forEach(out::add);
            } else if (clash.what() == Clash.What.ROW) {
                clash.textAt("row").filter(RowId::isRowId).map(RowId::new).ifPresent(out::add);
            }
        }
        return out;
    }

    private static boolean isOf(Set<RowId> rows, Reversal reversal) {
        return !reversal.places().isEmpty()
                && reversal.places().stream()
                        .allMatch(place -> (place.side() == Side.BEFORE ? reversal.base() : reversal.side())
                                .rows()
                                .get(place.row())
                                .id()
                                .filter(rows::contains)
                                .isPresent());
    }

    /** The plate with each clash that is not about the chart decided in each way. */
    private static List<Plate> decided(Plate plate) {
        List<Plate> out = new ArrayList<>();
        for (Clash clash : plate.clashes()) {
            if (clash.what().compareTo(Clash.What.FIELD) >= 0 && clash.what() != Clash.What.FIGURE) {
                List<Value> values = new ArrayList<>(List.of(clash.base()));
                clash.sides().forEach(side -> values.add(side.value()));
                values.forEach(value -> decide(plate, clash, value, out));
            }
        }
        return out;
    }

    private static void decide(Plate plate, Clash clash, Value value, List<Plate> out) {
        try {
            out.add(Settling.choose(plate, clash, value));
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            System.getLogger(Settlement.class.getName()).log(System.Logger.Level.DEBUG, "not tried", e);
        }
    }

    /** What taking it back would undo. */
    private static String words(Reversal reversal, Plate plate) {
        String own = reversal.settled().words();
        boolean isOnChart = !reversal.settled().places().isEmpty();
        if (!isOnChart || (long) plate.rows().size() * plate.positions() > MOST_CELLS) {
            return own;
        }
        List<String> words = Comparison.of(reversal.out(plate), plate).words();
        return words.isEmpty() || words.size() > MOST_STATEMENTS ? own : String.join("; ", words);
    }
}
