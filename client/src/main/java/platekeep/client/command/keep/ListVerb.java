package platekeep.client.command.keep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.file.ReadablePlate;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Telling;
import platekeep.client.task.Progress;
import platekeep.model.find.Choice;
import platekeep.model.find.Found;
import platekeep.model.find.Group;
import platekeep.model.find.Index;
import platekeep.model.find.Query;
import platekeep.model.find.Summary;
import platekeep.model.find.Surroundings;
import platekeep.model.find.Told;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Value;
import platekeep.model.text.Problem;

/** Lists the plates of a library, narrowed down by words, themes, ages and uses. */
public final class ListVerb extends LibraryVerb {

    private final Word words =
            takes(Times.ANY, "WORD", "Words to find, as in the gallery; a plate is listed when it has all of them.");

    private final Word themes = option(Times.ANY, "THEME", "Only plates of this theme; may be given again.", "--theme");

    private final Word ages = option(Times.ANY, "AGE", "Only plates for this age; given again, for either.", "--age");

    private final Word uses = option(Times.ANY, "USE", "Only plates for this use; may be given again.", "--for");

    private final Word putAway = flag("The plates that were put away, instead of those that are there.", "--put-away");

    /** A plate and where it lies. */
    private record Line(Plate plate, String path) {}

    public ListVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "list",
                        "Lists the plates of a library.",
                        "platekeep list boat --age toddler",
                        "platekeep list --library patterns --theme seaside --json"));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        Query query = query();
        List<Entry> entries = putAway.given()
                ? library.putAway().stream()
                        .flatMap(step -> step.entry().stream())
                        .toList()
                : library.list(Progress.NONE);
        Map<String, Told> told = query.words().isBlank() ? Map.of() : Telling.of(library);
        List<Line> found = found(entries, Surroundings.of(library.facts(), library.series()), told, query);
        entries.forEach(this::warnOfDamage);
        if (asJson()) {
            sayJson(found.stream().map(ListVerb::json).toList());
        } else {
            found.forEach(line -> say(text(line)));
            say(ReadablePlate.count(found.size(), "plate") + (putAway.given() ? " put away." : "."));
        }
        return Exit.FINE;
    }

    private void warnOfDamage(Entry entry) {
        entry.fold(good -> List.<Problem>of(), damaged -> damaged.problems())
                .forEach(problem -> desk.warn("Damaged: " + problem.sentence()));
    }

    private Query query() throws Trouble {
        Set<String> wanted = new TreeSet<>();
        for (String age : ages.values()) {
            wanted.add(AgeWord.of(age).word());
        }
        Query query = new Query(String.join(" ", words.values()), Map.of()).with(Group.AGE, wanted);
        return themes.values().isEmpty()
                ? query
                : query.with(Group.THEME, new Choice(Set.copyOf(themes.values()), Choice.Match.ALL));
    }

    private List<Line> found(List<Entry> entries, Surroundings around, Map<String, Told> told, Query query) {
        Map<String, Line> lines = new LinkedHashMap<>();
        List<Summary> summaries = new ArrayList<>();
        for (Entry entry : entries) {
            entry.plate()
                    .filter(plate -> plate.uses().containsAll(uses.values()))
                    .ifPresent(plate -> {
                        lines.put(entry.path(), new Line(plate, entry.path()));
                        summaries.add(Summary.of(entry.path(), plate, around)
                                .withTold(told.getOrDefault(plate.id(), Told.NOTHING)));
                    });
        }
        Index index = Index.of(summaries);
        Found found = index.find(query);
        List<Line> out = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            out.add(lines.get(index.at(found.at(i)).key()));
        }
        return out;
    }

    private static String text(Line line) {
        Plate plate = line.plate();
        List<String> facts = new ArrayList<>();
        plate.number().ifPresent(facts::add);
        facts.add(size(plate));
        if (!plate.ages().isEmpty()) {
            facts.add(plate.ages().stream().map(Age::word).collect(Collectors.joining(", ")));
        }
        if (!plate.themes().isEmpty()) {
            facts.add(String.join(", ", plate.themes()));
        }
        if (plate.hasClashes()) {
            facts.add("open clashes: " + plate.clashes().size());
        }
        return plate.title() + "  (" + String.join("; ", facts) + ")  " + line.path();
    }

    private static String size(Plate plate) {
        return plate.pleats()
                .map(pleats -> ReadablePlate.count(pleats.count(), "pleat") + " by "
                        + ReadablePlate.count(plate.rows().size(), "row"))
                .orElse("no chart yet");
    }

    private static Value.Entries json(Line line) {
        Plate plate = line.plate();
        return new Value.Builder()
                .put("id", plate.id())
                .put("title", plate.title())
                .put("path", line.path())
                .put("number", plate.number().map(Value::of).orElse(Value.NOTHING))
                .put("themes", Value.ofTexts(plate.themes()))
                .put("ages", Value.ofTexts(plate.ages().stream().map(Age::word).toList()))
                .put("for", Value.ofTexts(plate.uses()))
                .put("pleats", plate.pleats().map(Pleats::count).orElse(0))
                .put("rows", plate.rows().size())
                .put("clashes", plate.clashes().size())
                .build();
    }
}
