package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import platekeep.client.draft.KeptDraft;
import platekeep.client.room.LibraryNames;
import platekeep.model.find.Index;
import platekeep.model.find.Mark;
import platekeep.model.find.Summary;
import platekeep.model.find.Told;

/**
 * All plates of the open libraries, ready to be asked for.
 *
 * @param index of those that can be read
 * @param items all of them, by key
 * @param damaged files that cannot be read
 * @param names what the libraries are called
 */
record Held(Index index, Map<String, Stock.Item> items, List<Stock.Item> damaged, LibraryNames names) {
    static final Held NOTHING = new Held(Index.empty().ready(), Map.of(), List.of(), LibraryNames.NONE);

    /**
     * What is known of one library.
     *
     * @param stock what was read
     * @param drafts plates that are not saved as versions yet
     * @param unsent ids of plates with versions that the partner has not got
     * @param told what versions tell, by plate id
     * @param errors contents in which the check found what cannot be worked
     */
    record Part(Stock stock, List<KeptDraft> drafts, Set<String> unsent, Map<String, Told> told, Set<String> errors) {

        private List<Stock.Item> items() {
            return Begun.withDrafts(stock, drafts);
        }

        private Optional<Summary> summary(Stock.Item item, Set<String> drawn, LibraryNames names) {
            return item.summary()
                    .map(summary -> summary.inLibrary(names.of(stock.library()))
                            .withMark(Mark.DRAFT, drawn.contains(summary.id()))
                            .withMark(Mark.UNSENT, unsent.contains(summary.id()))
                            .withMark(Mark.ERRORS, errors.contains(item.entry().content()))
                            .withTold(told.getOrDefault(summary.id(), Told.NOTHING)));
        }
    }

    /** The same as the libraries are now, at the cost of what changed. In the background. */
    Held with(List<Part> parts, LibraryNames newNames) {
        Map<String, Stock.Item> now = new HashMap<>();
        List<Stock.Item> broken = new ArrayList<>();
        List<Summary> changed = new ArrayList<>();
        for (Part part : parts) {
            Set<String> drawn =
                    part.drafts().stream().map(draft -> draft.plate().id()).collect(Collectors.toSet());
            for (Stock.Item item : part.items()) {
                now.put(item.key(), item);
                part.summary(item, drawn, newNames)
                        .ifPresentOrElse(
                                summary -> {
                                    if (!index.get(item.key()).equals(Optional.of(summary))) {
                                        changed.add(summary);
                                    }
                                },
                                () -> broken.add(item));
            }
        }
        Set<String> gone = new HashSet<>();
        items.forEach((key, item) -> {
            if (!now.containsKey(key) || now.get(key).summary().isEmpty()) {
                gone.add(key);
            }
        });
        boolean isSame = changed.isEmpty() && gone.isEmpty();
        return new Held(isSame ? index : index.with(changed, gone), now, broken, newNames);
    }

    /** Makes the dictionary, so that the first word need not wait for it; plates can be seen without. In the background. */
    Held ready() {
        index.ready();
        return this;
    }
}
