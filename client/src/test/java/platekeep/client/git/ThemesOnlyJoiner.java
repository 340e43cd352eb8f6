package platekeep.client.git;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.git.plates.Joiner;
import platekeep.model.plate.Plate;

/** Joins themes. */
final class ThemesOnlyJoiner implements Joiner {
    @Override
    public Plate join(
            Optional<Plate> base, Plate mine, Plate theirs, Optional<String> mineBy, Optional<String> theirsBy) {
        List<String> before = base.map(Plate::themes).orElse(List.of());
        List<String> all = new ArrayList<>(mine.themes());
        all.addAll(theirs.themes());
        all.removeIf(theme -> before.contains(theme)
                && !(mine.themes().contains(theme) && theirs.themes().contains(theme)));
        String title = mine.title().equals(base.map(Plate::title).orElse("")) ? theirs.title() : mine.title();
        return mine.edit().themes(all).title(title).build();
    }
}
