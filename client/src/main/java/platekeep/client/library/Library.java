package platekeep.client.library;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.text.LibraryFacts;

/**
 * A plate library: a folder with text files and all their versions. Calls may be made from any thread but the event
 * thread; each sees a consistent state. All lists are snapshots.
 */
public interface Library extends AutoCloseable {

    /** More plates than fit on a screen. */
    int SCREENFUL = 64;

    /** The folder. */
    Path folder();

    /** The library's own name; the folder's where the library does not say one. */
    String name();

    /** What the library says about itself: its name, its themes with what they are also called, what the check asks. */
    LibraryFacts facts() throws LibraryException;

    /** Who makes versions here; empty until {@link #introduce} was called once. */
    Optional<Hand> hand();

    /** Says who makes versions here; kept in the library's own settings. */
    void introduce(Hand hand) throws LibraryException;

    /** The newest version; empty in a new library. */
    Optional<Version> newest() throws LibraryException;

    /**
     * All plates as of the newest version, damaged ones too, in order of path. Where several files have one id,
     * the one with the shortest path is the plate and the others are given as damaged, with that reason.
     *
     * @throws java.util.concurrent.CancellationException when the progress says so
     */
    List<Entry> list(Progress progress) throws LibraryException;

    /**
     * The same; meanwhile tells a few times what has been read until then, from the first path on: soon more than fit on a
     * screen, then more and more. What was told of may still turn out to be a double in the list that is given at last.
     *
     * @param soFar called on the calling thread
     */
    default List<Entry> list(Progress progress, Consumer<List<Entry>> soFar) throws LibraryException {
        return list(progress);
    }

    /**
     * The first plates of that list, at the cost of no more than them. One of them may turn out to be a double in the
     * whole list.
     */
    default List<Entry> first(int most) throws LibraryException {
        return list(Progress.NONE).stream().limit(most).toList();
    }

    /** All plates as of a version, in order of path. */
    List<Entry> listAt(String versionId, Progress progress) throws LibraryException;

    /** All series as of the newest version; damaged ones are left out and named in the log. */
    List<Series> series() throws LibraryException;

    /** The plate as of the newest version; empty when it is not there. */
    Optional<Entry> plate(String plateId) throws LibraryException;

    /** The plate as of a version (its id or a name given to it); empty when it was not there. */
    Optional<Entry> plateAt(String plateId, String versionId) throws LibraryException;

    /** The versions that changed a plate, newest first, through renames of its title and file; joins included. */
    List<PlateVersion> history(String plateId) throws LibraryException;

    /** All versions, newest first, at most {@code most}. */
    List<Version> versions(int most) throws LibraryException;

    /**
     * What a version changed.
     *
     * @param most reads at most so many plates, any of them
     */
    Changed changed(String versionId, int most) throws LibraryException;

    /**
     * Plates that were put away, the one put away last first. Each is given as it last was: its version is the last
     * one that changed it before it went. To bring one back, save its plate with {@link Change.PutPlate}; who put it
     * away, when and why is the first step of its {@link #history}.
     */
    List<PlateVersion> putAway() throws LibraryException;

    /**
     * Every text that any plate had in the versions that led to the newest one, each named once, the newest first. Of
     * plates that were put away too. Only listed: no text is read.
     */
    List<PastPlate> past() throws LibraryException;

    /**
     * Reads such texts, each once, in no certain order.
     *
     * @param each is given what was read, on several threads at a time
     * @throws java.util.concurrent.CancellationException when the progress says so
     */
    void readPast(List<PastPlate> which, Progress progress, BiConsumer<PastPlate, Entry> each) throws LibraryException;

    /**
     * Saves one version: all of it or nothing; on return it is on disk, synced. To bring back an old version of a
     * plate, save that plate again: history is never rewritten. Refused with a sentence when nothing would change, when
     * nobody was introduced yet, when one of the files was changed by hand, and as {@link Saving} says.
     */
    Version save(Saving saving) throws LibraryException;

    /**
     * Gives a name to a version of a plate, such as "Spring class 2025". It travels to the partner with the next
     * sending. Giving the same name again changes nothing.
     *
     * @param versionId a version in which the plate was there
     * @param name not blank, one line, as it is to be shown
     */
    void nameVersion(String plateId, String versionId, String name) throws LibraryException;

    /** All names that were given to versions of plates, those of plates that were put away too. */
    List<NamedVersion> names() throws LibraryException;

    /** Files that were changed, added or taken out by hand since the newest version, in order of path. */
    List<HandEdit> handEdits() throws LibraryException;

    /** The pictures beside a plate, in order of path; none for a plate that is not there. */
    List<Picture> pictures(String plateId) throws LibraryException;

    /** All pictures that lie beside plates or beside where a plate lay, in order of path. */
    List<Picture> pictures() throws LibraryException;

    /** The bytes of a picture, JPEG or PNG. */
    byte[] bytes(Picture picture) throws LibraryException;

    /**
     * Takes files changed by hand in as one version, plates in canonical form. Refused with a sentence when one of them
     * is damaged or has changed again since {@link #handEdits()} was asked. Cables keep their kinds as in every edit.
     *
     * @param inNameOf whose change it is; empty: the library's own hand
     */
    Version takeIn(List<HandEdit> edits, String reason, Optional<Hand> inNameOf) throws LibraryException;

    /** Takes files changed by hand in, in the name of the library's own hand. */
    default Version takeIn(List<HandEdit> edits, String reason) throws LibraryException {
        return takeIn(edits, reason, Optional.empty());
    }

    /** The folder of the shared copy; empty when none was chosen. */
    Optional<Path> sharedCopy() throws LibraryException;

    /**
     * Chooses (and, where it is empty or absent, makes) the folder of the shared copy. Refused with a sentence where
     * the folder holds something else or the shared copy of another library.
     */
    void share(Path folder) throws LibraryException;

    /**
     * The ids of the plates, as they are in the newest version, that were changed by versions which are not in the shared
     * copy as it was when it was last looked at or sent to; none where no shared copy was chosen. The shared copy itself
     * is not asked.
     */
    Set<String> unsent() throws LibraryException;

    /** Looks at the shared copy without changing anything here. */
    Arrivals look(Progress progress) throws LibraryException;

    /**
     * Brings the partner's versions in: takes over what only the partner changed, keeps what only she changed, joins
     * what both changed; clashes stay open in the plates as data. Saves one version with two parents, or moves on to
     * the partner's newest version where nothing was changed here. Whoever of the two joins, the plates come out the
     * same, byte for byte. Nothing is changed here before the join has succeeded. Names given to versions come too.
     *
     * @param seen what {@link #look} gave
     * @param settled plates that she settled beforehand, which replace the joined ones
     */
    BroughtIn bringIn(Arrivals seen, List<Plate> settled, Progress progress) throws LibraryException;

    /** Sends all versions to the shared copy; refused with a sentence when there is something to bring in first. */
    Sent send(Progress progress) throws LibraryException;

    @Override
    void close();
}
