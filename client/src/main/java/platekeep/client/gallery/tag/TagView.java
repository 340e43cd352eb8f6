package platekeep.client.gallery.tag;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.find.Summary;
import platekeep.model.find.tag.Tagging;
import platekeep.model.find.tag.ThemeLine;

/** The questions about tags. */
public interface TagView {

    /**
     * Asks which tags to give and to take.
     *
     * @param plates the plates as they are
     * @param suggested themes that they may lack, the likeliest first
     * @param known all themes of the open libraries
     */
    Optional<Answer> askTags(List<Summary> plates, List<String> suggested, List<String> known);

    /** Shows the themes of a library and asks what to do with one; empty when she is done. */
    Optional<Deed> askThemes(String library, List<ThemeLine> themes);

    /**
     * Shows what would change and asks whether to go on.
     *
     * @param sentence what would happen
     * @param plates titles of the plates that would change
     */
    boolean agrees(String sentence, List<String> plates);

    /**
     * Shows versions that changed tags and asks which is to be taken back; empty when she gave it up.
     *
     * @param versions in words, the newest first
     */
    Optional<Integer> askTagVersion(String library, List<String> versions);

    /** What to give and take, and why; an empty reason is told from the tags. */
    record Answer(Tagging tagging, String reason) {}

    /** What to do with a theme. */
    sealed interface Deed {

        /** Call it otherwise, or make it one with another. */
        record Rename(String theme, String to) implements Deed {}

        /** Other words that it is also called by; the theme is put on the list where it is not there yet. */
        record Also(String theme, List<String> words) implements Deed {}

        /** Take it off the list; plates keep it. */
        record TakeOff(String theme) implements Deed {}

        /** Answers for each case. */
        default <T> T fold(
                java.util.function.Function<Rename, T> rename,
                java.util.function.Function<Also, T> also,
                java.util.function.Function<TakeOff, T> takeOff) {
            if (this instanceof Rename r) {
                return rename.apply(r);
            }
            return this instanceof Also a ? also.apply(a) : takeOff.apply((TakeOff) this);
        }
    }

    /** A plate in its library. */
    record Chosen(platekeep.client.library.Library library, Summary summary) {}

    /** Plates by library. */
    static Map<platekeep.client.library.Library, List<Summary>> byLibrary(List<Chosen> chosen) {
        Map<platekeep.client.library.Library, List<Summary>> by = new java.util.LinkedHashMap<>();
        chosen.forEach(one -> by.computeIfAbsent(one.library(), l -> new java.util.ArrayList<>())
                .add(one.summary()));
        return by;
    }
}
