package platekeep.client.command;

import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import platekeep.client.command.collect.CarryVerb;
import platekeep.client.command.collect.ScanVerb;
import platekeep.client.command.collect.SeriesVerb;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.file.CheckVerb;
import platekeep.client.command.file.CompareVerb;
import platekeep.client.command.file.JoinVerb;
import platekeep.client.command.keep.BringBackVerb;
import platekeep.client.command.keep.HistoryVerb;
import platekeep.client.command.keep.LikeVerb;
import platekeep.client.command.keep.ListVerb;
import platekeep.client.command.keep.NameVerb;
import platekeep.client.command.keep.PutAwayVerb;
import platekeep.client.command.keep.SaveVerb;
import platekeep.client.command.keep.ShowVerb;
import platekeep.client.command.keep.TagVerb;
import platekeep.client.command.partner.BringVerb;
import platekeep.client.command.partner.CreateVerb;
import platekeep.client.command.partner.HandVerb;
import platekeep.client.command.partner.SendVerb;
import platekeep.client.command.partner.SetUpVerb;
import platekeep.client.command.partner.ShareVerb;
import platekeep.client.command.words.Answering;
import platekeep.client.library.LibraryException;

/**
 * The verbs of the command line: finds the one that is asked for, carries it out and turns whatever goes wrong into a
 * sentence and an exit code. Only the verb that is asked for is loaded, so that a command answers at once.
 */
public final class Verbs {

    /** All verbs in the order of a day's work. */
    public static final List<String> NAMES = List.of(
            "list",
            "like",
            "show",
            "history",
            "compare",
            "join",
            "check",
            "tag",
            "scan",
            "series",
            "carry",
            "save",
            "name",
            "put-away",
            "bring-back",
            "bring",
            "send",
            "share",
            "create",
            "hand",
            "open",
            "setup-git");

    private final Desk desk;

    public Verbs(Desk desk) {
        this.desk = desk;
    }

    /** Carries out the command that these words make, and returns its exit code. */
    public int run(String... words) {
        try {
            return dispatch(List.of(words));
        } catch (Trouble trouble) {
            trouble.sentences().forEach(desk::warn);
            logCause(trouble);
        } catch (LibraryException failure) {
            desk.warn(failure.getMessage());
            logCause(failure);
        } catch (RuntimeException | Error bug) {
            log().log(Level.SEVERE, "A command failed: " + String.join(" ", words), bug);
            desk.warn("Something went wrong inside Platekeep, and the command was given up."
                    + " What happened is written down in the log.");
        } finally {
            desk.out().flush();
            desk.err().flush();
        }
        return Exit.TROUBLE;
    }

    private int dispatch(List<String> words) throws Trouble, LibraryException {
        String name = words.isEmpty() ? "--help" : words.get(0);
        switch (name) {
            case "--help", "-h", "help" -> {
                desk.say(new Overview(desk).lines());
                return Exit.FINE;
            }
            case "--version", "-V" -> {
                desk.say("platekeep " + Overview.version());
                return Exit.FINE;
            }
            case "--sample", "--sample-folder", "--tour" -> {
                return new SampleVerb(desk).answer(words);
            }
            default -> {
                Answering verb = verb(name)
                        .orElseThrow(() -> new Trouble(
                                "There is no verb \"" + name + "\". \"platekeep --help\" lists the verbs."));
                return verb.answer(words.subList(1, words.size()));
            }
        }
    }

    /**
     * The verb of this name. A switch and not a table, and an interface as its type, so that neither the switch nor the
     * check of its byte code loads any other verb's class.
     */
    Optional<Answering> verb(String name) {
        return Optional.ofNullable(
                switch (name) {
                    case "list" -> new ListVerb(desk);
                    case "like" -> new LikeVerb(desk);
                    case "show" -> new ShowVerb(desk);
                    case "history" -> new HistoryVerb(desk);
                    case "compare" -> new CompareVerb(desk);
                    case "join" -> new JoinVerb(desk);
                    case "check" -> new CheckVerb(desk);
                    case "tag" -> new TagVerb(desk);
                    case "scan" -> new ScanVerb(desk);
                    case "series" -> new SeriesVerb(desk);
                    case "carry" -> new CarryVerb(desk);
                    case "save" -> new SaveVerb(desk);
                    case "name" -> new NameVerb(desk);
                    case "put-away" -> new PutAwayVerb(desk);
                    case "bring-back" -> new BringBackVerb(desk);
                    case "bring" -> new BringVerb(desk);
                    case "send" -> new SendVerb(desk);
                    case "share" -> new ShareVerb(desk);
                    case "create" -> new CreateVerb(desk);
                    case "hand" -> new HandVerb(desk);
                    case "open" -> new OpenVerb(desk);
                    case "setup-git" -> new SetUpVerb(desk);
                    default -> null;
                });
    }

    private static void logCause(Exception e) {
        if (e.getCause() != null) {
            log().log(Level.INFO, e.getMessage(), e.getCause());
        }
    }

    /** Asked for only when there is something to log, since setting logging up costs time. */
    private static Logger log() {
        return Logger.getLogger(Verbs.class.getName());
    }
}
