package platekeep.client.library;

/**
 * The world failed: a disk is full, a folder is gone, a shared copy is unreadable. The message is one or more plain
 * sentences for the user: what happened, what is untouched, what to do. The cause goes to the log, never to the screen.
 */
public final class LibraryException extends Exception {
    private static final long serialVersionUID = 1L;

    public LibraryException(String sentence) {
        super(sentence);
    }

    public LibraryException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
