package platekeep.client.command.desk;

import java.util.List;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;

/** Copies and moves plates from one library to another. */
public interface Carrier {

    /**
     * Looks at what carrying comes to; nothing is changed yet.
     *
     * @param ids of plates in {@code from}
     */
    Load load(Library from, List<String> ids, Library to, Way way) throws LibraryException;

    /** Whether the plates stay. */
    enum Way {
        COPY,
        MOVE
    }

    /** What is to be carried. */
    interface Load {

        /** What happens and what to mind, a sentence each. */
        List<String> words();

        /** Ids of plates that are in the other library afterwards, those that it has just so too. */
        List<String> carried();

        /** Ids of plates that are there already and different, or drawn on and not saved: they are left as they are. */
        List<String> left();

        /** Whether anything would happen. */
        boolean doesSomething();

        /** Carries them; returns the reason of the versions that were made. */
        String carry() throws LibraryException;
    }
}
