package platekeep.client.plate.edit;

/** What a press on the chart does. */
public enum Tool {
    /** Lays cables of the chosen colour. */
    PAINT("Paint", 'P'),
    /** Paints everything alike that hangs together. */
    FILL("Fill", 'F'),
    /** Takes cables away. */
    ERASE("Erase", 'E'),
    /** Chooses the colour that lies there. */
    PICK("Pick a colour", 'K'),
    /** Only moves the drawing cursor. */
    POINT("Point", 'V');

    private final String word;
    private final char key;

    Tool(String word, char key) {
        this.word = word;
        this.key = key;
    }

    public String word() {
        return word;
    }

    /** The key that takes the tool. */
    public char key() {
        return key;
    }
}
