package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.client.library.Entry;
import platekeep.client.ui.Dates;
import platekeep.model.find.Saying;
import platekeep.model.find.Spots;
import platekeep.model.find.Summary;
import platekeep.model.find.words.Words;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;
import platekeep.model.text.Problem;

/**
 * One plate of the gallery as it is shown.
 *
 * @param key tells it from all other cards
 * @param content the id of its content, under which its picture is kept
 * @param plate what to draw; empty for a file that is damaged
 * @param title its title, or the file's name
 * @param facts the ages in few words
 * @param size number, pleats and rows, or why the file is damaged
 * @param marks what needs to be known at a glance
 * @param library the name of its library
 * @param found what was said of versions, with words in it that were looked for and stand nowhere else; often empty
 * @param summary what it is found by; empty for a file that is damaged
 */
public record Card(
        String key,
        String content,
        Optional<Plate> plate,
        String title,
        String facts,
        String size,
        List<Mark> marks,
        String library,
        List<Saying> found,
        Optional<Summary> summary) {

    private static final int FAR = 18;
    private static final int BEFORE = 8;
    private static final int SHORTEST = 3;

    /** What needs to be known at a glance. */
    public enum Mark {
        CLASH("clash"),
        ERRORS("errors"),
        DRAFT("draft"),
        UNSENT("not sent"),
        REMARKS("remarks"),
        DAMAGED("damaged");

        private final String word;

        Mark(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Card {
        marks = List.copyOf(marks);
        found = List.copyOf(found);
    }

    /**
     * The card of a plate.
     *
     * @param words that were looked for
     */
    static Card of(Stock.Item item, Summary summary, String words) {
        return new Card(
                item.key(),
                item.entry().content(),
                item.plate(),
                summary.title(),
                ages(summary.ages()),
                size(summary),
                marks(summary),
                summary.library(),
                Spots.inVersions(summary, words).stream()
                        .map(saying -> around(saying, words))
                        .toList(),
                Optional.of(summary));
    }

    /** The card of a damaged file. */
    static Card damaged(Stock.Item item, String library) {
        return new Card(
                item.key(),
                item.entry().content(),
                Optional.empty(),
                item.entry().path(),
                "",
                reasons(item.entry()),
                List.of(Mark.DAMAGED),
                library,
                List.of(),
                Optional.empty());
    }

    /** The same from shortly before a word that was looked for on, where that stands far behind. */
    private static Saying around(Saying saying, String words) {
        String text = saying.text().lines().findFirst().orElse("");
        int at = Words.of(words).stream()
                .mapToInt(word -> place(text.toLowerCase(Locale.ROOT), word))
                .filter(place -> place >= 0)
                .min()
                .orElse(0);
        int from = at < FAR ? 0 : text.lastIndexOf(' ', at - BEFORE) + 1;
        return new Saying(saying.kind(), (from > 0 ? "… " : "") + text.substring(from), saying.on());
    }

    /** Where a word begins, or what may be another form of it; below 0 where it does not stand there. */
    private static int place(String text, String word) {
        for (int length = word.length(); length >= Math.min(SHORTEST, word.length()); length--) {
            int at = (" " + text).indexOf(" " + word.substring(0, length));
            if (at >= 0) {
                return at;
            }
        }
        return -1;
    }

    /** Which versions it was found by, in words; empty where the plate itself has all words. */
    String foundWords() {
        return found.stream().map(Card::words).collect(Collectors.joining("; "));
    }

    private static String words(Saying saying) {
        String text = saying.text().lines().findFirst().orElse("");
        return saying.kind() == Saying.Kind.NAME
                ? "\"" + text + "\", " + Dates.shortDay(saying.on())
                : Dates.shortDay(saying.on()) + ": " + text;
    }

    private static String size(Summary summary) {
        String size =
                summary.pleats() == 0 ? "no chart yet" : summary.pleats() + " pleats, " + summary.rows() + " rows";
        return summary.number().map(number -> number + "  ·  " + size).orElse(size);
    }

    /** Ages in few words: three and more that follow each other as from one to another. */
    static String ages(List<Age> ages) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < ages.size(); i++) {
            int last = i;
            while (last + 1 < ages.size()
                    && ages.get(last + 1).ordinal() == ages.get(last).ordinal() + 1) {
                last++;
            }
            if (last - i > 1) {
                words.add(ages.get(i).word() + " to " + ages.get(last).word());
                i = last;
            } else {
                words.add(ages.get(i).word());
            }
        }
        return String.join(", ", words);
    }

    private static List<Mark> marks(Summary summary) {
        List<Mark> marks = new ArrayList<>();
        for (platekeep.model.find.Mark mark : summary.marks()) {
            switch (mark) {
                case CLASH -> marks.add(Mark.CLASH);
                case ERRORS -> marks.add(Mark.ERRORS);
                case DRAFT -> marks.add(Mark.DRAFT);
                case UNSENT -> marks.add(Mark.UNSENT);
                case REMARKS -> marks.add(Mark.REMARKS);
                default -> {
                    // that it has no chart is told as its size
                }
            }
        }
        if (marks.contains(Mark.CLASH)) {
            // an open clash is an error of the check by itself
            marks.remove(Mark.ERRORS);
        }
        return marks;
    }

    /** Why a file is damaged, all reasons, a sentence a line. */
    static String reasons(Entry entry) {
        return entry.fold(
                good -> "",
                damaged -> damaged.problems().stream().map(Problem::sentence).collect(Collectors.joining("\n")));
    }
}
