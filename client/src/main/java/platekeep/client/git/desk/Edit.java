package platekeep.client.git.desk;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.history.Step;
import platekeep.client.git.history.Touch;
import platekeep.client.git.plates.Paths;
import platekeep.client.git.plates.PictureFiles;
import platekeep.client.git.plates.PlaceTable;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.plates.PlateIdScan;
import platekeep.client.git.plates.Shelf;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.Writing;
import platekeep.client.library.Change;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.text.LibraryText;
import platekeep.model.text.PlateText;
import platekeep.model.text.Reading;
import platekeep.model.text.SeriesText;
import platekeep.model.text.Slugs;

/** The changes of one version to come, as files: what goes where. */
final class Edit {
    private final Workroom room;
    private final Writing writing;
    private final Shelf shelf;
    /** Where what lies, as {@link Paths#folded}; made when the first new file wants a place. */
    private Optional<Map<String, String>> folded = Optional.empty();

    /** The plates and series that come with this saving, by their content. */
    private final Map<ObjectId, String> ids = new HashMap<>();

    private final SortedMap<String, Optional<FileAt>> changes = new TreeMap<>();

    Edit(Workroom room, Writing writing, Shelf shelf) {
        this.room = room;
        this.writing = writing;
        this.shelf = shelf;
    }

    private Map<String, String> pathOf() {
        if (folded.isEmpty()) {
            Map<String, String> all = new HashMap<>();
            shelf.files().files().keySet().stream()
                    .filter(path -> at(path).isPresent())
                    .forEach(path -> all.put(Paths.folded(path), path));
            changes.forEach((path, file) -> file.ifPresent(f -> all.put(Paths.folded(path), path)));
            folded = Optional.of(all);
        }
        return folded.get();
    }

    /** The file at a path as it will be. */
    private Optional<FileAt> at(String path) {
        Optional<FileAt> change = changes.get(path);
        return change == null ? shelf.files().at(path) : change;
    }

    /** By path; empty where the file goes. */
    Map<String, Optional<FileAt>> changes() {
        return changes;
    }

    boolean isEmpty() {
        return changes.isEmpty();
    }

    /** Refuses when a plate that is to be changed is not what it was in the version that the change was made from. */
    void refuseWhatMovedOn(List<Change> wanted, Shelf seen) throws IOException, LibraryException {
        for (Change change : wanted) {
            if (change instanceof Change.PutPlate put) {
                refuseIfMovedOn(put.plate().id(), put.plate().title(), seen);
            } else if (change instanceof Change.PutAway away) {
                refuseIfMovedOn(away.plateId(), title(away.plateId()), seen);
            } else if (change instanceof Change.PutSeries series) {
                refuseIfSeriesMovedOn(series.series().id(), series.series().title(), seen);
            } else if (change instanceof Change.PutSeriesAway away) {
                refuseIfSeriesMovedOn(away.seriesId(), "The series", seen);
            }
        }
    }

    private void refuseIfMovedOn(String plateId, String title, Shelf seen) throws LibraryException {
        if (!seen.content(plateId).equals(shelf.content(plateId))) {
            throw Refusals.movedOn(title);
        }
    }

    private void refuseIfSeriesMovedOn(String id, String title, Shelf seen) throws IOException, LibraryException {
        if (!seriesFile(seen, id).equals(seriesFile(shelf, id))) {
            throw Refusals.movedOn(title);
        }
    }

    private String title(String plateId) throws IOException {
        Optional<String> path = shelf.path(plateId);
        return path.isEmpty()
                ? plateId
                : room.entries().of(shelf, path.get()).plate().map(Plate::title).orElse(path.get());
    }

    void add(Change change) throws IOException, LibraryException {
        if (change instanceof Change.PutPlate put) {
            putPlate(put.plate());
        } else if (change instanceof Change.PutAway away) {
            put(shelf.path(away.plateId()).orElseThrow(Refusals::notHere), Optional.empty());
        } else if (change instanceof Change.PutSeries series) {
            putSeries(series.series());
        } else if (change instanceof Change.PutFacts facts) {
            byte[] bytes = LibraryText.bytes(facts.facts());
            refuseUnreadable(LibraryText.read(PlateFiles.FACTS, bytes));
            put(PlateFiles.FACTS, Optional.of(writing.keep(bytes)));
        } else if (change instanceof Change.PutPicture picture) {
            putPicture(picture);
        } else if (change instanceof Change.PutPictureAway away) {
            putPictureAway(away.picture());
        } else if (change instanceof Change.PutSeriesAway away) {
            String path =
                    seriesFile(shelf, away.seriesId()).map(Map.Entry::getKey).orElseThrow(Refusals::noSeries);
            put(path, Optional.empty());
        }
    }

    /** Only what is a picture by its name, lies there and is what she saw goes; no path is taken on trust. */
    private void putPictureAway(Picture picture) throws LibraryException {
        Optional<FileAt> lies = at(picture.path());
        Optional<Picture> there = lies.filter(FileAt::isPlain)
                .flatMap(file -> PictureFiles.at(picture.path(), file.content().name()));
        if (!there.equals(Optional.of(picture))) {
            throw Refusals.pictureNotHere();
        }
        put(picture.path(), Optional.empty());
    }

