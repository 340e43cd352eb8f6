package platekeep.client.git.plates;

/** Which files of a library are what, by their place alone. */
public final class PlateFiles {
    /** The folder of the plates, in drawers. */
    public static final String PLATES = "plates";

    /** The folder of the series. */
    public static final String SERIES = "series";

    /** What the library says about itself. */
    public static final String FACTS = "library.json";

    private static final String TEXT = ".json";

    private PlateFiles() {}

    /** Whether a plate lies there: any text below {@code plates}, also one that somebody moved. */
    public static boolean isPlate(String path) {
        return path.startsWith(PLATES + "/") && path.endsWith(TEXT);
    }

    /** Whether a series lies there. */
    public static boolean isSeries(String path) {
        return path.startsWith(SERIES + "/") && path.endsWith(TEXT);
    }

    /** Whether it could be a picture beside a plate. */
    public static boolean isPicture(String path) {
        return path.startsWith(PLATES + "/") && (path.endsWith(".jpg") || path.endsWith(".png"));
    }
}
