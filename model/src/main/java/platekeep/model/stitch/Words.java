package platekeep.model.stitch;

/** How places and numbers are said to people. */
final class Words {

    private Words() {}

    /** Where the cables at these positions, both included, lie: {@code over pleats 12 to 15}. */
    static String over(int from, int to) {
        return "over pleats " + from + (to == from ? " and " : " to ") + (to + 1);
    }

    /** {@code 1 cable}, {@code 2 cables}. */
    static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** A last clause that counts what is not listed; empty for 0: {@code , and so does 1 other run of this figure}. */
    static String others(int number, String noun) {
        if (number == 0) {
            return "";
        }
        return (number == 1 ? "; so does 1 other " : "; so do " + number + " other ") + noun + (number == 1 ? "" : "s")
                + " of this figure";
    }
}
