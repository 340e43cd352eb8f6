package platekeep.client.command.file;

import java.util.ArrayList;
import java.util.List;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Verb;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;

/** Checks plate files: what cannot be worked, what will make trouble, what waits for a decision. */
public final class CheckVerb extends Verb {

    private final Word files = takes(Times.AT_LEAST_ONCE, "FILE", "Plate files.");

    private final Word json = flag("Answer as a JSON array of findings.", "--json");

    public CheckVerb(Desk desk) {
        super(
                desk,
                new About(
                        "check",
                        "Checks plates for what cannot be worked and what makes trouble.",
                        "0 no error, 1 errors, 2 a file cannot be read as a plate.",
                        List.of("platekeep check plates/k/kite-over-the-pier.json")));
    }

    @Override
    protected int answer() {
        List<FileFinding> findings = new ArrayList<>();
        boolean trouble = false;
        for (String file : files.values()) {
            try {
                findings.addAll(FileFinding.of(new PlateFile(file, desk.at(file))));
            } catch (Trouble t) {
                t.sentences().forEach(desk::warn);
                trouble = true;
            }
        }
        if (json.given()) {
            sayJson(findings.stream().map(FileFinding::value).toList());
        } else {
            findings.forEach(finding -> say(finding.sentence()));
            sayAllIsWell(findings, trouble);
        }
        boolean errors = findings.stream().anyMatch(FileFinding::isError);
        return trouble ? Exit.TROUBLE : errors ? Exit.FOUND : Exit.FINE;
    }

    private void sayAllIsWell(List<FileFinding> findings, boolean trouble) {
        if (findings.isEmpty() && !trouble) {
            say(
                    files.values().size() == 1
                            ? "Nothing to report."
                            : "Nothing to report in " + files.values().size() + " plates.");
        }
    }
}
