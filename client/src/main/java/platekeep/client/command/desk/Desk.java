package platekeep.client.command.desk;

import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;

/**
 * What a command has around it.
 *
 * @param out where answers go, UTF-8
 * @param err where troubles go, UTF-8
 * @param here the current folder, against which files named on the command line are resolved
 * @param means what only some commands need
 */
public record Desk(PrintStream out, PrintStream err, Path here, Means means) {

    /** The file or folder that a command names. */
    public Path at(String name) throws Trouble {
        try {
            return here.resolve(name).normalize();
        } catch (InvalidPathException e) {
            throw new Trouble("\"" + name + "\" cannot be the name of a file or folder here.", e);
        }
    }

    /** The library in the folder that a command names, else the one around the current folder. */
    public Library library(Optional<String> folder) throws Trouble, LibraryException {
        return means.libraries().open(folder.isPresent() ? at(folder.get()) : here);
    }

    /** Prints lines as an answer. */
    public void say(List<String> lines) {
        lines.forEach(this::say);
    }

    /** Prints one line as an answer; a line ends with a line feed on every system. */
    public void say(String line) {
        out.print(line);
        out.print('\n');
    }

    /** Prints one line beside the answer. */
    public void warn(String line) {
        err.print(line);
        err.print('\n');
    }
}