    /** Beside the plate, which may have come with this very saving. */
    private void putPicture(Change.PutPicture picture) throws IOException, LibraryException {
        byte[] bytes = picture.bytes();
        if (bytes.length > Store.LARGEST_FILE) {
            throw Refusals.tooLargePicture();
        }
        String name =
                PictureFiles.name(picture.plateId(), picture.kind(), bytes).orElseThrow(Refusals::noPicture);
        String plate = placeOf(picture.plateId()).orElseThrow(Refusals::noPlateForPicture);
        put(plate.substring(0, plate.lastIndexOf('/') + 1) + name, Optional.of(writing.keep(bytes)));
    }

    private Optional<String> placeOf(String plateId) throws IOException {
        for (Map.Entry<String, Optional<FileAt>> change : changes.entrySet()) {
            Optional<FileAt> file = change.getValue();
            if (file.isPresent()
                    && PlateFiles.isPlate(change.getKey())
                    && plateId.equals(ids.get(file.get().content()))) {
                return Optional.of(change.getKey());
            }
        }
        return shelf.path(plateId).filter(path -> at(path).isPresent());
    }

    private void putPlate(Plate plate) throws IOException, LibraryException {
        if (!PlateIdScan.isId(plate.id())) {
            throw new IllegalArgumentException("not a plate's id: " + plate.id());
        }
        byte[] bytes = PlateText.bytes(plate);
        refuseUnreadable(PlateText.read(plate.title(), bytes));
        FileAt file = writing.keep(bytes);
        ids.put(file.content(), plate.id());
        Optional<String> path = shelf.path(plate.id());
        if (path.isPresent()) {
            put(path.get(), Optional.of(file));
        } else {
            putNew(formerPlace(plate.id()).orElse(Slugs.path(plate)), plate.id(), file);
        }
    }

    /** A plate that was put away comes back to its old place. */
    private Optional<String> formerPlace(String plateId) throws IOException {
        Optional<ObjectId> newest = room.store().newest();
        List<Step> history = newest.isPresent() ? room.index().history(newest.get(), plateId) : List.of();
        return history.stream()
                .flatMap(step -> step.touch(plateId).stream())
                .map(Touch::path)
                .findFirst();
    }

    private void putSeries(Series series) throws IOException, LibraryException {
        byte[] bytes = SeriesText.bytes(series);
        refuseUnreadable(SeriesText.read(series.title(), bytes));
        FileAt file = writing.keep(bytes);
        ids.put(file.content(), series.id());
        Optional<String> path = seriesFile(shelf, series.id()).map(Map.Entry::getKey);
        if (path.isPresent()) {
            put(path.get(), Optional.of(file));
        } else {
            putNew(Slugs.path(series), series.id(), file);
        }
    }

    private Optional<Map.Entry<String, FileAt>> seriesFile(Shelf at, String id) throws IOException {
        for (Map.Entry<String, FileAt> file : at.files().files().entrySet()) {
            if (PlateFiles.isSeries(file.getKey())
                    && room.plateOf(file.getValue().content()).equals(Optional.of(id))) {
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }

    private static void refuseUnreadable(Reading<?> reading) throws LibraryException {
        Optional<String> sentence = reading.fold(
                good -> Optional.<String>empty(),
                bad -> Optional.of(bad.problems().get(0).sentence()));
        if (sentence.isPresent()) {
            throw Refusals.unreadable(sentence.get());
        }
    }

    /** Puts a file where nothing of its id is yet; where the place is taken, the greater id gets digits to its name. */
    private void putNew(String path, String id, FileAt file) throws IOException {
        Optional<String> holder = Optional.ofNullable(pathOf().get(Paths.folded(path)));
        Optional<String> heldId =
                holder.isPresent() ? idOf(at(holder.get()).orElseThrow().content()) : Optional.empty();
        Optional<String> givesWay = heldId.flatMap(held -> holder).map(Paths::folded);
        PlaceTable places =
                new PlaceTable(place -> pathOf().containsKey(place) && !givesWay.equals(Optional.of(place)));
        places.put(path, id, file);
        if (heldId.isPresent()) {
            places.put(holder.get(), heldId.get(), at(holder.get()).orElseThrow());
            put(holder.get(), Optional.empty());
        }
        places.placed().forEach((place, placed) -> put(place, Optional.of(placed)));
    }

    /** What comes with this saving is not stored yet, so it is not read. */
    private Optional<String> idOf(ObjectId content) throws IOException {
        Optional<String> comes = Optional.ofNullable(ids.get(content));
        return comes.isPresent() ? comes : room.plateOf(content);
    }

    private void put(String path, Optional<FileAt> file) {
        folded.ifPresent(all -> {
            if (file.isPresent()) {
                all.put(Paths.folded(path), path);
            } else {
                all.remove(Paths.folded(path));
            }
        });
        if (shelf.files().at(path).equals(file)) {
            changes.remove(path);
        } else {
            changes.put(path, file);
        }
    }
}
