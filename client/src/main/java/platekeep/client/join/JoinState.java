package platekeep.client.join;

import java.util.List;
import java.util.Optional;
import platekeep.model.draw.Spot;

/**
 * What the Join screen shows.
 *
 * @param libraries the names of the open libraries
 * @param library the index of the one that is shown; -1 when none is
 * @param plates the plates with something to decide or to look at, those that came first
 * @param chosen the index of the one that is worked on; -1 for none
 * @param board that plate; empty for none
 * @param painting what is painted with, and where the keys paint
 * @param nothing what is said where there is no plate
 */
record JoinState(
        List<String> libraries,
        int library,
        List<Waiting> plates,
        int chosen,
        Optional<Board> board,
        JoinPainting.State painting,
        String nothing) {

    static final JoinState NOTHING = new JoinState(
            List.of(), -1, List.of(), -1, Optional.empty(), new JoinPainting.State('.', new Spot(0, 0)), "");

    /**
     * A plate in the list.
     *
     * @param open how many clashes are open yet
     * @param total of how many
     * @param origin whether it came from the partner or stands in the library
     */
    record Waiting(String plateId, String title, int open, int total, Case.Origin origin) {
        @Override
        public String toString() {
            return title
                    + (total == 0 ? " · nothing to decide" : open == 0 ? " · all decided" : " · " + open + " open");
        }
    }

    JoinState {
        libraries = List.copyOf(libraries);
        plates = List.copyOf(plates);
    }

    /** Whether what came from the partner waits to be saved. */
    boolean isArriving() {
        return chosen >= 0 && plates.get(chosen).origin() == Case.Origin.ARRIVED;
    }

    /** Clashes that are open in all plates that would be saved together with the one that is worked on. */
    int openInVersion() {
        if (chosen < 0) {
            return 0;
        }
        return isArriving()
                ? plates.stream()
                        .filter(p -> p.origin() == Case.Origin.ARRIVED)
                        .mapToInt(Waiting::open)
                        .sum()
                : plates.get(chosen).open();
    }
}
