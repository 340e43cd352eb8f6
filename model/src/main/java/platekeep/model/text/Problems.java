package platekeep.model.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Collects what is found while one text is read. Places are offsets into its characters, turned into lines here. */
final class Problems {

    /** So many are listed; a wholly wrong file shall not fill the memory with its faults. */
    static final int MOST = 500;

    private static final Comparator<Problem> BY_PLACE =
            Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column);

    private final String file;
    private final String text;
    private final List<Problem> refused = new ArrayList<>();
    private final List<Problem> mended = new ArrayList<>();
    private int unlisted;
    private int[] lineStarts = {};

    Problems(String file, String text) {
        this.file = file;
        this.text = text;
    }

    /** Notes that the rule is broken at an offset; whether that is refused or mended is the rule's own affair. */
    void found(Rule rule, int at, String sentence) {
        add(rule, at, Optional.empty(), OptionalInt.empty(), sentence);
    }

    /** The same for a place in the picture: the row counted from the bottom, and the pleat where there is one. */
    void foundInPicture(Rule rule, int at, int rowFromBottom, OptionalInt pleat, String sentence) {
        add(rule, at, Optional.of(rowFromBottom), pleat, sentence);
    }

    private void add(Rule rule, int at, Optional<Integer> row, OptionalInt pleat, String sentence) {
        List<Problem> list = rule.reach() == Rule.Reach.MENDED ? mended : refused;
        if (list.size() >= MOST) {
            unlisted += list == refused ? 1 : 0;
            return;
        }
        int line = line(at);
        int column = at - lineStarts[line - 1] + 1;
        Optional<Integer> boxed = pleat.isPresent() ? Optional.of(pleat.getAsInt()) : Optional.empty();
        list.add(new Problem(file, line, column, row, boxed, rule.id(), sentence));
    }

    boolean refusedAny() {
        return !refused.isEmpty();
    }

    int refusedCount() {
        return refused.size() + unlisted;
    }

    /** All that the text is refused for, in order of place. */
    List<Problem> refused() {
        List<Problem> all = new ArrayList<>(refused);
        all.sort(BY_PLACE);
        if (unlisted > 0) {
            Problem last = all.get(all.size() - 1);
            all.add(new Problem(
                    file,
                    last.line(),
                    last.column(),
                    Optional.empty(),
                    Optional.empty(),
                    Rule.MORE_PROBLEMS.id(),
                    "there are " + unlisted + " more problems in this file; put these right first."));
        }
        return all;
    }

    /** All that was put right, in order of place. */
    List<Problem> mended() {
        return mended.stream().sorted(BY_PLACE).toList();
    }

    /** The line of an offset, counted from 1; a line ends with LF, CR or both. */
    private int line(int at) {
        if (lineStarts.length == 0) {
            lineStarts = findLineStarts();
        }
        int found = Arrays.binarySearch(lineStarts, at);
        return found >= 0 ? found + 1 : -found - 1;
    }

    private int[] findLineStarts() {
        int[] starts = new int[64];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == '\n' || c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
            if (ends) {
                starts = count == starts.length ? Arrays.copyOf(starts, count * 2) : starts;
                starts[count++] = i + 1;
            }
        }
        return Arrays.copyOf(starts, count);
    }
}
