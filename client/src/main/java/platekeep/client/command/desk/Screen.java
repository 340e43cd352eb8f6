package platekeep.client.command.desk;

import java.nio.file.Path;
import java.util.List;

/** The window, as far as a command can open it. */
public interface Screen {

    /** Whether there is a display to open a window on. */
    boolean isThere();

    /** Opens the window on these libraries, in addition to those that were open last; none are needed. */
    void open(List<Path> libraries);
}
