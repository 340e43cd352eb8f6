package platekeep.model.plate;

import java.util.List;

/**
 * Plates that belong together, in order; a plate may be in several series.
 *
 * @param id a UUID, given once
 * @param title not blank
 * @param plates plate ids in order
 * @param colours the shared colours
 * @param notes free text
 */
public record Series(
        String id, String title, List<String> plates, Palette colours, List<String> notes, Unknown unknown) {

    public Series {
        title = CodePoints.nfc(title);
        plates = List.copyOf(plates);
        notes = CodePoints.nfc(notes);
    }
}
