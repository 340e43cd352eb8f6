package platekeep.model.find.tag;

import java.util.ArrayList;
import java.util.List;
import platekeep.model.plate.Age;

/** Some tags: themes, ages, what a plate is for, designers. */
public record Tags(List<String> themes, List<Age> ages, List<String> uses, List<String> designers) {

    public static final Tags NONE = new Tags(List.of(), List.of(), List.of(), List.of());

    public Tags {
        themes = List.copyOf(themes);
        ages = List.copyOf(ages);
        uses = List.copyOf(uses);
        designers = List.copyOf(designers);
    }

    public boolean isEmpty() {
        return words().isEmpty();
    }

    /** All of them as words. */
    public List<String> words() {
        List<String> words = new ArrayList<>(themes);
        ages.forEach(age -> words.add(age.word()));
        words.addAll(uses);
        words.addAll(designers);
        return words;
    }
}
