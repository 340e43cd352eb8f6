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
        return of(new PlateSource(content, plate), size);
    }

    /** The same for anything that can be seen. */
    public Optional<BufferedImage> of(PictureSource source, Dimension size) {
        Optional<BufferedImage> ready = thumbnails.ready(source.key(), size);
        String key = source.key() + size;
        if (ready.isEmpty() && asked.add(key)) {
            tasks.run(progress -> thumbnails.of(source, size), outcome -> {
                asked.remove(key);
                arrived.run();
            });
        }
        return ready;
    }

    /** The picture at most as large as a size, without a ground. */
    public Optional<BufferedImage> fitted(PictureSource source, Dimension into) {
        return of(new Fitted(source), into);
    }

    /** A picture without a ground, kept apart from the one with it. */
    private record Fitted(PictureSource source) implements PictureSource {
        @Override
        public String key() {
            return "fitted " + source.key();
        }

        @Override
        public BufferedImage fitted(Dimension into) {
            return source.fitted(into);
        }

        @Override
        public BufferedImage drawn(Dimension size) {
            return source.fitted(size);
        }
    }
}
