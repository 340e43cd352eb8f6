package platekeep.model.find;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import platekeep.model.find.words.Terms;

/**
 * Plates made ready to be asked for. Unchangeable, for any number of threads: {@link #with} gives a changed one at the
 * cost of what changed, and answers that were given before stay as they are.
 *
 * <p>Words go through a dictionary to the plates that hold them; everything else to narrow down by is a set of plates
 * as bits, so that a count is the size of a cut of two sets. A query on ten thousand plates costs well below a
 * millisecond, counts included; see the benchmark beside the tests.
 */
public final class Index {
    private final List<Summary> summaries;
    private final Map<String, Integer> byKey;
    private final Bits live;
    private final Facets facets;
    private final Map<Order, int[]> orders;
    private Optional<Terms> terms;

    private Index(
            List<Summary> summaries,
            Map<String, Integer> byKey,
            Bits live,
            Facets facets,
            Map<Order, int[]> orders,
            Optional<Terms> terms) {
        this.summaries = summaries;
        this.byKey = byKey;
        this.live = live;
        this.facets = facets;
        this.orders = orders;
        this.terms = terms;
    }

    /** An index with nothing in it. */
    public static Index empty() {
        return of(List.of());
    }

    /**
     * The index of some plates, each with a key of its own. Its dictionary is made when a word is first looked for, or
     * by {@link #ready}.
     */
    public static Index of(Collection<Summary> plates) {
        List<Summary> summaries = List.copyOf(plates);
        Map<String, Integer> byKey = new HashMap<>();
        Bits live = new Bits(summaries.size());
        for (int i = 0; i < summaries.size(); i++) {
            if (byKey.put(summaries.get(i).key(), i) != null) {
                throw new IllegalArgumentException(
                        "two plates with the key " + summaries.get(i).key());
            }
            live.add(i);
        }
        return new Index(summaries, byKey, live, Facets.of(summaries), new HashMap<>(), Optional.empty());
    }

    /** Makes the dictionary and the usual order now, so that the first word that is typed need not wait for them. */
    public Index ready() {
        terms();
        inOrder(Order.BEST);
        return this;
    }

    /**
     * The same index with some plates changed, put in or taken out. Linear in what changed and, with a very small
     * factor, in the whole.
     *
     * @param changed in the place of those with the same keys
     * @param gone keys of plates that are no more; what is not there is passed over
     */
    public Index with(Collection<Summary> changed, Collection<String> gone) {
        Map<Integer, Summary> before = new TreeMap<>();
        Map<Integer, Summary> come = new TreeMap<>();
        List<Summary> now = new ArrayList<>(summaries);
        Map<String, Integer> keys = new HashMap<>(byKey);
        Bits there = live.copy();
        for (String key : gone) {
            Integer at = keys.remove(key);
            if (at != null) {
                before.put(at, summaries.get(at));
                there.remove(at);
            }
        }
        for (Summary summary : changed) {
            Integer at = keys.get(summary.key());
            if (at == null) {
                at = now.size();
                now.add(summary);
                keys.put(summary.key(), at);
            } else {
                if (at < summaries.size()) {
                    before.put(at, summaries.get(at));
                }
                now.set(at, summary);
            }
            come.put(at, summary);
            there.add(at);
        }
        if (before.size() + come.size() > summaries.size() / 2) {
            return of(keys.values().stream().sorted().map(now::get).toList());
        }
        Index next = new Index(
                List.copyOf(now),
                keys,
                there,
                facets.with(now, come, before),
                new HashMap<>(),
                changedTerms(come, before));
        knownOrders().forEach((order, old) -> next.orders.put(order, next.inserted(old, order, come, before)));
        return next;
    }

    private synchronized Map<Order, int[]> knownOrders() {
        return Map.copyOf(orders);
    }

    private synchronized Optional<Terms> changedTerms(Map<Integer, Summary> come, Map<Integer, Summary> before) {
        return terms.map(known -> known.with(words(come), words(before)));
    }

    private static Map<Integer, Map<String, Integer>> words(Map<Integer, Summary> some) {
        Map<Integer, Map<String, Integer>> words = new TreeMap<>();
        some.forEach((at, summary) -> words.put(at, SummaryWords.of(summary)));
        return words;
    }

    private int[] inserted(int[] old, Order order, Map<Integer, Summary> come, Map<Integer, Summary> before) {
        Comparator<Summary> comparator = order.comparator();
        int[] fresh = come.keySet().stream()
                .filter(live::has)
                .sorted(Comparator.comparing(summaries::get, comparator))
                .mapToInt(Integer::intValue)
                .toArray();
        int[] out = new int[byKey.size()];
        int n = 0;
        int next = 0;
        for (int at : old) {
            if (before.containsKey(at)) {
                continue;
            }
            while (next < fresh.length && comparator.compare(summaries.get(fresh[next]), summaries.get(at)) < 0) {
                out[n++] = fresh[next++];
            }
            out[n++] = at;
        }
        while (next < fresh.length) {
            out[n++] = fresh[next++];
        }
        return out;
    }

    /** How many plates there are. */
    public int size() {
        return byKey.size();
    }

    /** The plate at a place that an answer gave. */
    public Summary at(int place) {
        return summaries.get(place);
    }

    /** The plate with a key. */
    public Optional<Summary> get(String key) {
        return Optional.ofNullable(byKey.get(key)).map(summaries::get);
    }

    /** All plates, in no order that means anything. */
    public List<Summary> all() {
        return byKey.values().stream().sorted().map(summaries::get).toList();
    }

    /** The plates that answer a query, the best first, and the counts. */
    public Found find(Query query) {
        return find(query, Order.BEST);
    }

    /** The plates that answer a query in some order, and the counts. */
    public Found find(Query query, Order order) {
        return new Finding(this, query).found(order);
    }

    List<Summary> summaries() {
        return summaries;
    }

    Bits live() {
        return live;
    }

    Facets facets() {
        return facets;
    }

    synchronized Terms terms() {
        if (terms.isEmpty()) {
            Map<Integer, Summary> there = new TreeMap<>();
            byKey.values().forEach(at -> there.put(at, summaries.get(at)));
            terms = Optional.of(Terms.of(words(there)));
        }
        return terms.get();
    }

    /** The places of all plates in an order. */
    synchronized int[] inOrder(Order order) {
        return orders.computeIfAbsent(
                order,
                o -> byKey.values().stream()
                        .sorted(Comparator.comparing(summaries::get, o.comparator()))
                        .mapToInt(Integer::intValue)
                        .toArray());
    }
}
