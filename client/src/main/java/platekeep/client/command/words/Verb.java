package platekeep.client.command.words;

import java.util.Arrays;
import java.util.List;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Value;

/**
 * One verb of the command line. A verb declares the words it takes as fields, reads what it needs, changes all that it
 * changes or nothing, prints its answer and says by its exit code ({@link Exit}) what came of it.
 */
public abstract class Verb implements Answering {

    /** What the verb has around it. */
    protected final Desk desk;

    private final About about;
    private final Words words = new Words();
    private final Word help = flag("Show this help.", "-h", "--help");

    protected Verb(Desk desk, About about) {
        this.desk = desk;
        this.about = about;
    }

    @Override
    public final int answer(List<String> typed) throws Trouble, LibraryException {
        if (typed.contains("--help") || typed.contains("-h")) {
            desk.say(Help.lines(about, words.all()));
            return Exit.FINE;
        }
        try {
            words.read(typed);
        } catch (Trouble misspoken) {
            throw new Trouble(misspoken.getMessage() + " See \"platekeep " + about.name() + " --help\".");
        }
        return answer();
    }

    @Override
    public final About about() {
        return about;
    }

    /** Carries the verb out and returns its exit code. */
    protected abstract int answer() throws Trouble, LibraryException;

    /** Declares an option without a value. */
    protected final Word flag(String description, String... names) {
        return words.add(new Word(Arrays.asList(names), "", Word.Times.AT_MOST_ONCE, description));
    }

    /** Declares an option with a value. */
    protected final Word option(Word.Times times, String label, String description, String... names) {
        return words.add(new Word(Arrays.asList(names), label, times, description));
    }

    /** Declares what the verb is about. */
    protected final Word takes(Word.Times times, String label, String description) {
        return words.add(new Word(List.of(), label, times, description));
    }

    protected final void say(String line) {
        desk.say(line);
    }

    /** Prints a list as a JSON array, one element a line, so that plain tools can read it too. */
    protected final void sayJson(List<? extends Value> items) {
        desk.say(JsonText.array(items));
    }

    /** Prints an object as JSON. */
    protected final void sayJson(Value.Entries object) {
        desk.say(JsonText.object(object));
    }
}
