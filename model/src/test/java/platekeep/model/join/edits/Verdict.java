package platekeep.model.join.edits;

import java.util.ArrayList;
import java.util.List;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/** What a joiner's answer is worth. */
public enum Verdict {
    /** Byte for byte what the edits determine. */
    RIGHT("right"),
    /** It declared a clash where there is none. */
    NEEDLESS("needless clash"),
    /** Its plate is wrong, and no clash says so. */
    SILENT("wrong in silence"),
    /** It did not declare a clash that is there. */
    MISSED("missed clash"),
    /** It declared the clash, but not with its own place, values and what stands. */
    EXTENT("wrong extent"),
    /** It failed on plates that are in order. */
    TROUBLE("trouble");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Judges a joiner's answer to a case, and the same with the sides exchanged. */
    static Answer of(Case test, Joiner joiner) {
        Answer one = oneWay(test, joiner);
        return one.verdict() == RIGHT ? oneWay(test.turned(), joiner) : one;
    }

    /**
     * @param got what the joiner gave; the plate before where it gave none
     * @param why one line
     */
    record Answer(Verdict verdict, Plate got, String why) {}

    private static Answer oneWay(Case test, Joiner joiner) {
        Plate got;
        try {
            got = joiner.join(test.base(), test.mine(), test.theirs());
        } catch (Joiner.Stopped stopped) {
            boolean real = test.want().hasClashes() || !test.declared().isEmpty();
            return new Answer(real ? EXTENT : NEEDLESS, test.base(), "stopped: " + stopped.getMessage());
        } catch (RuntimeException failed) {
            return new Answer(TROUBLE, test.base(), failed.toString());
        }
        if (!test.declared().isEmpty()) {
            boolean told = got.clashes().stream().anyMatch(c -> test.declared().contains(c.what()));
            return new Answer(told ? RIGHT : MISSED, got, "one of " + test.declared() + " was to be declared");
        }
        if (PlateText.write(got).equals(PlateText.write(test.want()))) {
            return new Answer(RIGHT, got, "");
        }
        return new Answer(compare(test.want().clashes(), got.clashes()), got, difference(test.want(), got));
    }

    private static Verdict compare(List<Clash> want, List<Clash> got) {
        if (want.equals(got)) {
            return want.isEmpty() ? SILENT : EXTENT;
        }
        List<Clash.What> missing = whats(want);
        whats(got).forEach(missing::remove);
        List<Clash.What> more = whats(got);
        whats(want).forEach(more::remove);
        if (!missing.isEmpty()) {
            return MISSED;
        }
        return more.isEmpty() ? EXTENT : NEEDLESS;
    }

    private static List<Clash.What> whats(List<Clash> clashes) {
        return new ArrayList<>(clashes.stream().map(Clash::what).toList());
    }

    /** The first line that differs. */
    private static String difference(Plate want, Plate got) {
        String[] a = PlateText.write(want).split("\n");
        String[] b = PlateText.write(got).split("\n");
        for (int i = 0; i < Math.min(a.length, b.length); i++) {
            if (!a[i].equals(b[i])) {
                return "want " + a[i].strip() + " got " + b[i].strip();
            }
        }
        return "the one goes on where the other ends";
    }
}
