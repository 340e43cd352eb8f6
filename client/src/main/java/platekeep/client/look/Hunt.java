package platekeep.client.look;

import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;

/** One search from its beginning to its end, in the background. */
interface Hunt {

    /**
     * Searches.
     *
     * @param found hears what was found so far, all of it each time; on any thread
     * @return all that was found
     * @throws java.util.concurrent.CancellationException when the progress says so
     */
    Finds run(Progress progress, java.util.function.Consumer<Finds> found) throws LibraryException;
}
