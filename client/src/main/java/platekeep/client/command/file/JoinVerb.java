package platekeep.client.command.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Verb;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.model.join.ClashWords;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.join.JoinTrouble;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/** Joins two edits of one plate file; with {@code --git} in the place of Git's own merge of that file. */
public final class JoinVerb extends Verb {
    private static final int SIDES = 3;
    private static final int PATH = 4;

    private final Word files = takes(
            Times.AT_LEAST_ONCE, "FILE", "BASE, MINE and THEIRS, three plate files; with --git what Git hands over.");

    private final Word output = option(
            Times.AT_MOST_ONCE,
            "RESULT",
            "Where to write the joined plate; without it the plate is printed.",
            "-o",
            "--output");

    private final Word mineBy = option(Times.AT_MOST_ONCE, "NAME", "Whose edit MINE is.", "--mine-by");

    private final Word theirsBy = option(Times.AT_MOST_ONCE, "NAME", "Whose edit THEIRS is.", "--theirs-by");

    private final Word json = flag("Say what was settled and what is open as JSON.", "--json");

    private final Word git = flag("Work as Git's merge driver (%O %A %B %L %P); the result goes to %A.", "--git");

    public JoinVerb(Desk desk) {
        super(
                desk,
                new About(
                        "join",
                        "Joins two edits of one plate, row by row and cable by cable. What cannot be settled stays open in the result as data. A BASE without a byte in it is a plate that was not there before.",
                        "0 no clash, 1 open clashes, 2 trouble and nothing written.",
                        List.of("platekeep join before.json mine.json theirs.json -o joined.json")));
    }

    @Override
    protected int answer() throws Trouble {
        return git.given() ? answerGit() : answerFiles();
    }

    private int answerFiles() throws Trouble {
        if (files.values().size() != SIDES) {
            throw new Trouble("join needs three plate files, BASE, MINE and THEIRS; it was given "
                    + files.values().size() + ".");
        }
        if (json.given() && output.value().isEmpty()) {
            throw new Trouble("With --json, say with -o where the joined plate shall go.");
        }
        JoinedFiles joined = join(named(0, ""), named(1, ""), named(2, ""));
        if (output.value().isPresent()) {
            new PlateFile(output.value().get(), desk.at(output.value().get())).write(PlateText.bytes(joined.plate()));
            tell(joined, output.value().get());
        } else {
            desk.out().print(PlateText.write(joined.plate()));
        }
        return joined.plate().hasClashes() ? Exit.FOUND : Exit.FINE;
    }

    private PlateFile named(int index, String side) throws Trouble {
        String file = files.values().get(index);
        String name = side.isEmpty() || files.values().size() <= PATH
                ? file
                : files.values().get(PATH) + " (" + side + ")";
        return new PlateFile(name, desk.at(file));
    }

    private JoinedFiles join(PlateFile base, PlateFile mine, PlateFile theirs) throws Trouble {
        Optional<Plate> before = base.readOrNothing();
        try {
            return JoinedFiles.of(before, mine.read(), theirs.read(), new Hands(mineBy.value(), theirsBy.value()));
        } catch (JoinTrouble e) {
            throw new Trouble(e.getMessage());
        }
    }

    /** The joined plate alone, for whoever asks for no words. */
    private Plate plate(PlateFile base, PlateFile mine, PlateFile theirs) throws Trouble {
        Optional<Plate> before = base.readOrNothing();
        try {
            return Join.plate(before, mine.read(), theirs.read(), new Hands(mineBy.value(), theirsBy.value()));
        } catch (JoinTrouble e) {
            throw new Trouble(e.getMessage());
        }
    }

    private void tell(JoinedFiles joined, String result) {
        if (json.given()) {
            sayJson(JoinedJson.of(joined, result));
            return;
        }
        joined.settled().forEach(settled -> say("Settled: " + settled.words()));
        List<String> open = ClashWords.of(joined.plate());
        open.forEach(clash -> say("Open: " + clash));
        joined.faultWords().forEach(fault -> say("Check: " + fault));
        say(open.isEmpty() ? "Joined into " + result + "." : "Joined into " + result + ", " + count(open.size()) + ".");
    }

    private static String count(int clashes) {
        return clashes == 1 ? "1 clash is open" : clashes + " clashes are open";
    }

    /**
     * Git takes the content of %A for the joined file and any exit code but 0 for "not joined". In trouble neither side
     * may be left there, or somebody would add one of them by mistake.
     */
    private int answerGit() throws Trouble {
        PlateFile result = named(1, "yours");
        try {
            Plate joined = plate(named(0, "before"), result, named(2, "the partner's"));
            result.write(PlateText.bytes(joined));
            ClashWords.of(joined).forEach(clash -> desk.warn(title() + ": open: " + clash));
            return joined.hasClashes() ? Exit.FOUND : Exit.FINE;
        } catch (Trouble trouble) {
            List<String> lines = new ArrayList<>();
            lines.add("This is no plate: the two edits of " + title() + " could not be joined.");
            lines.addAll(trouble.sentences());
            lines.add("Both edits are still in the history. Put one of them here, or a plate joined by hand.");
            result.write((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
            throw trouble;
        }
    }

    private String title() {
        return files.values().size() > PATH
                ? files.values().get(PATH)
                : files.values().get(1);
    }
}
