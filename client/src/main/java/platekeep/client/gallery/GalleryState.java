package platekeep.client.gallery;

import java.util.List;
import platekeep.client.gallery.narrow.Section;
import platekeep.model.find.Order;
import platekeep.model.find.Query;

/**
 * What the gallery shows.
 *
 * @param cards in order, each made when it is looked at
 * @param query what is looked for
 * @param order in which they are given
 * @param sections what to narrow down by; no libraries where only one is open
 * @param summary how many plates there are, in words
 * @param hint what to know of the answer, such as slips of typing that were taken as such; often empty
 * @param saved names of searches that were kept
 * @param isReading whether libraries are being read of which not everything can be seen yet
 * @param isRoomEmpty whether no library is open at all
 */
public record GalleryState(
        List<Card> cards,
        Query query,
        Order order,
        List<Section> sections,
        String summary,
        String hint,
        List<String> saved,
        boolean isReading,
        boolean isRoomEmpty) {

    public GalleryState {
        sections = List.copyOf(sections);
        saved = List.copyOf(saved);
    }

    /** Whether anything is asked for, so that it can be cleared. */
    public boolean isNarrowed() {
        return !query.isOpen();
    }
}
