package platekeep.client.git.partner;

import java.nio.file.Path;
import java.util.Map;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.library.LibraryException;

/** Why something is not exchanged with the partner, in sentences. */
final class Refusals {
    private Refusals() {}

    /** Refuses files that are links or folders of somebody else's: following them could lead anywhere. */
    static void refuseUnplain(TreeFiles files) throws LibraryException {
        for (Map.Entry<String, FileAt> file : files.files().entrySet()) {
            if (!file.getValue().isPlain()) {
                throw notPlain(file.getKey());
            }
        }
    }

    private static LibraryException notPlain(String path) {
        return new LibraryException("One of the two libraries holds something at " + path
                + " that is no plain file. Take it out there first. Nothing was brought in.");
    }

    static LibraryException newer(String path) {
        return new LibraryException("Both sides changed " + path + ", and one of them with a newer version of Platekeep"
                + " than this one. Bring it in with that newer version. Nothing was brought in.");
    }

    static LibraryException notJoined(String path, RuntimeException cause) {
        return new LibraryException(
                "The two edits of " + path + " cannot be joined: " + cause.getMessage() + " Nothing was brought in.",
                cause);
    }

    static LibraryException noneChosen() {
        return new LibraryException("No folder of a shared copy was chosen yet. Choose one first.");
    }

    static LibraryException notThere(Path folder) {
        return new LibraryException("The shared copy is not at " + folder
                + ". Is the drive connected and the folder still there? Nothing was changed.");
    }

    static LibraryException somethingElse(Path folder) {
        return new LibraryException(
                folder + " holds something that is no shared copy. Choose an empty folder. Nothing was changed.");
    }

    static LibraryException otherLibrary(Path folder) {
        return new LibraryException("The folder " + folder
                + " holds the shared copy of another library. Choose another folder. Nothing was changed.");
    }

    static LibraryException inside(Path folder) {
        return new LibraryException("The folder " + folder
                + " lies in the library itself. Choose a folder outside of it. Nothing was changed.");
    }

    static LibraryException bringInFirst() {
        return new LibraryException("Your partner has sent versions that are not here yet. Bring them in first, then"
                + " send. Nothing was sent.");
    }

    static LibraryException movedMeanwhile(String title) {
        return new LibraryException("\"" + title + "\" was changed here since you looked at what came. Look again, then"
                + " bring in. Nothing was changed; what you settled is still in the window.");
    }

    static LibraryException namesNotTakenOver(Exception cause) {
        return new LibraryException(
                "Your partner's versions were brought in and are safe in your history. Only the names that your partner"
                        + " gave to versions could not all be taken over; they are, with the next bringing in or sending.",
                cause);
    }

    static LibraryException notLookedAt() {
        return new LibraryException(
                "There is nothing to bring in, or it was never looked at. Look at the shared copy first.");
    }

    static LibraryException empty(Path folder) {
        return new LibraryException(
                "The shared copy in " + folder + " holds no library yet. Your partner has to send first.");
    }
}
