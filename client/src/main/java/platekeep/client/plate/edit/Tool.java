package platekeep.client.plate.edit;

/** What a press on the chart does. */
public enum Tool {
    /** Lays cables of the chosen colour. */
    PAINT("Paint", 'P', Use.COLOUR),
    /** Lays a run of cables in one row. */
    RUN("Run in the row", 'R', Use.COLOUR),
    /** Lays a straight line of cables. */
    LINE("Line", 'L', Use.COLOUR),
    /** Lays a block of cables from corner to corner. */
    BLOCK("Block", 'B', Use.COLOUR),
    /** Paints everything alike that hangs together. */
    FILL("Fill", 'F', Use.COLOUR),
    /** Paints the outermost cables of a figure. */
    RIM("Rim of a figure", 'I', Use.COLOUR),
    /** Takes cables away. */
    ERASE("Erase", 'E', Use.OTHER),
    /** Chooses the colour that lies there. */
    PICK("Pick a colour", 'K', Use.OTHER),
    /** Chooses a region, and moves what is chosen. */
    REGION("Choose a region", 'G', Use.CHOICE),
    /** Chooses a figure, and moves what is chosen. */
    FIGURE("Choose a figure", 'U', Use.CHOICE),
    /** Puts single stitches on, and moves them and geometric lines. */
    STITCH("Single stitches and lines", 'S', Use.OTHER),
    /** Places geometric lines from pleat to pleat, and moves them. */
    GATHER("Geometric lines", 'N', Use.OTHER),
    /** Only moves the drawing cursor. */
    POINT("Point", 'V', Use.OTHER);

    private enum Use {
        COLOUR,
        CHOICE,
        OTHER
    }

    private final String word;
    private final char key;
    private final Use use;

    Tool(String word, char key, Use use) {
        this.word = word;
        this.key = key;
        this.use = use;
    }

    public String word() {
        return word;
    }

    /** The key that takes the tool. */
    public char key() {
        return key;
    }

    /** Whether it paints with the chosen colour. */
    public boolean paints() {
        return use == Use.COLOUR;
    }

    /** Whether it chooses a part of the picture. */
    public boolean chooses() {
        return use == Use.CHOICE;
    }

    /** Whether it needs two places when it is used by keys. */
    public boolean hasTwoEnds() {
        return spans() || this == GATHER;
    }

    /** Whether it goes from one place to another, so that only the two ends count. */
    public boolean spans() {
        return this == RUN || this == LINE || this == BLOCK || this == REGION;
    }
}
