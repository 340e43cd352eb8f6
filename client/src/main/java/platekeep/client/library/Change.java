package platekeep.client.library;

import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.text.LibraryFacts;

/** One file's part in a version to be saved; a version is a list of these, saved all together or not at all. */
public sealed interface Change {

    /** Put this plate there; its id says which plate it is, new or old, so no path is asked for. */
    record PutPlate(Plate plate) implements Change {}

    /** Put the plate with this id away: it leaves the library and stays in its history. */
    record PutAway(String plateId) implements Change {}

    /** Put this series there, new or old by its id. */
    record PutSeries(Series series) implements Change {}

    /**
     * Put a picture beside a plate that is there or comes with the same saving. The same bytes beside the same plate are
     * the same picture; anything but JPEG and PNG is refused.
     */
    record PutPicture(String plateId, Picture.Kind kind, byte[] bytes) implements Change {
        public PutPicture {
            bytes = bytes.clone();
        }

        @Override
        public byte[] bytes() {
            return bytes.clone();
        }
    }

    /** Put a picture away; the plate that it lies beside stays. */
    record PutPictureAway(Picture picture) implements Change {}

    /** Put the series with this id away; its plates stay. */
    record PutSeriesAway(String seriesId) implements Change {}

    /** Change what the library says about itself. */
    record PutFacts(LibraryFacts facts) implements Change {}
}
