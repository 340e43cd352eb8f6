package platekeep.model.find.tag;

import java.util.ArrayList;
import java.util.List;
import platekeep.model.plate.Plate;

/**
 * Tags to give to plates and to take from them.
 *
 * @param gained what each plate has afterwards
 * @param lost what none has afterwards, unless it is gained too
 */
public record Tagging(Tags gained, Tags lost) {

    public boolean isEmpty() {
        return gained.isEmpty() && lost.isEmpty();
    }

    /** A plate as it is afterwards; the same where nothing changes. */
    public Plate on(Plate plate) {
        Plate tagged = plate.edit()
                .themes(changed(plate.themes(), gained.themes(), lost.themes()))
                .uses(changed(plate.uses(), gained.uses(), lost.uses()))
                .ages(changed(plate.ages(), gained.ages(), lost.ages()))
                .designers(changed(plate.designers(), gained.designers(), lost.designers()))
                .build();
        return tagged.equals(plate) ? plate : tagged;
    }

    private static <T> List<T> changed(List<T> before, List<T> more, List<T> less) {
        List<T> after = new ArrayList<>(before);
        after.removeAll(less);
        more.stream().filter(one -> !after.contains(one)).forEach(after::add);
        return after;
    }

    /** In one line, for the history. */
    public String words() {
        List<String> parts = new ArrayList<>();
        if (!gained.isEmpty()) {
            parts.add("tagged " + String.join(", ", gained.words()));
        }
        if (!lost.isEmpty()) {
            parts.add("no longer " + String.join(", ", lost.words()));
        }
        String sentence = String.join("; ", parts);
        return sentence.isEmpty() ? "" : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
