package platekeep.client.many;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;
import platekeep.model.text.LibraryFacts;
import platekeep.model.text.LibraryText;
import platekeep.model.text.SeriesText;
import platekeep.model.text.Slugs;

/** What happens in one version: a plate is begun, changed, tagged, put into a series, put away or brought back. */
final class Steps {
    private final Chance chance;
    private final LibraryFacts facts;
    private final PlateMaker maker;
    private final Edits edits;
    private final Map<String, String> nameOf = new HashMap<>();
    private final List<Plate> gone = new ArrayList<>();
    private Optional<Series> open = Optional.empty();
    private int seriesCount;
    private int begun;
    private int toBegin;
    private int toPutAway;

    /**
     * @param plates how many are there in the end
     */
    Steps(int plates, LibraryFacts facts, Chance chance) {
        this.chance = chance;
        this.facts = facts;
        this.maker = new PlateMaker(chance);
        this.edits = new Edits(chance);
        this.toPutAway = plates / 50;
        this.toBegin = plates + toPutAway;
    }

    /**
     * What happened.
     *
     * @param plateId the plate that it was about; empty where it was about none or many
     */
    record Step(String reason, Optional<String> plateId) {}

    /** The plate's version has a name now, by which others may say that they were started from it. */
    void named(String plateId, String name) {
        nameOf.put(plateId, name);
    }

    /**
     * One step in the line that both share.
     *
     * @param left how many versions are still to come, this one too
     */
    Step shared(Cabinet cabinet, int left) {
        if (left == 1) {
            return last(cabinet);
        }
        if (chance.percent(100.0 * toPutAway / left) && cabinet.ids().size() > 20) {
            return putAway(cabinet);
        }
        if (chance.percent(0.4) && cabinet.ids().size() > 60) {
            return taggedMany(cabinet);
        }
        if (chance.percent(0.3) && !gone.isEmpty()) {
            return broughtBack(cabinet);
        }
        if (chance.percent(0.1)) {
            return themesListed(cabinet);
        }
        if (chance.percent(100.0 * toBegin / left) || cabinet.ids().isEmpty()) {
            int many = chance.percent(1.5) ? chance.between(5, 20) : 1;
            return begin(cabinet, Math.min(many, toBegin));
        }
        return edit(cabinet, chance.of(cabinet.ids()));
    }

    /** One step of a designer who is by herself: an edit, of these plates too, or a plate begun. */
    Step alone(Cabinet cabinet, int left) {
        if (chance.percent(100.0 * toBegin / left)) {
            return begun(begin(cabinet));
        }
        return edit(cabinet, chance.of(cabinet.ids()));
    }

    /** An edit of a plate. */
    Step edit(Cabinet cabinet, String plateId) {
        Plate plate = cabinet.plate(plateId);
        Plate changed = edits.changed(plate);
        if (!changed.themes().equals(plate.themes())) {
            cabinet.put(changed);
            return new Step("Themes of " + plate.title(), Optional.of(plateId));
        }
        cabinet.put(changed);
        return new Step(WordBox.reason(chance), Optional.of(plateId));
    }

    private Step begin(Cabinet cabinet, int many) {
        Plate first = begin(cabinet);
        inSeries(cabinet, first);
        for (int i = 1; i < many; i++) {
            inSeries(cabinet, begin(cabinet));
        }
        return many > 1 ? new Step(many + " plates charted from the binder", Optional.empty()) : begun(first);
    }

    private Step begun(Plate plate) {
        return new Step(WordBox.begun(plate.title(), chance), Optional.of(plate.id()));
    }

    private Plate begin(Cabinet cabinet) {
        begun++;
        toBegin--;
        boolean like = chance.percent(4) && cabinet.ids().size() > 10;
        Plate plate = like ? like(cabinet) : maker.plate(begun);
        cabinet.put(plate);
        return plate;
    }

    private Plate like(Cabinet cabinet) {
        String id = chance.of(cabinet.ids());
        return maker.likeness(cabinet.plate(id), Optional.ofNullable(nameOf.get(id)));
    }

    /** Some plates go into the series that is being put together; a full one is followed by another. */
    private void inSeries(Cabinet cabinet, Plate plate) {
        if (!chance.percent(38)) {
            return;
        }
        Series before = open.orElseGet(() -> {
            String title = WordBox.seriesTitle(++seriesCount, chance);
            return new Series(chance.id().toString(), title, List.of(), Palette.EMPTY, List.of(), Unknown.NONE);
        });
        List<String> plates = new ArrayList<>(before.plates());
        plates.add(plate.id());
        Series series = new Series(before.id(), before.title(), plates, before.colours(), before.notes(), Unknown.NONE);
        cabinet.put(Slugs.path(series), SeriesText.bytes(series));
        open = chance.percent(7) ? Optional.empty() : Optional.of(series);
    }

    private Step putAway(Cabinet cabinet) {
        toPutAway--;
        Plate plate = cabinet.plate(chance.of(cabinet.ids()));
        cabinet.putAway(plate.id());
        gone.add(plate);
        return new Step("Put away, we never stitched it: " + plate.title(), Optional.empty());
    }

    private Step broughtBack(Cabinet cabinet) {
        Plate plate = gone.remove(chance.between(0, gone.size() - 1));
        toPutAway++;
        cabinet.put(plate);
        return new Step("Brought back: " + plate.title(), Optional.of(plate.id()));
    }

    private Step taggedMany(Cabinet cabinet) {
        String theme = chance.of(WordBox.MORE_THEMES);
        int tagged = 0;
        for (int i = chance.between(10, 40); i > 0; i--) {
            Plate plate = cabinet.plate(chance.of(cabinet.ids()));
            if (!plate.themes().contains(theme)) {
                cabinet.put(Edits.retagged(plate, theme));
                tagged++;
            }
        }
        return tagged == 0
                ? edit(cabinet, chance.of(cabinet.ids()))
                : new Step(tagged + " plates tagged " + theme, Optional.empty());
    }

    /** The library's own list of themes grows. */
    private Step themesListed(Cabinet cabinet) {
        Map<String, List<String>> themes = new TreeMap<>();
        for (String theme : WordBox.ALSO_CALLED.keySet().stream().sorted().toList()) {
            if (chance.percent(80)) {
                themes.put(theme, WordBox.ALSO_CALLED.get(theme));
            }
        }
        cabinet.put("library.json", LibraryText.bytes(facts.withThemes(themes)));
        return new Step("The list of themes gone over", Optional.empty());
    }

    /** The last version brings what is missing, so that the numbers are those that were asked for. */
    private Step last(Cabinet cabinet) {
        themesListed(cabinet);
        while (toBegin > 0) {
            begin(cabinet);
        }
        while (toPutAway > 0) {
            putAway(cabinet);
        }
        return new Step("The year's end: all binders gone through", Optional.empty());
    }
}
