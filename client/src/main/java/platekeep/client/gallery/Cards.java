package platekeep.client.gallery;

import java.util.AbstractList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;
import platekeep.model.find.Found;
import platekeep.model.find.Summary;

/** An answer as cards, each made when it is looked at: an answer of ten thousand plates costs no more than one of ten. */
final class Cards extends AbstractList<Card> implements RandomAccess {
    private static final int MOST_KEPT = 2000;

    private final Held held;
    private final String words;
    private final Found found;
    private final List<Stock.Item> damaged;
    private final Map<Integer, Card> made = new HashMap<>();

    /**
     * @param words that were looked for
     */
    Cards(Held held, String words, Found found, List<Stock.Item> damaged) {
        this.held = held;
        this.words = words;
        this.found = found;
        this.damaged = damaged;
    }

    @Override
    public int size() {
        return found.size() + damaged.size();
    }

    @Override
    public Card get(int index) {
        if (made.size() > MOST_KEPT) {
            made.clear();
        }
        return made.computeIfAbsent(index, this::card);
    }

    private Card card(int index) {
        if (index >= found.size()) {
            Stock.Item item = damaged.get(index - found.size());
            return Card.damaged(item, held.names().of(item.library()));
        }
        Summary summary = held.index().at(found.at(index));
        return Card.of(held.items().get(summary.key()), summary, words);
    }

    /** The key of a card, without making it. */
    String key(int index) {
        return index >= found.size()
                ? damaged.get(index - found.size()).key()
                : held.index().at(found.at(index)).key();
    }
}
