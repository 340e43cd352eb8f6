package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.model.find.Found;
import platekeep.model.find.Group;
import platekeep.model.find.Index;
import platekeep.model.find.Query;
import platekeep.model.find.Summary;
import platekeep.model.plate.Age;
import platekeep.model.text.Problem;

/** The items of the open libraries and what a query leaves of them, turned into what the gallery shows. */
final class Shown {
    private final List<Stock.Item> items;
    private final Query query;
    private final Set<String> chosenLibraries;

    Shown(List<Stock.Item> items, Query query, Set<String> chosenLibraries) {
        this.items = List.copyOf(items);
        this.query = query;
        this.chosenLibraries = Set.copyOf(chosenLibraries);
    }

    List<Stock.Item> items() {
        return items;
    }

    /** The item behind a card. */
    Optional<Stock.Item> item(Card card) {
        return items.stream().filter(item -> item.key().equals(card.key())).findFirst();
    }

    GalleryState state(List<Library> open, Function<Stock.Item, List<Card.Mark>> marks, boolean isReading) {
        List<Stock.Item> here = items.stream().filter(this::isInChosenLibrary).toList();
        List<Stock.Item> plates =
                here.stream().filter(item -> item.summary().isPresent()).toList();
        Found found = Index.of(plates.stream().map(item -> item.summary().get()).toList())
                .find(query);
        List<Card> cards = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            cards.add(card(plates.get(found.at(i)), marks));
        }
        if (query.isOpen()) {
            here.stream().filter(item -> item.summary().isEmpty()).forEach(item -> cards.add(card(item, marks)));
        }
        return new GalleryState(
                cards,
                query.words(),
                facets(found, Group.THEME),
                facets(found, Group.AGE),
                facets(found, Group.SERIES),
                libraries(open),
                summary(cards.size(), here.size()),
                isReading,
                open.isEmpty());
    }

    private boolean isInChosenLibrary(Stock.Item item) {
        return chosenLibraries.isEmpty()
                || chosenLibraries.contains(item.library().name());
    }

    private static List<Facet> facets(Found found, Group group) {
        return found.counts(group).stream()
                .filter(count -> count.count() > 0 || count.chosen())
                .map(count -> new Facet(count.value(), count.count(), count.chosen()))
                .toList();
    }

    private List<Facet> libraries(List<Library> open) {
        if (open.size() < 2) {
            return List.of();
        }
        return open.stream()
                .map(library -> new Facet(
                        library.name(),
                        (int) items.stream()
                                .filter(item -> item.library() == library)
                                .count(),
                        chosenLibraries.contains(library.name())))
                .toList();
    }

    private static String summary(int shown, int all) {
        String plates = all == 1 ? "1 plate" : all + " plates";
        return shown == all ? plates : shown + " of " + plates;
    }

    private static Card card(Stock.Item item, Function<Stock.Item, List<Card.Mark>> marks) {
        Optional<Summary> summary = item.summary();
        return new Card(
                item.key(),
                item.entry().content(),
                item.plate(),
                summary.map(Summary::title).orElse(item.entry().path()),
                summary.map(Shown::facts).orElse(""),
                summary.map(Shown::size).orElseGet(() -> reasons(item.entry())),
                marks.apply(item),
                item.library().name());
    }

    private static String facts(Summary summary) {
        List<String> facts = new ArrayList<>();
        summary.number().ifPresent(facts::add);
        if (!summary.ages().isEmpty()) {
            facts.add(summary.ages().stream().map(Age::word).collect(Collectors.joining(", ")));
        }
        return String.join("  ·  ", facts);
    }

    private static String size(Summary summary) {
        return summary.pleats() == 0 ? "no chart yet" : summary.pleats() + " pleats, " + summary.rows() + " rows";
    }

    /** Why a file is damaged, all reasons, a sentence a line. */
    static String reasons(Entry entry) {
        return entry.fold(
                good -> "",
                damaged -> damaged.problems().stream().map(Problem::sentence).collect(Collectors.joining("\n")));
    }
}
