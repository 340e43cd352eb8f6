package platekeep.client.gallery;

import java.util.List;

/**
 * What the gallery shows.
 *
 * @param cards in order
 * @param words what is looked for
 * @param themes themes to narrow down by, likewise ages, series and libraries; no libraries where only one is open
 * @param summary how many plates there are, in words
 * @param isReading whether libraries are being read
 * @param isRoomEmpty whether no library is open at all
 */
public record GalleryState(
        List<Card> cards,
        String words,
        List<Facet> themes,
        List<Facet> ages,
        List<Facet> series,
        List<Facet> libraries,
        String summary,
        boolean isReading,
        boolean isRoomEmpty) {

    public GalleryState {
        cards = List.copyOf(cards);
        themes = List.copyOf(themes);
        ages = List.copyOf(ages);
        series = List.copyOf(series);
        libraries = List.copyOf(libraries);
    }

    /** Whether anything is asked for, so that it can be cleared. */
    public boolean isNarrowed() {
        return !words.isBlank()
                || List.of(themes, ages, series, libraries).stream()
                        .flatMap(List::stream)
                        .anyMatch(Facet::chosen);
    }
}
