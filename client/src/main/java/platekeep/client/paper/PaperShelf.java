package platekeep.client.paper;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import platekeep.client.library.Library;
import platekeep.client.library.Picture;
import platekeep.client.paper.picture.PaperSource;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Workroom;
import platekeep.client.ui.PictureSource;

/** Knows which plates of the open libraries have scans and photos; used on the event thread. */
public final class PaperShelf implements RoomListener {
    private final Workroom room;
    private final Runnable arrived;
    private final Map<Library, Map<String, List<Picture>>> pictures = new HashMap<>();

    /**
     * @param arrived called when there is something new to be seen
     */
    public PaperShelf(Workroom room, Runnable arrived) {
        this.room = room;
        this.arrived = arrived;
        room.listen(this);
    }

    @Override
    public void librariesChanged() {
        pictures.keySet().retainAll(room.open());
        room.open().stream().filter(library -> !pictures.containsKey(library)).forEach(this::contentChanged);
    }

    @Override
    public void contentChanged(Library library) {
        room.work(progress -> library.pictures().stream().collect(Collectors.groupingBy(Picture::plateId)), read -> {
            if (room.open().contains(library)) {
                pictures.put(library, read);
                arrived.run();
            }
        });
    }

    private List<Picture> of(String folder, String plateId) {
        return pictures.entrySet().stream()
                .filter(entry -> entry.getKey().folder().toString().equals(folder))
                .findFirst()
                .map(entry -> entry.getValue().getOrDefault(plateId, List.of()))
                .orElse(List.of());
    }

    /**
     * What stands for a plate that has no chart.
     *
     * @param folder of its library
     */
    public Optional<PictureSource> standingFor(String folder, String plateId) {
        List<Picture> own = of(folder, plateId);
        return pictures.keySet().stream()
                .filter(library -> library.folder().toString().equals(folder))
                .findFirst()
                .flatMap(library -> PaperSource.standingFor(library, own));
    }

    /** Which kinds of pictures lie beside a plate. */
    public Set<Picture.Kind> kinds(String folder, String plateId) {
        return of(folder, plateId).stream()
                .map(Picture::kind)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Picture.Kind.class)));
    }
}
