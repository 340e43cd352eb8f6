package platekeep.client.plate.picture;

/** What a picture shows and how it is kept. */
enum Format {
    CHART_DOTS("The chart, as dots (PNG)", ".png"),
    CLOTH_DOTS("On the cloth, as dots (PNG)", ".png"),
    CHART_LINES("The chart, as lines for any size (SVG)", ".svg");

    private final String words;
    private final String ending;

    Format(String words, String ending) {
        this.words = words;
        this.ending = ending;
    }

    String words() {
        return words;
    }

    /** The ending of a file that holds it. */
    String ending() {
        return ending;
    }
}
