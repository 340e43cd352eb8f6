package platekeep.client.paper.bring;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;

/**
 * Pictures made ready for a library without anybody being asked.
 *
 * @param ready in the order of their names
 * @param leftOut a sentence for each file that is left out
 */
public record Intake(List<Sheet> ready, List<String> leftOut) {

    public Intake {
        ready = List.copyOf(ready);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A picture.
     *
     * @param title made of the file's name
     */
    public record Sheet(String title, byte[] bytes) {}

    /** Reads files, and all pictures in folders. */
    public static Intake read(Library library, List<Path> files, BringView.Size size) throws LibraryException {
        Batch batch = Batch.read(library, files, Progress.NONE);
        batch.refuseTooMuch(size);
        List<Sheet> ready = new ArrayList<>();
        for (Prepared one : batch.ready()) {
            ready.add(new Sheet(ScanFiles.title(one.file()), one.bytes(size)));
        }
        return new Intake(ready, batch.leftOut());
    }
}
