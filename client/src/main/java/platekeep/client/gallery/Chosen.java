package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.swing.DefaultListSelectionModel;
import javax.swing.ListSelectionModel;

/**
 * Which plates are chosen, by plate and not by place: what changes underneath, sorts or narrows loses no choice. Plates
 * that are narrowed away stay chosen until she chooses anew, and are chosen again when they come back.
 */
final class Chosen {
    private final DefaultListSelectionModel model = new DefaultListSelectionModel();
    private Set<String> keys = new HashSet<>();
    private List<Card> cards = List.of();
    private boolean isShowing;

    Chosen() {
        model.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        model.addListSelectionListener(e -> {
            if (!isShowing && !e.getValueIsAdjusting()) {
                keys = new HashSet<>();
                places().forEach(place -> keys.add(key(place)));
            }
        });
    }

    /** The places, for the components. */
    ListSelectionModel model() {
        return model;
    }

    /**
     * Other cards are shown.
     *
     * @param show shows them
     */
    void during(List<Card> newCards, Runnable show) {
        isShowing = true;
        cards = newCards;
        show.run();
        model.setValueIsAdjusting(true);
        model.clearSelection();
        int last = -1;
        for (int i = 0; i < cards.size() && !keys.isEmpty(); i++) {
            if (keys.contains(key(i))) {
                model.addSelectionInterval(i, i);
                last = i;
            }
        }
        if (last >= 0) {
            model.setLeadSelectionIndex(last);
        }
        model.setValueIsAdjusting(false);
        isShowing = false;
    }

    private String key(int place) {
        return cards instanceof Cards lazy ? lazy.key(place) : cards.get(place).key();
    }

    private List<Integer> places() {
        List<Integer> places = new ArrayList<>();
        for (int i = model.getMinSelectionIndex(); i >= 0 && i <= model.getMaxSelectionIndex(); i++) {
            if (i < cards.size() && model.isSelectedIndex(i)) {
                places.add(i);
            }
        }
        return places;
    }

    /** The chosen ones that are shown, in order. */
    List<Card> cards() {
        return places().stream().map(cards::get).toList();
    }
}
