package platekeep.client.plate.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Unknown;
import platekeep.model.stitch.RowIds;

/** Saying something about a place of a plate, answering it and ticking it off. */
public final class RemarkEdits {
    private RemarkEdits() {}

    /** Who says what on which day. */
    public record Said(String by, LocalDate on, String text) {}

    /**
     * Pins a remark to a stretch of a row.
     *
     * @param first its left end
     * @param last its right end, included; in the same row
     */
    public static Plate say(Plate plate, Said said, Spot first, Spot last, RandomGenerator random) {
        return add(
                plate,
                said,
                plate.rows().get(first.row()).id(),
                Optional.of(plate.from() + first.index()),
                Optional.of(plate.from() + last.index()),
                random);
    }

    /** Answers a remark: another one at the same place. */
    public static Plate answer(Plate plate, Said said, Remark to, RandomGenerator random) {
        return add(plate, said, to.row(), to.from(), to.to(), random);
    }

    private static Plate add(
            Plate plate,
            Said said,
            Optional<RowId> row,
            Optional<Integer> from,
            Optional<Integer> to,
            RandomGenerator random) {
        Set<RowId> taken = new HashSet<>();
        plate.remarks().forEach(remark -> taken.add(remark.id()));
        List<Remark> remarks = new ArrayList<>(plate.remarks());
        remarks.add(new Remark(
                RowIds.fresh(taken, random), row, from, to, said.by(), said.on(), said.text(), false, Unknown.NONE));
        return plate.edit().remarks(remarks).build();
    }

    /** Ticks a remark off, or opens it again. */
    public static Plate tick(Plate plate, RowId id) {
        return plate.edit()
                .remarks(plate.remarks().stream()
                        .map(r -> r.id().equals(id) ? r.withDone(!r.done()) : r)
                        .toList())
                .build();
    }

    /** Takes a remark out. */
    public static Plate remove(Plate plate, RowId id) {
        return plate.edit()
                .remarks(
                        plate.remarks().stream().filter(r -> !r.id().equals(id)).toList())
                .build();
    }
}
