package platekeep.client.git.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.eclipse.jgit.internal.storage.file.ObjectDirectory;
import org.eclipse.jgit.internal.storage.file.Pack;
import org.eclipse.jgit.internal.storage.file.PackIndex;
import org.eclipse.jgit.lib.ObjectDatabase;
import org.eclipse.jgit.lib.ObjectId;

/**
 * The order in which contents lie in packs. There a text is stored as what it differs in from another one, which differs
 * from a third, up to fifty of them; read in order, that other one was read just before and is still at hand.
 */
final class PackOrder {
    private static final int OFFSET_BITS = 48;

    private PackOrder() {}

    /** The numbers of contents in that order, first those in no pack. */
    static int[] of(ObjectDatabase objects, int count, IntFunction<ObjectId> contents) throws IOException {
        if (!(objects instanceof ObjectDirectory directory)) {
            return IntStream.range(0, count).toArray();
        }
        List<PackIndex> packs = new ArrayList<>();
        for (Pack pack : directory.getPacks()) {
            packs.add(pack.getIndex());
        }
        long[] places = new long[count];
        for (int i = 0; i < count; i++) {
            places[i] = place(packs, contents.apply(i));
        }
        Integer[] order = new Integer[count];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingLong((Integer i) -> places[i]));
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    private static long place(List<PackIndex> packs, ObjectId content) {
        for (int n = 0; n < packs.size(); n++) {
            long offset = packs.get(n).findOffset(content);
            if (offset >= 0) {
                return (long) n << OFFSET_BITS | offset;
            }
        }
        return -1;
    }
}
