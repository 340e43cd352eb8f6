package platekeep.client.git.desk;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.StoredConfig;
import platekeep.client.git.plates.Shelf;
import platekeep.client.library.Changed;
import platekeep.client.library.Entry;
import platekeep.client.library.Hand;
import platekeep.client.library.HandEdit;
import platekeep.client.library.LibraryException;
import platekeep.client.library.NamedVersion;
import platekeep.client.library.PastPlate;
import platekeep.client.library.Picture;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Series;
import platekeep.model.text.LibraryFacts;

/** All that can be done at one library without a partner. */
public final class Desk {
    private final Workroom room;
    private final Looking looking;

    public Desk(Workroom room) {
        this.room = room;
        this.looking = new Looking(room);
    }

    /** What the library says about itself now. */
    public LibraryFacts facts() throws IOException, LibraryException {
        Optional<ObjectId> newest = room.store().newest();
        return (newest.isEmpty() ? Optional.<LibraryFacts>empty() : room.facts(newest.get()))
                .orElseThrow(Refusals::noFacts);
    }

    /** Keeps who makes versions here in the library's own settings. */
    public void introduce(Hand hand) throws IOException, LibraryException {
        if (isUnfit(hand.name()) || isUnfit(hand.address())) {
            throw Refusals.unfitHand();
        }
        StoredConfig config = room.store().repository().getConfig();
        config.setString("user", null, "name", hand.name().strip());
        config.setString("user", null, "email", hand.address().strip());
        config.save();
    }

    /** The characters that would end a name early where it is stored. */
    private static boolean isUnfit(String text) {
        return text.isBlank() || text.chars().anyMatch(c -> c == '<' || c == '>' || c < ' ');
    }

    public Optional<Entry> plate(Shelf shelf, String plateId) throws IOException {
        return looking.plate(shelf, plateId);
    }

    public List<Series> series() throws IOException {
        return looking.series();
    }

    public List<Picture> pictures(String plateId) throws IOException {
        return looking.pictures(plateId);
    }

    public List<Picture> pictures() throws IOException {
        return looking.pictures();
    }

    public byte[] bytes(Picture picture) throws IOException {
        return room.store().bytes(ObjectId.fromString(picture.content()));
    }

    public List<Version> versions(int most) throws IOException {
        return looking.versions(most);
    }

    public List<PlateVersion> history(String plateId) throws IOException {
        return looking.history(plateId);
    }

    public Changed changed(String versionId, int most) throws IOException, LibraryException {
        return new ChangedPlates(room).of(room.find(versionId), most);
    }

    public List<PlateVersion> putAway() throws IOException {
        return looking.putAway();
    }

    public List<PastPlate> past() throws IOException {
        return new PastPlates(room).list();
    }

    public List<NamedVersion> names() throws IOException {
        return looking.names();
    }

    public void readPast(List<PastPlate> which, Progress progress, BiConsumer<PastPlate, Entry> each)
            throws IOException {
        new PastPlates(room).read(which, progress, each);
    }

    public Version save(Saving saving) throws IOException, LibraryException {
        return new Saver(room).save(saving);
    }

    public void name(String plateId, String versionId, String name) throws IOException, LibraryException {
        new Naming(room).name(plateId, versionId, name);
    }

    public List<HandEdit> handEdits() throws IOException {
        return new HandEdits(room).find();
    }

    public Version takeIn(List<HandEdit> edits, String reason, Optional<Hand> inNameOf)
            throws IOException, LibraryException {
        return new TakeIn(room).takeIn(edits, reason, inNameOf);
    }
}
