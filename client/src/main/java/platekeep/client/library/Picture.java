package platekeep.client.library;

/**
 * A picture that lies beside a plate: the paper it was drawn on, or the work as it was stitched.
 *
 * @param plateId the plate's id
 * @param path where the file lies in the library, with a name made from its bytes, so that two pictures never collide
 * @param content the id of its bytes
 */
public record Picture(String plateId, Kind kind, String path, String content) {

    /** What it shows. */
    public enum Kind {
        SCAN("scan"),
        PHOTO("photo");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word in the file's name. */
        public String word() {
            return word;
        }
    }
}
