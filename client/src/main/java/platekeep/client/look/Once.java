package platekeep.client.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.library.PlateVersion;
import platekeep.client.task.Progress;
import platekeep.model.look.Mirror;
import platekeep.model.plate.Plate;

/** What is no more, as hits: with its version, and whether its plate is still there. */
final class Once {
    private final Library library;

    Once(Library library) {
        this.library = library;
    }

    /**
     * Why something is a hit.
     *
     * @param places where in it a motif lies
     * @param then hears the hit
     */
    record Why(String words, Mirror mirror, List<Outlined.Place> places, Consumer<Hit> then) {
        Why(String words, Mirror mirror, Consumer<Hit> then) {
            this(words, mirror, List.of(), then);
        }
    }

    /** Reads texts and makes hits of them. */
    void hits(List<PastPlate> which, Progress progress, BiFunction<PastPlate, Plate, Why> why) throws LibraryException {
        Map<PastPlate, Entry> read = new ConcurrentHashMap<>();
        library.readPast(which, progress, read::put);
        for (PastPlate one : which) {
            Optional<Plate> plate = Optional.ofNullable(read.get(one)).flatMap(Entry::plate);
            Optional<PlateVersion> version = version(one);
            if (plate.isPresent() && version.isPresent()) {
                Why because = why.apply(one, plate.get());
                because.then()
                        .accept(new Hit(
                                library,
                                plate.get(),
                                one.content(),
                                version,
                                library.plate(one.plateId()).isPresent(),
                                because.words(),
                                because.mirror(),
                                because.places(),
                                0));
            }
        }
    }

    private Optional<PlateVersion> version(PastPlate one) throws LibraryException {
        List<PlateVersion> history = new ArrayList<>(library.history(one.plateId()));
        return history.stream()
                .filter(step -> step.version().id().equals(one.versionId()))
                .findFirst();
    }
}
