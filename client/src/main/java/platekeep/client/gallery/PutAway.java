package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.ui.Dates;
import platekeep.model.plate.Plate;

/**
 * A plate that was put away.
 *
 * @param library its library
 * @param last it as it last was
 */
record PutAway(Library library, PlateVersion last) {

    /** All of them in these libraries; in the background. */
    static List<PutAway> read(List<Library> libraries) throws LibraryException {
        List<PutAway> all = new ArrayList<>();
        for (Library library : libraries) {
            library.putAway().forEach(version -> all.add(new PutAway(library, version)));
        }
        return all.stream().filter(one -> one.plate().isPresent()).toList();
    }

    Optional<Plate> plate() {
        return last.entry().flatMap(Entry::plate);
    }

    /** Title and the day on which it was last changed. */
    String words() {
        return plate().map(Plate::title).orElse("?") + ", last changed on "
                + Dates.day(last.version().on()) + " by "
                + last.version().inNameOf().name();
    }
}
