package platekeep.client.command.collect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.keep.LibraryVerb;
import platekeep.client.command.keep.PlateChoice;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** Lists series, shows one in its order, or changes one as one version. */
public final class SeriesVerb extends LibraryVerb {

    private final Word name = takes(
            Times.AT_MOST_ONCE,
            "SERIES",
            "Title or id of a series, or a part of its title; without it all are listed.");

    private final Word begin = flag("Begin a new series of this title.", "--begin");

    private final Word title = option(Times.AT_MOST_ONCE, "TITLE", "Give it another title.", "--rename");

    private final Word add = option(Times.ANY, "PLATE", "Put a plate at its end; may be given again.", "--add");

    private final Word out = option(Times.ANY, "PLATE", "Take a plate out; may be given again.", "--out");

    private final Word move = option(Times.AT_MOST_ONCE, "PLATE", "Move a plate; with --place.", "--move");

    private final Word place = option(Times.AT_MOST_ONCE, "NUMBER", "The place that it goes to, from 1.", "--place");

    private final Word putAway = flag("Put the series away; its plates stay.", "--put-away");

    private final Word reason =
            option(Times.AT_MOST_ONCE, "REASON", "Why; without it the change in words.", "--reason");

    public SeriesVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "series",
                        "Lists the series of a library, shows one in its order, or changes one as one version.",
                        "platekeep series",
                        "platekeep series \"Harbour Days\"",
                        "platekeep series \"Harbour Days\" --add \"Harbour Light\" --move H-12 --place 1"));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        if (!name.given()) {
            if (changes()) {
                throw new Trouble("Say which series is meant, such as \"platekeep series 'Harbour Days' --add H-12\".");
            }
            list(library);
            return Exit.FINE;
        }
        Optional<String> seen = library.newest().map(Version::id);
        if (begin.given()) {
            Series fresh = new Series(
                    UUID.randomUUID().toString(), name.text(), List.of(), Palette.EMPTY, List.of(), Unknown.NONE);
            refuseSameTitle(library, fresh);
            save(library, new Change.PutSeries(changed(library, fresh)), "begun", fresh, seen);
        } else if (putAway.given()) {
            Series series = find(library);
            save(library, new Change.PutSeriesAway(series.id()), "put away", series, seen);
        } else if (changes()) {
            Series series = find(library);
            Series changed = changed(library, series);
            if (changed.equals(series)) {
                throw new Trouble("The series is like that already; there is nothing to save.");
            }
            save(library, new Change.PutSeries(changed), "changed", series, seen);
        } else {
            show(library, find(library));
        }
        return Exit.FINE;
    }

    private boolean changes() {
        return Stream.of(begin, title, add, out, move, place, putAway).anyMatch(Word::given);
    }

    private void save(Library library, Change change, String what, Series series, Optional<String> seen)
            throws LibraryException {
        String why = reason.value().orElse("Series \"" + series.title() + "\" " + what);
        tellSaved(library.save(new Saving(List.of(change), why, Optional.empty(), seen)));
    }

    private static void refuseSameTitle(Library library, Series fresh) throws Trouble, LibraryException {
        if (library.series().stream().anyMatch(series -> series.title().equals(fresh.title()))) {
            throw new Trouble("There is a series \"" + fresh.title() + "\" already. Take another title.");
        }
    }

    private Series find(Library library) throws Trouble, LibraryException {
        String wanted = name.text().toLowerCase(Locale.ROOT);
        List<Predicate<Series>> readings = List.of(
                series -> series.id().equals(name.text()),
                series -> series.title().toLowerCase(Locale.ROOT).equals(wanted),
                series -> series.title().toLowerCase(Locale.ROOT).contains(wanted));
        List<Series> all = library.series();
        for (Predicate<Series> reading : readings) {
            List<Series> found = all.stream().filter(reading).toList();
            if (found.size() == 1) {
                return found.get(0);
            }
            if (found.size() > 1) {
                throw new Trouble("\"" + name.text() + "\" can mean several series: "
                        + found.stream().map(Series::title).limit(6).collect(Collectors.joining(", "))
                        + (found.size() > 6 ? ", ..." : "") + ". Say more of the title, or the id.");
            }
        }
        throw new Trouble("There is no series \"" + name.text() + "\". See \"platekeep series\" for what there is.");
    }

    private Series changed(Library library, Series series) throws Trouble, LibraryException {
        PlateChoice choice = PlateChoice.among(library);
        List<String> plates = new ArrayList<>(series.plates());
        for (String word : out.values()) {
            Plate plate = choice.plate(word);
            if (!plates.remove(plate.id())) {
                throw new Trouble("\"" + plate.title() + "\" is not in this series.");
            }
        }
        for (String word : add.values()) {
            Plate plate = choice.plate(word);
            if (!plates.contains(plate.id())) {
                plates.add(plate.id());
            }
        }
        if (move.given() != place.given()) {
            throw new Trouble("--move and --place go together: which plate, and to which place.");
        }
        if (move.given()) {
            Plate plate = choice.plate(move.text());
            if (!plates.remove(plate.id())) {
                throw new Trouble("\"" + plate.title() + "\" is not in this series.");
            }
            plates.add(place(plates.size() + 1) - 1, plate.id());
        }
        return new Series(
                series.id(),
                title.value().orElse(series.title()),
                plates,
                series.colours(),
                series.notes(),
                series.unknown());
    }

    private int place(int most) throws Trouble {
        String text = place.text();
        if (!text.matches("[1-9][0-9]{0,5}") || Integer.parseInt(text) > most) {
            throw new Trouble("--place takes a number from 1 to " + most + ", not \"" + text + "\".");
        }
        return Integer.parseInt(text);
    }

    private void list(Library library) throws LibraryException {
        List<Series> all = library.series().stream()
                .sorted(Comparator.comparing(series -> series.title().toLowerCase(Locale.ROOT)))
                .toList();
        if (asJson()) {
            sayJson(all.stream()
                    .map(series -> new Value.Builder()
                            .put("id", series.id())
                            .put("title", series.title())
                            .put("plates", series.plates().size())
                            .build())
                    .toList());
        } else {
            all.forEach(
                    series -> say(series.title() + "  (" + count(series.plates().size(), "plate") + ")"));
            say(all.size() + " series.");
        }
    }

    private static String count(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    private void show(Library library, Series series) throws LibraryException {
        Map<String, Plate> there = new HashMap<>();
        library.list(Progress.NONE).forEach(entry -> entry.plate().ifPresent(plate -> there.put(plate.id(), plate)));
        if (asJson()) {
            sayJson(new Value.Builder()
                    .put("id", series.id())
                    .put("title", series.title())
                    .put("notes", Value.ofTexts(series.notes()))
                    .put(
                            "plates",
                            new Value.Items(series.plates().stream()
                                    .map(id -> json(id, Optional.ofNullable(there.get(id))))
                                    .toList()))
                    .build());
            return;
        }
        say(series.title());
        series.notes().forEach(this::say);
        for (int i = 0; i < series.plates().size(); i++) {
            Optional<Plate> plate =
                    Optional.ofNullable(there.get(series.plates().get(i)));
            say(String.format(
                    Locale.ROOT,
                    "%3d  %s",
                    i + 1,
                    plate.map(SeriesVerb::words).orElse("not in this library; its place is kept")));
        }
    }

    private static String words(Plate plate) {
        return plate.title()
                + plate.number().map(number -> "  (" + number + ")").orElse("");
    }

    private static Value json(String id, Optional<Plate> plate) {
        return new Value.Builder()
                .put("id", id)
                .put("title", plate.map(p -> Value.of(p.title())).orElse(Value.NOTHING))
                .put("number", plate.flatMap(Plate::number).map(Value::of).orElse(Value.NOTHING))
                .build();
    }
}
