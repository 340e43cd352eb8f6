package platekeep.client.ui;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import platekeep.client.task.Tasks;
import platekeep.model.plate.Plate;

/** Has small pictures drawn in the background, each once, and tells when there is a new one to be seen. */
public final class Pictures {
    private final Tasks tasks;
    private final Thumbnails thumbnails;
    private final Runnable arrived;
    private final Set<String> asked = new HashSet<>();

    /**
     * @param arrived called on the event thread for each new picture
     */
    public Pictures(Tasks tasks, Thumbnails thumbnails, Runnable arrived) {
        this.tasks = tasks;
        this.thumbnails = thumbnails;
        this.arrived = arrived;
    }

    /**
     * The picture if it is at hand; else it is on its way. On the event thread.
     *
     * @param content the id of the plate's content
     */
    public Optional<BufferedImage> of(String content, Plate plate, Dimension size) {
        Optional<BufferedImage> ready = thumbnails.ready(content, size);
        String key = content + size;
        if (ready.isEmpty() && asked.add(key)) {
            tasks.run(progress -> thumbnails.of(content, plate, size), outcome -> {
                asked.remove(key);
                arrived.run();
            });
        }
        return ready;
    }
}
