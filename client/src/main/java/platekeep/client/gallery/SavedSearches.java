package platekeep.client.gallery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.client.settings.Settings;
import platekeep.model.find.Query;
import platekeep.model.find.QueryText;

/** Searches that were kept under a name, in the settings, in the order in which they were kept. */
final class SavedSearches {
    private static final String NAME = "search.name.";
    private static final String QUERY = "search.query.";

    private final Settings settings;

    SavedSearches(Settings settings) {
        this.settings = settings;
    }

    List<String> names() {
        return List.copyOf(all().keySet());
    }

    Optional<Query> get(String name) {
        return Optional.ofNullable(all().get(name)).flatMap(QueryText::read);
    }

    /** Keeps a search, in place of one of the same name. */
    void put(String name, Query query) {
        Map<String, String> all = all();
        all.put(name, QueryText.write(query));
        write(all);
    }

    void rename(String name, String newName) {
        Map<String, String> renamed = new LinkedHashMap<>();
        all().forEach((key, text) -> {
            if (!key.equals(newName) || name.equals(newName)) {
                renamed.put(key.equals(name) ? newName : key, text);
            }
        });
        write(renamed);
    }

    void remove(String name) {
        Map<String, String> all = all();
        all.remove(name);
        write(all);
    }

    private Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        for (int i = 1; settings.get(NAME + i).isPresent(); i++) {
            all.put(
                    settings.get(NAME + i).orElseThrow(),
                    settings.get(QUERY + i).orElse(""));
        }
        return all;
    }

    private void write(Map<String, String> all) {
        settings.forget(NAME);
        settings.forget(QUERY);
        int i = 1;
        for (Map.Entry<String, String> entry : all.entrySet()) {
            settings.put(NAME + i, entry.getKey());
            settings.put(QUERY + i, entry.getValue());
            i++;
        }
    }
}
