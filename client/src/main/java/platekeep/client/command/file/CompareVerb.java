package platekeep.client.command.file;

import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Verb;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.model.compare.Comparison;
import platekeep.model.plate.Plate;

/** Compares two plate files row by row, in words or as JSON; with {@code --git} in the place of Git's own. */
public final class CompareVerb extends Verb {

    private final Word files =
            takes(Times.AT_LEAST_ONCE, "FILE", "OLD and NEW, two plate files; with --git what Git hands over.");

    private final Word json = flag("Answer as JSON.", "--json");

    private final Word git = flag("Work as Git's external diff.", "--git");

    public CompareVerb(Desk desk) {
        super(
                desk,
                new About(
                        "compare",
                        "Says what changed from one plate to another, row by row.",
                        "0 same, 1 different, 2 trouble; with --git always 0.",
                        List.of("platekeep compare kite-in-spring.json kite-in-autumn.json")));
    }

    @Override
    protected int answer() throws Trouble {
        if (git.given()) {
            return answerGit();
        }
        if (files.values().size() != 2) {
            throw new Trouble("compare needs two plate files, the old one and the new one; it was given "
                    + files.values().size() + ".");
        }
        Plate before = plate(0).read();
        Plate after = plate(1).read();
        Comparison comparison = Comparison.of(before, after);
        if (json.given()) {
            sayJson(ComparisonJson.of(before, after, comparison));
        } else {
            desk.say(comparison.same() ? List.of("The two plates are the same.") : comparison.words());
        }
        return comparison.same() ? Exit.FINE : Exit.FOUND;
    }

    private PlateFile plate(int index) throws Trouble {
        return new PlateFile(files.values().get(index), desk.at(files.values().get(index)));
    }

    /** Whatever happens is told and the exit code is 0, since Git takes any other for a reason to stop. */
    private int answerGit() {
        HandedOver handed = HandedOver.of(files.values());
        say(handed.title());
        if (handed.open()) {
            say("  Not joined yet.");
            return Exit.FINE;
        }
        try {
            Optional<Plate> before = at(handed.oldFile());
            Optional<Plate> after = at(handed.newFile());
            wordsOf(before, after).forEach(words -> say("  " + words));
        } catch (Trouble t) {
            t.sentences().forEach(sentence -> say("  " + sentence));
        }
        return Exit.FINE;
    }

    private Optional<Plate> at(String file) throws Trouble {
        return HandedOver.NOTHING.equals(file) ? Optional.empty() : new PlateFile(file, desk.at(file)).readOrNothing();
    }

    private static List<String> wordsOf(Optional<Plate> before, Optional<Plate> after) {
        if (before.isPresent() && after.isPresent()) {
            Comparison comparison = Comparison.of(before.get(), after.get());
            return comparison.same() ? List.of("The same plate.") : comparison.words();
        }
        return after.map(plate -> List.of("A new plate: " + plate.title() + "."))
                .orElseGet(() -> before.map(plate -> List.of("The plate was put away: " + plate.title() + "."))
                        .orElse(List.of("Nothing on either side.")));
    }
}
