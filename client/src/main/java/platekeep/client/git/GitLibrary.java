package platekeep.client.git;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.desk.Desk;
import platekeep.client.git.desk.Workroom;
import platekeep.client.git.partner.Partner;
import platekeep.client.git.store.Trouble;
import platekeep.client.library.Arrivals;
import platekeep.client.library.BroughtIn;
import platekeep.client.library.Changed;
import platekeep.client.library.Entry;
import platekeep.client.library.Hand;
import platekeep.client.library.HandEdit;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.NamedVersion;
import platekeep.client.library.PastPlate;
import platekeep.client.library.Picture;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Saving;
import platekeep.client.library.Sent;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.text.LibraryFacts;

/** An open library; hands each question to who answers it and says in sentences what the disk did not do. */
final class GitLibrary implements Library {
    private static final System.Logger LOG = System.getLogger(GitLibrary.class.getName());
    private static final String UNTOUCHED = "Nothing was changed.";
    private static final String NOT_READ = "The library could not be read";
    private static final String NOT_SAVED = "The version was not saved";

    private final Workroom room;
    private final Desk desk;
    private final Partner partner;

    GitLibrary(Workroom room) {
        this.room = room;
        this.desk = new Desk(room);
        this.partner = new Partner(room);
    }

    /** Something that may fail because of the disk or for a reason that has its sentence already. */
    private interface Work<T> {
        T run() throws IOException, LibraryException;
    }

    private static <T> T told(String failed, Work<T> work) throws LibraryException {
        try {
            return work.run();
        } catch (IOException e) {
            throw Trouble.of(failed, UNTOUCHED, e);
        }
    }

    Partner partner() {
        return partner;
    }

    @Override
    public Path folder() {
        return room.store().folder();
    }

    @Override
    public String name() {
        try {
            return facts().name();
        } catch (LibraryException e) {
            return String.valueOf(folder().getFileName());
        }
    }

    @Override
    public LibraryFacts facts() throws LibraryException {
        return told(NOT_READ, desk::facts);
    }

    @Override
    public Optional<Hand> hand() {
        return room.hand();
    }

    @Override
    public void introduce(Hand hand) throws LibraryException {
        told("Your name was not kept", () -> {
            desk.introduce(hand);
            return hand;
        });
    }

    @Override
    public Optional<Version> newest() throws LibraryException {
        return told(NOT_READ, () -> desk.versions(1).stream().findFirst());
    }

    @Override
    public List<Entry> list(Progress progress) throws LibraryException {
        return list(progress, soFar -> {});
    }

    @Override
    public List<Entry> list(Progress progress, Consumer<List<Entry>> soFar) throws LibraryException {
        return told(NOT_READ, () -> {
            Optional<ObjectId> newest = room.store().newest();
            return newest.isPresent() ? room.list(newest.get(), progress, soFar) : List.of();
        });
    }

    @Override
    public List<Entry> first(int most) throws LibraryException {
        return told(NOT_READ, () -> {
            Optional<ObjectId> newest = room.store().newest();
            return newest.isPresent() ? room.first(newest.get(), most) : List.of();
        });
    }

    @Override
    public List<Entry> listAt(String versionId, Progress progress) throws LibraryException {
        return told(NOT_READ, () -> room.list(room.find(versionId), progress, soFar -> {}));
    }

    @Override
    public List<Series> series() throws LibraryException {
        return told(NOT_READ, desk::series);
    }

    @Override
    public Optional<Entry> plate(String plateId) throws LibraryException {
        return told(NOT_READ, () -> desk.plate(room.newestShelf(), plateId));
    }

    @Override
    public Optional<Entry> plateAt(String plateId, String versionId) throws LibraryException {
        return told(NOT_READ, () -> {
            ObjectId version = room.find(plateId, versionId);
            return desk.plate(room.shelf(version), plateId);
        });
    }

    @Override
    public List<PlateVersion> history(String plateId) throws LibraryException {
        return told(NOT_READ, () -> desk.history(plateId));
    }

    @Override
    public List<Version> versions(int most) throws LibraryException {
        return told(NOT_READ, () -> desk.versions(most));
    }

    @Override
    public Changed changed(String versionId, int most) throws LibraryException {
        return told(NOT_READ, () -> desk.changed(versionId, most));
    }

    @Override
    public List<PlateVersion> putAway() throws LibraryException {
        return told(NOT_READ, desk::putAway);
    }

    @Override
    public List<PastPlate> past() throws LibraryException {
        return told(NOT_READ, desk::past);
    }

    @Override
    public List<NamedVersion> names() throws LibraryException {
        return told(NOT_READ, desk::names);
    }

    @Override
    public void readPast(List<PastPlate> which, Progress progress, BiConsumer<PastPlate, Entry> each)
            throws LibraryException {
        told(NOT_READ, () -> {
            desk.readPast(which, progress, each);
            return which;
        });
    }

    @Override
    public Version save(Saving saving) throws LibraryException {
        return told(NOT_SAVED, () -> desk.save(saving));
    }

    @Override
    public void nameVersion(String plateId, String versionId, String name) throws LibraryException {
        told("The name was not given", () -> {
            desk.name(plateId, versionId, name);
            return name;
        });
    }

    @Override
    public List<Picture> pictures(String plateId) throws LibraryException {
        return told(NOT_READ, () -> desk.pictures(plateId));
    }

    @Override
    public List<Picture> pictures() throws LibraryException {
        return told(NOT_READ, desk::pictures);
    }

    @Override
    public byte[] bytes(Picture picture) throws LibraryException {
        return told("The picture could not be read", () -> desk.bytes(picture));
    }

    @Override
    public List<HandEdit> handEdits() throws LibraryException {
        return told("The folder could not be looked through", desk::handEdits);
    }

    @Override
    public Version takeIn(List<HandEdit> edits, String reason, Optional<Hand> inNameOf) throws LibraryException {
        return told(NOT_SAVED, () -> desk.takeIn(edits, reason, inNameOf));
    }

    @Override
    public Optional<Path> sharedCopy() {
        return partner.sharedCopy().folder();
    }

    @Override
    public void share(Path folder) throws LibraryException {
        told("The folder of the shared copy was not set up", () -> {
            partner.share(folder);
            return folder;
        });
    }

    @Override
    public Set<String> unsent() throws LibraryException {
        return told(NOT_READ, partner::unsent);
    }

    @Override
    public Arrivals look(Progress progress) throws LibraryException {
        return told("The shared copy could not be looked at", () -> partner.look(progress));
    }

    @Override
    public BroughtIn bringIn(Arrivals seen, List<Plate> settled, Progress progress) throws LibraryException {
        return told("The partner's versions were not brought in", () -> partner.bringIn(seen, settled, progress));
    }

    @Override
    public Sent send(Progress progress) throws LibraryException {
        return told("Your versions were not sent", () -> partner.send(progress));
    }

    @Override
    public void close() {
        try {
            room.close();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "closing " + folder(), e);
        }
    }
}
