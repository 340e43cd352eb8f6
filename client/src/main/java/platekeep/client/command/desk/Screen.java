package platekeep.client.command.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The window, as far as a command can open it. */
public interface Screen {

    /** Whether there is a display to open a window on. */
    boolean isThere();

    /**
     * Opens the window on these libraries, in addition to those that were open last; none are needed. Comes back when
     * the window is there.
     *
     * @param theme {@code light} or {@code dark}; empty: the one that was on last
     */
    void open(List<Path> libraries, Optional<String> theme) throws Trouble;
}
