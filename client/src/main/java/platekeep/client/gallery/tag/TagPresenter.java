package platekeep.client.gallery.tag;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.model.find.Summary;
import platekeep.model.find.tag.Suggested;
import platekeep.model.find.tag.ThemeLine;
import platekeep.model.find.tag.ThemeRename;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/**
 * Gives tags to many plates and takes them away, and keeps the themes of a library in order: each as one version of a
 * library. Plates are read anew for it, so that nothing is undone that was saved meanwhile.
 */
public final class TagPresenter {
    private static final int MOST_SUGGESTED = 8;

    private final Workroom room;
    private final TagView view;
    private final Supplier<Collection<Summary>> all;
    private final TakeBackPresenter takingBack;

    /**
     * @param all the plates of all open libraries
     */
    public TagPresenter(Workroom room, TagView view, Supplier<Collection<Summary>> all) {
        this.room = room;
        this.view = view;
        this.all = all;
        this.takingBack = new TakeBackPresenter(room, view);
    }

    /** What takes a change of tags back. */
    public TakeBackPresenter takingBack() {
        return takingBack;
    }

    /** Asks which tags to give to plates and to take from them, and does so. */
    public void tag(List<TagView.Chosen> chosen) {
        if (chosen.isEmpty()) {
            room.front().trouble("Choose the plates to tag first.");
            return;
        }
        List<Summary> plates = chosen.stream().map(TagView.Chosen::summary).toList();
        Collection<Summary> everything = all.get();
        room.work(
                progress -> new Known(Suggested.themes(plates, everything, MOST_SUGGESTED), themes(everything)),
                known -> view.askTags(plates, known.suggested(), known.themes())
                        .filter(answer -> !answer.tagging().isEmpty())
                        .ifPresent(answer -> tag(chosen, answer)));
    }

    private void tag(List<TagView.Chosen> chosen, TagView.Answer answer) {
        String reason = answer.reason().isBlank()
                ? answer.tagging().words()
                : answer.reason().strip();
        takingBack.begin();
        TagView.byLibrary(chosen).forEach((library, some) -> {
            List<String> ids = some.stream().map(Summary::id).toList();
            save(library, ids, answer.tagging()::on, facts -> facts, reason);
        });
    }

    /** Themes that may be missing, and all there are. */
    private record Known(List<String> suggested, List<String> themes) {}

    private static List<String> themes(Collection<Summary> plates) {
        return plates.stream()
                .flatMap(plate -> plate.themes().stream())
                .distinct()
                .sorted(CodePoints.ORDER)
                .toList();
    }

    /** Shows the themes of a library and does with them what she asks for, one after the other. */
    public void themes(Library library) {
        List<Summary> plates = of(library);
        room.work(
                progress -> ThemeLine.of(plates, library.facts().themes()),
                lines -> view.askThemes(room.nameOf(library), lines)
                        .ifPresent(deed -> deed.fold(
                                rename -> rename(library, plates, new ThemeRename(rename.theme(), rename.to())),
                                also -> list(library, also.theme(), Optional.of(also.words())),
                                off -> list(library, off.theme(), Optional.empty()))));
    }

    private List<Summary> of(Library library) {
        String folder = library.folder() + "\n";
        return all.get().stream()
                .filter(plate -> plate.key().startsWith(folder))
                .toList();
    }

    private boolean rename(Library library, List<Summary> plates, ThemeRename rename) {
        List<Summary> changing = plates.stream()
                .filter(plate -> plate.themes().contains(rename.from()))
                .toList();
        long there = plates.stream()
                .filter(plate -> plate.themes().contains(rename.to()))
                .count();
        long both = changing.stream()
                .filter(plate -> plate.themes().contains(rename.to()))
                .count();
        String sentence = "\"" + rename.from() + "\" becomes \"" + rename.to() + "\" on " + plates(changing.size())
                + "."
                + (there == 0
                        ? ""
                        : " \"" + rename.to() + "\" is a theme already, of " + plates((int) there)
                                + (both == 0
                                        ? ""
                                        : ", " + both + (both == 1 ? " of which has both" : " of which have both"))
                                + ": the two become one.")
                + " Looking for \"" + rename.from() + "\" goes on finding them.";
        if (!view.agrees(sentence, changing.stream().map(Summary::title).toList())) {
            return false;
        }
        takingBack.begin();
        save(library, changing.stream().map(Summary::id).toList(), rename::on, rename::on, rename.words());
        return true;
    }

    private boolean list(Library library, String theme, Optional<List<String>> also) {
        takingBack.begin();
        save(
                library,
                List.of(),
                plate -> plate,
                facts -> {
                    Map<String, List<String>> themes = new LinkedHashMap<>(facts.themes());
                    also.ifPresentOrElse(words -> themes.put(theme, words), () -> themes.remove(theme));
                    return facts.withThemes(themes);
                },
                also.map(words -> "Theme \"" + theme + "\""
                                + (words.isEmpty() ? " on the list" : " is also called " + String.join(", ", words)))
                        .orElse("Theme \"" + theme + "\" taken off the list"));
        return true;
    }

    private void save(
            Library library,
            List<String> ids,
            UnaryOperator<Plate> onPlate,
            UnaryOperator<LibraryFacts> onFacts,
            String reason) {
        room.withHand(
                library,
                () -> room.save(
                        (Progress progress) -> save(library, changes(library, ids, onPlate, onFacts), reason),
                        saved -> saved.ifPresentOrElse(
                                done -> told(library, done, reason),
                                () -> room.front().say("That is so already; there is nothing to save."))));
    }

    private void told(Library library, Saved saved, String reason) {
        takingBack.done(library, saved.version());
        room.front()
                .say("Saved: " + reason + (saved.plates() == 0 ? "" : " (" + plates(saved.plates()) + ")")
                        + ". Ctrl+Z takes it back.");
        room.changed(library);
    }

    /** A version that was made, and how many plates it changed. */
    private record Saved(Version version, int plates) {}

    private static List<Change> changes(
            Library library, List<String> ids, UnaryOperator<Plate> onPlate, UnaryOperator<LibraryFacts> onFacts)
            throws LibraryException {
        Map<String, Change> changes = new TreeMap<>();
        for (String id : ids) {
            Optional<Plate> plate = library.plate(id).flatMap(Entry::plate);
            plate.map(onPlate)
                    .filter(tagged -> !tagged.equals(plate.get()))
                    .ifPresent(tagged -> changes.put(id, new Change.PutPlate(tagged)));
        }
        List<Change> all = new ArrayList<>(changes.values());
        LibraryFacts facts = library.facts();
        LibraryFacts changed = onFacts.apply(facts);
        if (!changed.equals(facts)) {
            all.add(new Change.PutFacts(changed));
        }
        return all;
    }

    /** Empty where nothing changes. */
    private static Optional<Saved> save(Library library, List<Change> changes, String reason) throws LibraryException {
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> seen = library.newest().map(Version::id);
        Version version = library.save(new Saving(changes, reason, Optional.empty(), seen));
        int plates = (int) changes.stream()
                .filter(change -> change instanceof Change.PutPlate)
                .count();
        return Optional.of(new Saved(version, plates));
    }

    private static String plates(int count) {
        return Counted.of(count, "plate");
    }
}
