package platekeep.client.command.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import platekeep.client.command.desk.Trouble;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;
import platekeep.model.stitch.Check;
import platekeep.model.stitch.CheckSettings;
import platekeep.model.stitch.Finding;
import platekeep.model.stitch.Severity;
import platekeep.model.text.Problem;
import platekeep.model.text.Reading;

/**
 * A finding about a plate in a file.
 *
 * @param file the file as the command names it
 * @param severity how bad it is
 * @param rule the rule's id
 * @param row counted from the bottom; empty when it is about no row
 * @param pleat where in the row; empty when it is about no pleat
 * @param text one sentence
 */
record FileFinding(
        String file, Severity severity, String rule, Optional<Integer> row, Optional<Integer> pleat, String text) {

    /**
     * All findings about a file: what the reader put right on the way, then what the check says of the plate.
     *
     * @throws Trouble when the file cannot be read as a plate
     */
    static List<FileFinding> of(PlateFile file) throws Trouble {
        Reading<Plate> reading = file.reading();
        if (reading instanceof Reading.Bad<Plate> bad) {
            throw Trouble.of(bad.problems());
        }
        Reading.Good<Plate> good = (Reading.Good<Plate>) reading;
        List<FileFinding> findings = new ArrayList<>();
        good.mended().forEach(problem -> findings.add(mended(file.name(), problem)));
        Check.of(good.read(), CheckSettings.DEFAULT).forEach(finding -> findings.add(found(file.name(), finding)));
        return findings;
    }

    private static FileFinding mended(String file, Problem problem) {
        return new FileFinding(
                file,
                Severity.WARNING,
                problem.rule(),
                problem.row(),
                problem.pleat(),
                "line " + problem.line() + ": " + problem.text());
    }

    private static FileFinding found(String file, Finding finding) {
        return new FileFinding(
                file, finding.severity(), finding.rule(), finding.row(), finding.pleat(), finding.text());
    }

    boolean isError() {
        return severity == Severity.ERROR;
    }

    /** The finding in one line: {@code kite.json: error: row 3, pleat 9: ... (rule)}. */
    String sentence() {
        StringBuilder out = new StringBuilder(file).append(": ").append(severityWord());
        row.ifPresent(r -> out.append(", row ").append(r));
        pleat.ifPresent(p -> out.append(", pleat ").append(p));
        return out.append(": ")
                .append(text)
                .append(" [")
                .append(rule)
                .append(']')
                .toString();
    }

    Value value() {
        return new Value.Builder()
                .put("file", file)
                .put("severity", severityWord())
                .put("rule", rule)
                .put("row", row.map(Value::of).orElse(Value.NOTHING))
                .put("pleat", pleat.map(Value::of).orElse(Value.NOTHING))
                .put("text", text)
                .build();
    }

    private String severityWord() {
        return severity.name().toLowerCase(Locale.ROOT);
    }
}
