package platekeep.client.ui;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.client.task.Tasks;
import platekeep.model.plate.Plate;

/**
 * Has small pictures drawn in the background, each once, and tells when there is a new one to be seen. What was looked at
 * last comes first: pictures that were scrolled past wait behind those on the screen, and are forgotten when there are too
 * many of them.
 */
public final class Pictures {
    private static final int AT_ONCE = 2;

    /** So many are drawn one after the other before they are told: a screenful comes in two or three goes. */
    private static final int IN_ONE_GO = 8;

    private static final int MOST_WAITING = 300;

    private final Tasks tasks;
    private final Thumbnails thumbnails;
    private final Runnable arrived;
    private final Set<String> asked = new HashSet<>();
    /** The newest look first, each in the order in which it was painted. */
    private final Deque<Deque<Wish>> looks = new ArrayDeque<>();

    private boolean isLooking;
    private int waiting;
    private int running;

    /** A picture that somebody waits for. */
    private record Wish(String key, PictureSource source, Dimension size) {}

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
            wait(new Wish(key, source, new Dimension(size)));
            drawNext();
        }
        return ready;
    }

    /** Whether nothing that was asked for is on its way. */
    public boolean areAllThere() {
        return waiting == 0 && running == 0;
    }

    private void wait(Wish wish) {
        if (!isLooking) {
            isLooking = true;
            looks.addFirst(new ArrayDeque<>());
            tasks.onEventThread(() -> isLooking = false);
        }
        looks.getFirst().addLast(wish);
        waiting++;
        while (waiting > MOST_WAITING) {
            asked.remove(next(looks.getLast()).key());
        }
    }

    private Wish next(Deque<Wish> look) {
        Wish wish = look.removeFirst();
        waiting--;
        if (look.isEmpty() && !(isLooking && look == looks.getFirst())) {
            looks.remove(look);
        }
        return wish;
    }

    private void drawNext() {
        looks.removeIf(look -> look.isEmpty() && !(isLooking && look == looks.getFirst()));
        while (running < AT_ONCE && waiting > 0) {
            List<Wish> wishes = go();
            running++;
            tasks.run(
                    progress -> {
                        wishes.forEach(wish -> thumbnails.of(wish.source(), wish.size()));
                        return wishes;
                    },
                    outcome -> {
                        running--;
                        wishes.forEach(wish -> asked.remove(wish.key()));
                        arrived.run();
                        drawNext();
                    });
        }
    }

    /** Some of the newest look. */
    private List<Wish> go() {
        Deque<Wish> look =
                looks.stream().filter(wishes -> !wishes.isEmpty()).findFirst().orElseThrow();
        List<Wish> wishes = new ArrayList<>();
        while (wishes.size() < IN_ONE_GO && !look.isEmpty()) {
            wishes.add(next(look));
        }
        return wishes;
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
