package platekeep.client.git.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.TransportException;
import platekeep.client.library.LibraryException;

/** Says in plain words why the disk or the folder did not do what was asked. */
public final class Trouble {
    private Trouble() {}

    /**
     * @param failed what did not happen, as the start of a sentence: "The version was not saved"
     * @param untouched what is as it was, as a sentence: "Nothing was changed."
     */
    public static LibraryException of(String failed, String untouched, IOException cause) {
        return new LibraryException(failed + ": " + reason(cause) + " " + untouched, cause);
    }

    private static String reason(Throwable cause) {
        if (cause instanceof StoreLock.Busy || cause instanceof LockFailedException) {
            return "another program is writing in this folder. Wait a moment and try again.";
        }
        if (cause instanceof TreeFiles.TooMuch) {
            return cause.getMessage() + ", which is more than a library holds.";
        }
        if (cause instanceof AccessDeniedException || cause instanceof ReadOnlyFileSystemException) {
            return "writing or reading is not allowed there. Look at the folder's permissions.";
        }
        if (cause instanceof NoSuchFileException missing) {
            return missing.getFile() + " is not there any more.";
        }
        if (cause instanceof WorkTree.LinkOnTheWay) {
            return cause.getMessage() + ". Take it out of the way and try again.";
        }
        if (cause instanceof OwnFolder.LeadsOut) {
            return cause.getMessage() + ". Ask whoever gave it to you for a copy without that.";
        }
        if (isFull(cause)) {
            return "the disk is full. Make room and try again.";
        }
        if (cause instanceof MissingObjectException || cause instanceof CorruptObjectException) {
            return "a part of the stored versions is damaged. The shared copy or a parcel may hold it whole.";
        }
        if (cause instanceof TransportException && cause.getCause() != null) {
            return reason(cause.getCause());
        }
        return "the disk did not do what was asked. Is it still connected?";
    }

    private static boolean isFull(Throwable cause) {
        String text = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
        String reason = cause instanceof FileSystemException system ? String.valueOf(system.getReason()) : "";
        return (text + reason.toLowerCase(Locale.ROOT)).contains("no space left")
                || text.contains("not enough space")
                || text.contains("disk quota exceeded");
    }
}
