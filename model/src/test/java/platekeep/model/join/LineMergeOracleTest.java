package platekeep.model.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.eclipse.jgit.diff.HistogramDiff;
import org.eclipse.jgit.diff.RawText;
import org.eclipse.jgit.diff.RawTextComparator;
import org.eclipse.jgit.merge.MergeAlgorithm;
import org.eclipse.jgit.merge.MergeFormatter;
import org.eclipse.jgit.merge.MergeResult;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.text.PlateText;

/**
 * Where edits lie in rows far apart, merging the text line by line has the right answer, and the join must give it byte for
 * byte. The oracle is JGit's three-way merge over its histogram diff.
 */
class LineMergeOracleTest {
    private static final int UNCHANGED_BETWEEN = 3;

    @Property(tries = 300, seed = "20261125")
    void editsInRowsFarApartJoinAsTheirLinesMerge(@ForAll long seed, @ForAll Charted.Ids ids) throws IOException {
        Random random = new Random(seed);
        Plate base = Charted.plate(random, 20 + random.nextInt(20), 20, ids, Charted.Ground.FULL);
        List<Row> mine = new ArrayList<>(base.rows());
        List<Row> theirs = new ArrayList<>(base.rows());
        int at = base.rows().size() - 1 - UNCHANGED_BETWEEN;
        while (at > 0) {
            boolean isMine = random.nextBoolean();
            edit(random, base, isMine ? mine : theirs, at, isMine ? Charted.Hand.MINE : Charted.Hand.THEIRS);
            at -= 1 + UNCHANGED_BETWEEN + random.nextInt(4);
        }
        Plate a = base.edit().rows(mine).build();
        Plate b = base.edit().rows(theirs).build();

        Plate joined = Join.of(Optional.of(base), a, b, Hands.UNKNOWN).plate();

        assertThat(PlateText.write(joined)).isEqualTo(merged(base, a, b));
    }

    /** One edit at a row; rows are edited from the bottom, so that the indexes above stay as they are. */
    private static void edit(Random random, Plate base, List<Row> rows, int at, Charted.Hand hand) {
        switch (random.nextInt(3)) {
            case 0 -> rows.set(at, Charted.recoloured(random, rows.get(at)));
            case 1 -> rows.add(at, Charted.fresh(random, base, hand, at, Charted.Ground.FULL));
            default -> rows.remove(at);
        }
    }

    private static String merged(Plate base, Plate a, Plate b) throws IOException {
        MergeResult<RawText> result =
                new MergeAlgorithm(new HistogramDiff()).merge(RawTextComparator.DEFAULT, text(base), text(a), text(b));
        assertThat(result.containsConflicts()).isFalse();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new MergeFormatter().formatMerge(out, result, List.of("base", "mine", "theirs"), StandardCharsets.UTF_8);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static RawText text(Plate plate) {
        return new RawText(PlateText.bytes(plate));
    }
}
