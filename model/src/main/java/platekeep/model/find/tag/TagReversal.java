package platekeep.model.find.tag;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/** Takes a change of tags back on what plates and the library are now; whatever else was changed since stays. */
public final class TagReversal {
    private TagReversal() {}

    /** Whether a plate has other tags afterwards, and nothing else differs. */
    public static boolean isOnlyTags(Plate before, Plate after) {
        return !before.equals(after)
                && after.edit()
                        .themes(before.themes())
                        .ages(before.ages())
                        .uses(before.uses())
                        .designers(before.designers())
                        .build()
                        .equals(before);
    }

    /**
     * A plate with the tags that it lost given back and those that it gained taken off; the same where that is so
     * already. Empty where some of that was changed once more since, so that there is nothing to be taken back cleanly.
     *
     * @param before the plate before the change of tags
     * @param after the plate as that change left it
     * @param now the plate as it is
     */
    public static Optional<Plate> on(Plate before, Plate after, Plate now) {
        Optional<List<String>> themes = back(before.themes(), after.themes(), now.themes());
        Optional<List<Age>> ages = back(before.ages(), after.ages(), now.ages());
        Optional<List<String>> uses = back(before.uses(), after.uses(), now.uses());
        Optional<List<String>> designers = back(before.designers(), after.designers(), now.designers());
        if (themes.isEmpty() || ages.isEmpty() || uses.isEmpty() || designers.isEmpty()) {
            return Optional.empty();
        }
        Plate back = now.edit()
                .themes(themes.get())
                .ages(ages.get())
                .uses(uses.get())
                .designers(designers.get())
                .build();
        return Optional.of(back.equals(now) ? now : back);
    }

    private static <T> Optional<List<T>> back(List<T> before, List<T> after, List<T> now) {
        if (now.equals(after)) {
            return Optional.of(before);
        }
        List<T> gained = less(after, before);
        List<T> lost = less(before, after);
        boolean isAsLeft = now.containsAll(gained) && lost.stream().noneMatch(now::contains);
        boolean isBackAlready = now.containsAll(lost) && gained.stream().noneMatch(now::contains);
        if (isBackAlready) {
            return Optional.of(now);
        }
        return isAsLeft ? Optional.of(more(less(now, gained), lost)) : Optional.empty();
    }

    /**
     * What the library says with its list of themes as it was before; a theme that was changed once more since keeps
     * that.
     */
    public static LibraryFacts on(LibraryFacts before, LibraryFacts after, LibraryFacts now) {
        Map<String, List<String>> themes = new LinkedHashMap<>(now.themes());
        Set<String> all = new LinkedHashSet<>(before.themes().keySet());
        all.addAll(after.themes().keySet());
        for (String theme : all) {
            List<String> was = before.themes().get(theme);
            List<String> became = after.themes().get(theme);
            List<String> is = themes.get(theme);
            boolean isAsLeft = is == null ? became == null : is.equals(became);
            if (isAsLeft && was == null) {
                themes.remove(theme);
            } else if (isAsLeft) {
                themes.put(theme, was);
            } else if (is != null && became != null) {
                List<String> words = was == null ? List.of() : was;
                themes.put(theme, more(less(is, less(became, words)), less(words, became)));
            }
        }
        return themes.equals(now.themes()) ? now : now.withThemes(themes);
    }

    private static <T> List<T> less(List<T> some, List<T> gone) {
        return some.stream().filter(one -> !gone.contains(one)).toList();
    }

    private static <T> List<T> more(List<T> some, List<T> come) {
        List<T> all = new ArrayList<>(some);
        come.stream().filter(one -> !all.contains(one)).forEach(all::add);
        return all;
    }
}
