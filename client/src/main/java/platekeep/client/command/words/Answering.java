package platekeep.client.command.words;

import java.util.List;
import platekeep.client.command.desk.Trouble;
import platekeep.client.library.LibraryException;

/**
 * What can be asked of every verb. An interface, so that a table of verbs can be checked by the virtual machine without
 * loading the class of each.
 */
public interface Answering {

    /**
     * Answers a command.
     *
     * @param typed what was typed after the verb
     * @return the exit code
     */
    int answer(List<String> typed) throws Trouble, LibraryException;

    /** What the verb is for. */
    About about();
}
