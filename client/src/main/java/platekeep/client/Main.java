package platekeep.client;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import platekeep.client.command.Verbs;
import platekeep.client.command.desk.Desk;

/** Where the program begins: without words it opens its window, with words it is a command line. */
public final class Main {

    private Main() {}

    public static void main(String... words) {
        Folders folders = Folders.ofUser();
        LogFile.install();
        Parts parts = new Parts(folders);
        Desk desk = new Desk(
                stream(FileDescriptor.out),
                stream(FileDescriptor.err),
                Path.of("").toAbsolutePath(),
                parts);
        int exit = new Verbs(desk).run(words.length == 0 ? new String[] {"open"} : words);
        if (!parts.windowIsOpen()) {
            System.exit(exit);
        }
    }

    private static PrintStream stream(FileDescriptor to) {
        return new PrintStream(new BufferedOutputStream(new FileOutputStream(to)), false, StandardCharsets.UTF_8);
    }
}
