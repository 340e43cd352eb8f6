package platekeep.client.gallery;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Thumbnails;

/** Has small pictures drawn in the background, each once, and tells when there is a new one to be seen. */
final class Pictures {
    private final Tasks tasks;
    private final Thumbnails thumbnails;
    private final Runnable arrived;
    private final Set<String> asked = new HashSet<>();

    Pictures(Tasks tasks, Thumbnails thumbnails, Runnable arrived) {
        this.tasks = tasks;
        this.thumbnails = thumbnails;
        this.arrived = arrived;
    }

    /** The card's picture if it is at hand; else it is on its way. */
    Optional<BufferedImage> of(Card card, Dimension size) {
        Optional<BufferedImage> ready = thumbnails.ready(card.content(), size);
        String key = card.content() + size;
        if (ready.isEmpty() && card.plate().isPresent() && asked.add(key)) {
            tasks.run(progress -> thumbnails.of(card.content(), card.plate().get(), size), outcome -> {
                asked.remove(key);
                arrived.run();
            });
        }
        return ready;
    }
}
