package platekeep.client.git.store;

import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.lib.ObjectChecker;

/** Which names of files a library may hold: those that every system can keep, and none that leads out of the folder. */
public final class FileNames {
    private static final int LONGEST = 240;

    private FileNames() {}

    /** Whether the path can be kept on every system: no {@code ..}, no {@code .git} in any spelling, no device name. */
    public static boolean allowed(String path) {
        try {
            checker().checkPath(path);
            return path.length() <= LONGEST && !path.startsWith("/");
        } catch (CorruptObjectException e) {
            return false;
        }
    }

    /** What looks through each object that comes from elsewhere, before anything here refers to it. */
    public static ObjectChecker checker() {
        return new ObjectChecker().setSafeForWindows(true).setSafeForMacOS(true);
    }
}
