package platekeep.client.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.room.LibraryNames;
import platekeep.model.plate.Plate;

/**
 * What carrying a load into one library comes to; nothing is done yet.
 *
 * @param to the library
 * @param names what the libraries are called
 * @param seen its newest version
 * @param isShared whether what lies there goes to a partner with the next sending
 * @param going those that it has not, or has put away
 * @param back ids of those that were put away there and come back
 * @param same those that it has just so
 * @param different those that it has otherwise; they are left alone
 * @param pictures those that it has not
 * @param held those that cannot be moved, since what is drawn on them is not saved
 */
record Plan(
        Way way,
        Load load,
        Library to,
        LibraryNames names,
        Optional<String> seen,
        boolean isShared,
        List<Plate> going,
        List<String> back,
        List<Plate> same,
        List<Plate> different,
        List<Picture> pictures,
        List<Plate> held) {

    /** Looks at what is there; in the background. */
    static Plan of(Way way, Load load, Library to, LibraryNames names) throws LibraryException {
        List<Plate> going = new ArrayList<>();
        List<String> back = new ArrayList<>();
        List<Plate> same = new ArrayList<>();
        List<Plate> different = new ArrayList<>();
        List<Plate> held = new ArrayList<>();
        Optional<String> seen = to.newest().map(Version::id);
        for (Plate plate : load.plates()) {
            Optional<Entry> there = to.plate(plate.id());
            if (way == Way.MOVE && load.isDrawn(plate)) {
                held.add(plate);
            } else if (there.isEmpty()) {
                going.add(plate);
                if (!to.history(plate.id()).isEmpty()) {
                    back.add(plate.id());
                }
            } else {
                (there.get().plate().equals(Optional.of(plate)) ? same : different).add(plate);
            }
        }
        Set<String> there = to.pictures().stream().map(Plan::name).collect(Collectors.toSet());
        List<Picture> pictures = Stream.concat(going.stream(), same.stream())
                .flatMap(plate -> load.picturesOf(plate).stream())
                .filter(picture -> !there.contains(name(picture)))
                .toList();
        boolean isShared = to.sharedCopy().isPresent();
        return new Plan(way, load, to, names, seen, isShared, going, back, same, different, pictures, held);
    }

    String toName() {
        return names.of(to);
    }

    String fromName() {
        return names.of(load.from());
    }

    /** Whether anything would happen. */
    boolean doesSomething() {
        return !going.isEmpty() || !pictures.isEmpty() || way == Way.MOVE && !same.isEmpty();
    }

    /** The plates that are in the other library afterwards. */
    List<Plate> carried() {
        List<Plate> carried = new ArrayList<>(going);
        carried.addAll(same);
        return carried;
    }

    /** What is put there: plates, and pictures that are not there yet. */
    List<Change> changesThere() throws LibraryException {
        List<Change> changes = new ArrayList<>();
        going.forEach(plate -> changes.add(new Change.PutPlate(plate)));
        for (Picture picture : pictures) {
            changes.add(new Change.PutPicture(
                    picture.plateId(), picture.kind(), load.from().bytes(picture)));
        }
        return changes;
    }

    /** What goes here when it is moved. */
    List<Change> changesHere() {
        List<Change> changes = new ArrayList<>();
        for (Plate plate : carried()) {
            changes.add(new Change.PutAway(plate.id()));
            load.picturesOf(plate).forEach(picture -> changes.add(new Change.PutPictureAway(picture)));
        }
        return changes;
    }

    /** Does it: first there, then here; if the second cannot be done the plates are in both, and that is said. */
    void carry() throws LibraryException {
        List<Change> there = changesThere();
        if (!there.isEmpty()) {
            to.save(new Saving(there, reason(), Optional.empty(), seen));
        }
        if (way == Way.MOVE) {
            try {
                load.from().save(new Saving(changesHere(), reason(), Optional.empty(), load.seen()));
            } catch (LibraryException e) {
                throw new LibraryException(
                        titles(carried()) + " is in \"" + toName() + "\" now, and also still in \"" + fromName()
                                + "\", since it could not be put away there: " + e.getMessage(),
                        e);
            }
        }
    }

    private static String name(Picture picture) {
        return picture.path().substring(picture.path().lastIndexOf('/') + 1);
    }

    /** The reason of both versions. */
    String reason() {
        return titles(carried()) + " " + way.done() + " from \"" + fromName() + "\" to \"" + toName() + "\"";
    }

    /** What will happen and what to mind, a sentence each. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        if (!going.isEmpty()) {
            String beside = pictures.isEmpty() ? "." : ", with the scans and photos beside.";
            words.add(titles(going) + (going.size() == 1 ? " goes" : " go") + " to \"" + toName() + "\"" + beside);
        }
        if (going.isEmpty() && !pictures.isEmpty()) {
            words.add("Scans and photos that are not there yet go to \"" + toName() + "\".");
        }
        told(words, same, "there already, just the same");
        told(words, different, "there already and different; what is there stays");
        told(words, held, "drawn on and not saved: save that first, then move it");
        back.stream()
                .flatMap(id -> going.stream().filter(plate -> plate.id().equals(id)))
                .map(plate -> "\"" + plate.title() + "\" was put away there once and comes back.")
                .forEach(words::add);
        if (way == Way.COPY) {
            going.stream()
                    .filter(load::isDrawn)
                    .map(plate ->
                            "\"" + plate.title() + "\" goes as it was last saved; what is drawn since stays here.")
                    .forEach(words::add);
        }
        if (doesSomething()) {
            words.add(history());
        }
        List<Plate> mine = going.stream()
                .filter(plate -> plate.origin().use().equals(Optional.of("mine")))
                .toList();
        if (isShared && !mine.isEmpty()) {
            words.add("Mind: " + titles(mine) + (mine.size() == 1 ? " is" : " are")
                    + " for you only, and what lies in \"" + toName() + "\" goes to your partner.");
        } else if (isShared && !going.isEmpty()) {
            words.add("\"" + toName() + "\" is shared: your partner gets it with the next sending.");
        }
        return words;
    }

    private String history() {
        String from = fromName();
        return way == Way.MOVE
                ? "The history stays in \"" + from + "\", where the plate is found among what was put away; in \""
                        + toName() + "\" it begins anew."
                : "The history stays in \"" + from + "\"; from now on the two go their own ways.";
    }

    private static void told(List<String> words, List<Plate> plates, String what) {
        if (!plates.isEmpty()) {
            words.add(titles(plates) + (plates.size() == 1 ? " is " : " are ") + what + ".");
        }
    }

    /** One or two titles, or how many there are. */
    static String titles(List<Plate> plates) {
        return plates.size() > 2
                ? plates.size() + " plates"
                : plates.stream().map(plate -> "\"" + plate.title() + "\"").collect(Collectors.joining(" and "));
    }
}
