package platekeep.client.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;

/**
 * Plates that are to be carried, as their library has them saved.
 *
 * @param from their library
 * @param seen its newest version
 * @param plates in the order in which they were chosen
 * @param pictures by plate
 * @param drawn ids of those that are changed and not saved
 */
record Load(
        Library from,
        Optional<String> seen,
        List<Plate> plates,
        Map<String, List<Picture>> pictures,
        List<String> drawn) {

    Load {
        plates = List.copyOf(plates);
        drawn = List.copyOf(drawn);
    }

    /** Reads them; in the background. */
    static Load read(Library from, List<String> ids, List<Drafts> drafts) throws LibraryException {
        Optional<String> seen = from.newest().map(Version::id);
        List<Plate> plates = new ArrayList<>();
        List<String> drawn = new ArrayList<>();
        for (String id : ids) {
            from.plate(id).flatMap(Entry::plate).ifPresent(plates::add);
            if (drafts.stream().anyMatch(kept -> kept.of(from.folder(), id).isPresent())) {
                drawn.add(id);
            }
        }
        if (plates.isEmpty()) {
            throw new LibraryException("This plate is in no version of \"" + from.name()
                    + "\" yet. Save it first, then carry it over; nothing was changed.");
        }
        Map<String, List<Picture>> pictures = from.pictures().stream()
                .filter(picture -> ids.contains(picture.plateId()))
                .collect(Collectors.groupingBy(Picture::plateId));
        return new Load(from, seen, plates, pictures, drawn);
    }

    List<Picture> picturesOf(Plate plate) {
        return pictures.getOrDefault(plate.id(), List.of());
    }

    boolean isDrawn(Plate plate) {
        return drawn.contains(plate.id());
    }
}
