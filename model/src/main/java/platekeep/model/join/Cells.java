package platekeep.model.join;

/** The three-way rule for one thing: what one side changed holds, what both changed alike holds. */
final class Cells {
    /** Both sides want something else. */
    static final char TORN = 0xFFFF;

    private Cells() {}

    static char join(char base, char mine, char theirs) {
        if (mine == theirs || theirs == base) {
            return mine;
        }
        return mine == base ? theirs : TORN;
    }
}
