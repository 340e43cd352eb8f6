package platekeep.client.gallery;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import platekeep.client.gallery.narrow.Section;
import platekeep.client.room.Latest;
import platekeep.client.room.Workroom;
import platekeep.model.find.Found;
import platekeep.model.find.Group;
import platekeep.model.find.Order;
import platekeep.model.find.Query;
import platekeep.model.find.Range;
import platekeep.model.find.typed.AgeTyped;

/**
 * What is looked for, and the answer to it. Questions are answered in the background, the newest only: an answer to an
 * older one is never shown after a newer question.
 */
public final class Narrowing {
    private static final int MOST_SLIPS = 4;

    private final Workroom room;
    private final GalleryView view;
    private final Supplier<Holdings> holdings;
    private final SavedSearches saved;
    private final Latest<Answer> asking;
    private Query query = Query.ALL;
    private Order order = Order.BEST;
    private Answer answer =
            new Answer(Held.NOTHING, Query.ALL, Held.NOTHING.index().find(Query.ALL));

    /** What was asked of what, and what came of it. */
    private record Answer(Held held, Query query, Found found) {}

    Narrowing(Workroom room, GalleryView view, Supplier<Holdings> holdings) {
        this.room = room;
        this.view = view;
        this.holdings = holdings;
        this.saved = new SavedSearches(room.settings());
        this.asking = Latest.answers(room);
    }

    Held held() {
        return answer.held();
    }

    Query query() {
        return query;
    }

    /** Looks for other words. */
    public void words(String words) {
        if (!words.equals(query.words())) {
            ask(query.withWords(words));
        }
    }

    /** Asks for a value of a group, or no longer. */
    public void turn(Group group, String value) {
        ask(query.turn(group, value));
    }

    /** Leaves a group open again. */
    public void open(Group group) {
        ask(query.without(group));
    }

    /** Lets plates need one of the values that are chosen instead of all, or the other way round. */
    public void turnMatch(Group group) {
        ask(query.turnMatch(group));
    }

    /**
     * Takes in what was typed for a group: an age as {@code 18 months} or {@code 2 years}, a range as {@code 60-90} or
     * {@code up to 90}.
     *
     * @return what is wrong with it; empty where nothing is
     */
    public Optional<String> typed(Group group, String text) {
        if (group == Group.AGE) {
            Optional<List<String>> ages = AgeTyped.ages(text);
            ages.ifPresent(words -> ask(query.with(Group.AGE, Set.copyOf(words))));
            return ages.isPresent() ? Optional.empty() : Optional.of("Type an age as 18 months or 2 years.");
        }
        Optional<Range> range = Range.typed(text);
        range.ifPresent(r -> ask(query.with(group, Set.of(r.text()))));
        return range.isPresent() ? Optional.empty() : Optional.of("Type a range as 60-90, up to 90, or from 60.");
    }

    /** Asks for everything again. */
    public void clear() {
        ask(Query.ALL);
    }

    /** Sorts by a column; once more, the other way round. */
    public void sortBy(Order.By by) {
        order = new Order(
                by, order.by() == by && by != Order.By.BEST ? order.way().other() : Order.Way.UP);
        ask(query);
    }

    /** Names under which searches are kept. */
    public List<String> savedNames() {
        return saved.names();
    }

    /** Keeps what is asked for under a name. */
    public void save(String name) {
        saved.put(name, query);
        room.remember();
        show();
    }

    /** Asks again for what was kept under a name. */
    public void reopen(String name) {
        saved.get(name)
                .ifPresentOrElse(
                        this::ask,
                        () -> room.front().trouble("The search \"" + name + "\" cannot be read. Save it anew."));
    }

    /** Calls what was kept under one name by another. */
    public void rename(String name, String newName) {
        saved.rename(name, newName);
        room.remember();
        show();
    }

    /** Forgets what was kept under a name. */
    public void forget(String name) {
        saved.remove(name);
        room.remember();
        show();
    }

    /** Libraries were opened or closed: those that are closed are asked for no longer. */
    void librariesAre(List<String> names) {
        Set<String> still = new HashSet<>(query.chosen(Group.LIBRARY));
        still.retainAll(names);
        query = query.with(Group.LIBRARY, still);
    }

    /** Something is new: asks the same again. */
    void again() {
        ask(query);
    }

    private void ask(Query newQuery) {
        query = newQuery;
        Held held = holdings.get().held();
        Query asked = query;
        Order wanted = order;
        asking.ask(progress -> new Answer(held, asked, held.index().find(asked, wanted)), came -> {
            answer = came;
            show();
        });
    }

    void show() {
        Held held = answer.held();
        Found found = answer.found();
        boolean isOpen = answer.query().isOpen();
        Cards cards = new Cards(held, answer.query().words(), found, isOpen ? held.damaged() : List.of());
        view.show(new GalleryState(
                cards,
                query,
                order,
                Section.of(found, query, room.open().size() > 1),
                summary(cards.size(), held.items().size()),
                hint(found),
                saved.names(),
                room.isOpening() || holdings.get().isReading(),
                room.open().isEmpty() && !room.isOpening()));
        if (held == holdings.get().held()) {
            view.whenSeen(holdings.get()::seen);
        }
    }

    private static String summary(int shown, int all) {
        String plates = all == 1 ? "1 plate" : all + " plates";
        return shown == all ? plates : shown + " of " + plates;
    }

    private static String hint(Found found) {
        Stream<String> slips = found.meant().entrySet().stream()
                .map(slip -> "No plate says \"" + slip.getKey() + "\"; shown for "
                        + slip.getValue().stream().limit(MOST_SLIPS).collect(Collectors.joining(", "))
                        + (slip.getValue().size() > MOST_SLIPS ? " …" : "") + ".");
        Stream<String> ages = found.ages().entrySet().stream()
                .map(age -> age.getValue().isEmpty()
                        ? "No plate is made for " + age.getKey() + "."
                        : "For " + age.getKey() + ": plates for " + String.join(" or ", age.getValue()) + ".");
        Stream<String> times = found.times().stream().map(Narrowing::hint);
        return Stream.of(ages, times, slips).flatMap(all -> all).collect(Collectors.joining(" "));
    }

    private static String hint(Found.When when) {
        String words = when.period().words();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ": plates with a version made then"
                + (when.said() ? ", and plates that say \"" + when.typed() + "\"." : ".");
    }
}
