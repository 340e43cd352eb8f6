package platekeep.client.git.desk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.revwalk.RevWalk;
import platekeep.client.git.history.Step;
import platekeep.client.git.history.Touch;
import platekeep.client.git.history.VersionNames;
import platekeep.client.git.history.Versions;
import platekeep.client.git.plates.PictureFiles;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.plates.Shelf;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.Texts;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.library.Entry;
import platekeep.client.library.NamedVersion;
import platekeep.client.library.Picture;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Version;
import platekeep.model.plate.Series;
import platekeep.model.text.Problem;
import platekeep.model.text.Reading;
import platekeep.model.text.SeriesText;

/** Answers what there is and what there was. */
final class Looking {
    private static final System.Logger LOG = System.getLogger(Looking.class.getName());

    /** Versions that one walk reads. */
    private static final int LONG_PART = 512;

    private final Workroom room;

    Looking(Workroom room) {
        this.room = room;
    }

    Optional<Entry> plate(Shelf shelf, String plateId) throws IOException {
        Optional<String> path = shelf.path(plateId);
        return path.isEmpty() ? Optional.empty() : Optional.of(room.entries().of(shelf, path.get()));
    }

    /** The files of the newest version, without asking whose they are: that may mean reading all plates. */
    private Map<String, FileAt> files() throws IOException {
        Optional<ObjectId> newest = room.store().newest();
        return newest.isPresent() ? room.store().files(newest.get()).files() : Map.of();
    }

    List<Picture> pictures(String plateId) throws IOException {
        return pictures().stream()
                .filter(picture -> picture.plateId().equals(plateId))
                .toList();
    }

    List<Picture> pictures() throws IOException {
        List<Picture> out = new ArrayList<>();
        for (Map.Entry<String, FileAt> file : files().entrySet()) {
            if (file.getValue().isPlain() && PlateFiles.isPicture(file.getKey())) {
                PictureFiles.at(file.getKey(), file.getValue().content().name()).ifPresent(out::add);
            }
        }
        return out;
    }

    List<Series> series() throws IOException {
        Optional<ObjectId> newest = room.store().newest();
        Map<String, FileAt> some = newest.isEmpty()
                ? Map.of()
                : room.store()
                        .first(newest.get(), PlateFiles.SERIES, TreeFiles.MOST_FILES)
                        .files();
        List<Map.Entry<String, FileAt>> files = some.entrySet().stream()
                .filter(file ->
                        PlateFiles.isSeries(file.getKey()) && file.getValue().isPlain())
                .toList();
        List<Optional<Series>> read = new ArrayList<>(Collections.nCopies(files.size(), Optional.empty()));
        room.entries().inParts().each(files.size(), done -> {}, (from, to) -> {
            try (Texts texts = room.store().texts()) {
                for (int i = from; i < to; i++) {
                    read.set(i, series(texts, files.get(i)));
                }
            }
        });
        return read.stream().flatMap(Optional::stream).toList();
    }

    private static Optional<Series> series(Texts texts, Map.Entry<String, FileAt> file) throws IOException {
        ByteBuffer bytes = texts.read(file.getKey(), file.getValue().content());
        Reading<Series> reading = SeriesText.read(file.getKey(), Arrays.copyOf(bytes.array(), bytes.limit()));
        reading.fold(good -> List.<Problem>of(), bad -> bad.problems())
                .forEach(problem -> LOG.log(System.Logger.Level.WARNING, problem.sentence()));
        return reading.value();
    }

    List<Version> versions(int most) throws IOException {
        Optional<ObjectId> newest = room.store().newest();
        List<Step> steps = newest.isPresent() ? room.index().versions(newest.get(), most) : List.of();
        Version[] out = new Version[steps.size()];
        room.entries().inParts().by(LONG_PART).each(out.length, done -> {}, (from, to) -> {
            try (RevWalk walk = new RevWalk(room.store().repository())) {
                for (int i = from; i < to; i++) {
                    out[i] = Versions.of(walk.parseCommit(steps.get(i).version()));
                }
            }
        });
        return List.of(out);
    }

