package platekeep.client.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.file.PlateFile;
import platekeep.client.library.Arrivals;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/**
 * The whole job in a terminal, for a machine without a display: every step is a command that is shown and then carried
 * out by its verb on the real sample library. The steps that change something are done in a copy that goes afterwards.
 */
final class Tour {
    private final Desk desk;
    private final Path work;

    private Tour(Desk desk, Path work) {
        this.desk = desk;
        this.work = work;
    }

    /**
     * Takes the tour.
     *
     * @param library the sample library that is "yours"
     */
    static void take(Desk desk, Path library) throws Trouble, LibraryException {
        Path work;
        try {
            work = Files.createTempDirectory("platekeep-tour");
        } catch (IOException e) {
            throw new Trouble("The tour needs a place for temporary files, and there is none.", e);
        }
        try {
            Tour tour = new Tour(new Desk(desk.out(), desk.err(), work, desk.means()), work);
            tour.look(library);
            tour.change();
        } finally {
            remove(work);
        }
    }

    private void look(Path folder) throws Trouble, LibraryException {
        desk.say("A tour of the sample library in " + folder + ", each step a command that you can type yourself.");
        try (Library library = desk.means().libraries().open(folder)) {
            Arrivals arrivals = library.look(Progress.NONE);
            List<Arrivals.Arrival> both = arrivals.plates().stream()
                    .filter(Arrivals.Arrival::bothChanged)
                    .toList();
            Plate plate = both.isEmpty() ? firstOf(library) : both.get(0).mine().orElse(firstOf(library));
            String where = folder.toString();
            step("The plates", "list", "--library", where);
            find(plate, where);
            step("The versions of one plate", "history", plate.title(), "--library", where);
            compare(library.history(plate.id()));
            step("What the partner sent, looked at before it is brought in", "bring", "--look", "--library", where);
            for (Arrivals.Arrival arrival : both) {
                join(arrival);
            }
        }
    }

    private static Plate firstOf(Library library) throws Trouble, LibraryException {
        return library.list(Progress.NONE).stream()
                .flatMap(entry -> entry.plate().stream())
                .findFirst()
                .orElseThrow(() -> new Trouble("The library in " + library.folder() + " holds no plate."));
    }

    private void find(Plate plate, String where) throws Trouble {
        if (!plate.themes().isEmpty() && !plate.ages().isEmpty()) {
            step(
                    "Found by theme and age",
                    "list",
                    "--theme",
                    plate.themes().get(0),
                    "--age",
                    plate.ages().get(0).word(),
                    "--library",
                    where);
        }
    }

    private void compare(List<PlateVersion> history) throws Trouble {
        List<Plate> versions = history.stream()
                .flatMap(version -> version.entry().flatMap(Entry::plate).stream())
                .toList();
        if (versions.size() > 1) {
            write("newer.json", versions.get(0));
            write("older.json", versions.get(1));
            step("Two versions of it compared, row by row", "compare", "older.json", "newer.json");
        }
    }

    private void join(Arrivals.Arrival arrival) throws Trouble {
        if (arrival.base().isPresent()
                && arrival.mine().isPresent()
                && arrival.theirs().isPresent()) {
            write("before.json", arrival.base().get());
            write("yours.json", arrival.mine().get());
            write("partner.json", arrival.theirs().get());
            step(
                    "Two edits of " + arrival.mine().get().title() + " joined",
                    "join",
                    "before.json",
                    "yours.json",
                    "partner.json",
                    "-o",
                    "joined.json");
        }
    }

    /** A version saved, the partner's versions brought in, all sent, and the same brought in on the other side. */
    private void change() throws Trouble, LibraryException {
        Path yours = desk.means().samples().madeIn(work);
        Path partner = work.resolve("partner");
        Plate plate;
        try (Library library = desk.means().libraries().open(yours)) {
            plate = firstOf(library);
        }
        String where = work.relativize(yours).toString();
        desk.say("");
        desk.say("From here on in a copy, so that your sample library stays as it is.");
        step(
                "A plate changed and saved as a version",
                "tag",
                plate.title(),
                "--theme",
                "spring class",
                "--library",
                where);
        step("The partner's versions brought in; what both changed is joined", "bring", "--library", where);
        step("Yours sent", "send", "--library", where);
        step(
                "The partner brings them in",
                "bring",
                "--library",
                work.relativize(partner).toString());
    }

    /** Shows a command and carries it out; only trouble ends the tour, since an open clash is an answer. */
    private void step(String title, String... words) throws Trouble {
        desk.say("");
        desk.say(title + ":");
        desk.say("$ platekeep "
                + String.join(" ", Stream.of(words).map(Tour::quoted).toList()));
        if (new Verbs(desk).run(words) == Exit.TROUBLE) {
            throw new Trouble("The tour ends here, since this step failed.");
        }
    }

    private static String quoted(String word) {
        return word.matches("[A-Za-z0-9_./:+-]+") ? word : "\"" + word + "\"";
    }

    private void write(String name, Plate plate) throws Trouble {
        new PlateFile(name, work.resolve(name)).write(PlateText.bytes(plate));
    }

    private static void remove(Path folder) throws Trouble {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            throw new Trouble("The temporary files of the tour in " + folder + " could not be removed.", e);
        }
    }
}
