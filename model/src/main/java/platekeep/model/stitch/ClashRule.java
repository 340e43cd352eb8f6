package platekeep.model.stitch;

import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;

/** What a join left open is an error until it is settled. */
final class ClashRule {

    private static final String RULE = "open-clash";

    private ClashRule() {}

    static void find(Plate plate, Findings findings) {
        Map<RowId, Integer> index = Kinds.indexOf(plate.rows());
        for (Clash clash : plate.clashes()) {
            findings.add(new Finding(Severity.ERROR, RULE, row(clash, plate, index), pleat(clash), sentence(clash)));
        }
    }

    private static Optional<Integer> row(Clash clash, Plate plate, Map<RowId, Integer> index) {
        return clash.textAt("row")
                .or(() -> clash.textAt("after"))
                .filter(RowId::isRowId)
                .map(text -> index.get(new RowId(text)))
                .map(plate::numberFromBottom)
                .or(() -> clash.numberAt("row"));
    }

    private static Optional<Integer> pleat(Clash clash) {
        return clash.what() == Clash.What.LINE
                ? Optional.empty()
                : clash.numberAt("from").or(() -> clash.numberAt("pleat"));
    }

    private static String sentence(Clash clash) {
        return switch (clash.what()) {
            case CABLES -> over(clash) + " were changed in two ways; choose one or paint them.";
            case ROW -> "This row was taken out by one and changed by the other; keep it or put it away.";
            case ROWS -> "Different rows were put in at this place; choose whose, both or neither.";
            case TWINS -> "Rows here are alike and without ids, so it cannot be told which was meant; look at them.";
            case ORDER -> "This row was moved to two places; choose one.";
            case PLEATS ->
                "The chart was cut off by one where the other painted; choose its "
                        + (clash.textAt("end").orElse("").equals("from") ? "first" : "last") + " pleat.";
            case FIELD -> "The " + clash.textAt("field").orElse("plate") + " was changed in two ways; choose one.";
            case COLOUR ->
                "The colour with the key " + clash.textAt("key").orElse("") + " was changed in two ways; choose one.";
            case START -> "The start here was changed in two ways; choose one.";
            case LINE ->
                "The geometric line on gathering row " + clash.textAt("on").orElse("")
                        + " was changed in two ways; choose one.";
            case MARK ->
                "The " + clash.textAt("stitch").orElse("stitch") + " here was changed in two ways; choose one.";
            case NOTION -> "The notion " + clash.textAt("kind").orElse("") + " was changed in two ways; choose one.";
            case REMARK -> "A remark was changed in two ways; choose one.";
            case FIGURE -> "The figure here was moved in two ways; choose one.";
        };
    }

    private static String over(Clash clash) {
        int from = clash.numberAt("from").orElse(0);
        return "The cables " + Words.over(from, clash.numberAt("to").orElse(from));
    }
}