    List<NamedVersion> names() throws IOException {
        return room.names().all().stream()
                .map(name -> new NamedVersion(name.plateId(), name.version().name(), name.text()))
                .toList();
    }

    List<PlateVersion> history(String plateId) throws IOException {
        Optional<ObjectId> newest = room.store().newest();
        if (newest.isEmpty()) {
            return List.of();
        }
        List<Step> steps = room.index().history(newest.get(), plateId);
        Map<ObjectId, List<String>> names = names(plateId, steps);
        List<PlateVersion> out = new ArrayList<>();
        try (RevWalk walk = new RevWalk(room.store().repository())) {
            for (Step step : steps) {
                out.add(plateVersion(walk, plateId, step, names.getOrDefault(step.version(), List.of())));
            }
        }
        return out;
    }

    /** One walk reads all of a history: the texts of a plate are stored as what differs between them. */
    private PlateVersion plateVersion(RevWalk walk, String plateId, Step step, List<String> names) throws IOException {
        Touch touch = step.touches().stream()
                .filter(t -> t.plateId().equals(plateId))
                .findFirst()
                .orElseThrow();
        Optional<Entry> entry = touch.content().isPresent()
                ? Optional.of(room.entries()
                        .readStored(
                                walk.getObjectReader(),
                                touch.path(),
                                touch.content().get()))
                : Optional.empty();
        return new PlateVersion(Versions.of(walk.parseCommit(step.version())), entry, names);
    }

    /** The names by the step that they stand at: the version named, or the last one before it that changed the plate. */
    private Map<ObjectId, List<String>> names(String plateId, List<Step> steps) throws IOException {
        Map<ObjectId, List<String>> out = new HashMap<>();
        for (VersionNames.Name name : room.names().of(plateId)) {
            for (Step step : steps) {
                if (step.version().equals(name.version()) || room.index().ledTo(step.version(), name.version())) {
                    out.computeIfAbsent(step.version(), v -> new ArrayList<>()).add(name.text());
                    break;
                }
            }
        }
        return out;
    }

    /** Each as it last was, the one put away last first. */
    List<PlateVersion> putAway() throws IOException {
        Optional<ObjectId> newest = room.store().newest();
        List<Gone> gone = new ArrayList<>();
        if (newest.isPresent()) {
            Shelf shelf = room.newestShelf();
            for (String plateId : room.index().plates(newest.get())) {
                List<Step> steps = shelf.path(plateId).isPresent()
                        ? List.of()
                        : room.index().history(newest.get(), plateId);
                if (!steps.isEmpty()) {
                    gone.add(new Gone(plateId, steps));
                }
            }
        }
        gone.sort(Gone.LAST_FIRST);
        List<PlateVersion> out = new ArrayList<>();
        try (RevWalk walk = new RevWalk(room.store().repository())) {
            for (Gone plate : gone) {
                Optional<Step> last = plate.lastThere();
                if (last.isPresent()) {
                    Map<ObjectId, List<String>> names = names(plate.plateId(), plate.steps());
                    out.add(plateVersion(
                            walk,
                            plate.plateId(),
                            last.get(),
                            names.getOrDefault(last.get().version(), List.of())));
                }
            }
        }
        return out;
    }

    /** A plate that is not there any more, with its history. */
    private record Gone(String plateId, List<Step> steps) {
        static final Comparator<Gone> LAST_FIRST = Comparator.comparingLong(
                        (Gone gone) -> gone.steps().get(0).order())
                .reversed()
                .thenComparing(Gone::plateId);

        Optional<Step> lastThere() {
            return steps.stream()
                    .filter(step -> step.touches().stream()
                            .anyMatch(t ->
                                    t.plateId().equals(plateId) && t.content().isPresent()))
                    .findFirst();
        }
    }
}
