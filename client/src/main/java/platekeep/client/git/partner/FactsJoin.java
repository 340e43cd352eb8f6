package platekeep.client.git.partner;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;
import platekeep.model.text.LibraryFacts;

/**
 * Joins two edits of what a library says about itself: the list of themes and the words that each is also called by as
 * sets, all else each key alone; where both changed one thing in two ways, what sorts first stands.
 */
final class FactsJoin {
    private FactsJoin() {}

    static LibraryFacts join(Optional<LibraryFacts> base, LibraryFacts mine, LibraryFacts theirs) {
        return new LibraryFacts(
                Settle.one(base.map(LibraryFacts::id), mine.id(), theirs.id()),
                Settle.one(base.map(LibraryFacts::name), mine.name(), theirs.name()),
                themes(base.map(LibraryFacts::themes).orElse(Map.of()), mine.themes(), theirs.themes()),
                new Value.Entries(Settle.maps(
                        base.map(facts -> facts.check().entries()).orElse(Map.of()),
                        mine.check().entries(),
                        theirs.check().entries(),
                        Value::text)),
                new Unknown(Settle.maps(
                        base.map(facts -> facts.unknown().entries()).orElse(Map.of()),
                        mine.unknown().entries(),
                        theirs.unknown().entries(),
                        Value::text)));
    }

    /** A theme that one side took out stays if the other one changed its words. */
    private static Map<String, List<String>> themes(
            Map<String, List<String>> base, Map<String, List<String>> mine, Map<String, List<String>> theirs) {
        Map<String, List<String>> out = new HashMap<>();
        TreeSet<String> names = new TreeSet<>(CodePoints.ORDER);
        names.addAll(mine.keySet());
        names.addAll(theirs.keySet());
        for (String name : names) {
            Optional<List<String>> was = Optional.ofNullable(base.get(name));
            Optional<List<String>> a = Optional.ofNullable(mine.get(name));
            Optional<List<String>> b = Optional.ofNullable(theirs.get(name));
            Settle.settled(was, a, b)
                    .orElseGet(() -> Optional.of(
                            a.isEmpty() || b.isEmpty()
                                    ? a.or(() -> b).orElseThrow()
                                    : ListJoin.joinSet(was.orElse(List.of()), a.get(), b.get())))
                    .ifPresent(words -> out.put(name, words));
        }
        return out;
    }
}
