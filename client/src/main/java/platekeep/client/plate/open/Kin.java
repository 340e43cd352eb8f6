package platekeep.client.plate.open;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.task.Progress;
import platekeep.client.ui.Dates;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Plate;

/**
 * The plates of a library that a plate was started from, or that were started from it.
 *
 * @param from the one that it was started from; empty when there is none or it is not in this library
 * @param here those that were started from it, by title
 */
public record Kin(Optional<Relative> from, List<Relative> here) {
    public static final Kin NONE = new Kin(Optional.empty(), List.of());

    /**
     * Another plate.
     *
     * @param words its title, and where it is known the day of the version
     */
    public record Relative(String plateId, String words) {}

    public Kin {
        here = List.copyOf(here);
    }

    /** Reads it; in the background. */
    public static Kin read(Library library, Plate plate, Progress progress) throws LibraryException {
        List<Relative> here = new ArrayList<>();
        Optional<Relative> from = Optional.empty();
        for (Entry entry : library.list(progress)) {
            Optional<Plate> other = entry.plate();
            if (other.isPresent()) {
                Plate o = other.get();
                if (plate.fromPlate().filter(f -> f.id().equals(o.id())).isPresent()) {
                    from = Optional.of(new Relative(
                            o.id(), o.title() + day(library, plate.fromPlate().get())));
                } else if (o.fromPlate().filter(f -> f.id().equals(plate.id())).isPresent()) {
                    here.add(new Relative(o.id(), o.title()));
                }
            }
        }
        here.sort(java.util.Comparator.comparing(Relative::words));
        return new Kin(from, here);
    }

    private static String day(Library library, FromPlate from) throws LibraryException {
        return library.history(from.id()).stream()
                .filter(step -> step.version().id().equals(from.version()))
                .findFirst()
                .map(PlateVersion::version)
                .map(version -> ", version of " + Dates.shortDay(version.on()))
                .orElse("");
    }
}
