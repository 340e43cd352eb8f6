package platekeep.client.git.desk;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.plates.Entries;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.FileNames;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.git.store.WorkTree;
import platekeep.client.library.Entry;
import platekeep.client.library.HandEdit;

/**
 * Finds files in the folder that differ from the newest version. A file whose size and time are as noted when it was
 * written is taken as unchanged without being read, unless it was written in the same two seconds as the note.
 */
final class HandEdits {
    private static final long UNSURE_SECONDS = 2;

    private final Workroom room;

    HandEdits(Workroom room) {
        this.room = room;
    }

    List<HandEdit> find() throws IOException {
        TreeFiles files = room.newestShelf().files();
        DirCache noted = room.store().repository().readDirCache();
        SortedSet<String> paths = new TreeSet<>(files.files().keySet());
        paths.addAll(lying());
        List<HandEdit> edits = new ArrayList<>();
        for (String path : paths) {
            Optional<FileAt> before = files.at(path);
            if (FileNames.allowed(path) && before.map(FileAt::isPlain).orElse(true)) {
                edit(path, before, noted).ifPresent(edits::add);
            }
        }
        return edits;
    }

    private Optional<HandEdit> edit(String path, Optional<FileAt> before, DirCache noted) throws IOException {
        WorkTree folder = room.store().workTree();
        Optional<BasicFileAttributes> lies = folder.attributes(path);
        if (before.isPresent() && lies.isPresent() && isAsNoted(noted.getEntry(path), before.get(), lies.get())) {
            return Optional.empty();
        }
        Optional<byte[]> bytes = folder.read(path);
        Optional<ObjectId> now = bytes.map(WorkTree::contentOf);
        if (now.equals(before.map(FileAt::content))) {
            return Optional.empty();
        }
        if (!PlateFiles.isPlate(path)) {
            return Optional.of(new HandEdit(path, Optional.empty(), Optional.empty()));
        }
        Optional<Entry> was = before.isEmpty()
                ? Optional.empty()
                : Optional.of(room.entries().read(path, before.get().content()));
        return Optional.of(new HandEdit(path, was, bytes.map(b -> Entries.parse(path, WorkTree.contentOf(b), b))));
    }

    private static boolean isAsNoted(DirCacheEntry noted, FileAt before, BasicFileAttributes lies) {
        if (noted == null || !noted.getObjectId().equals(before.content()) || noted.getLength() != lies.size()) {
            return false;
        }
        Instant written = lies.lastModifiedTime().toInstant();
        return noted.getLastModifiedInstant().equals(written)
                && written.plusSeconds(UNSURE_SECONDS).isBefore(Instant.now());
    }

    /** The plates, series and pictures that lie in the folder, whether a version has them or not. */
    private SortedSet<String> lying() throws IOException {
        Path root = room.store().folder();
        SortedSet<String> paths = new TreeSet<>();
        for (String name : List.of(PlateFiles.PLATES, PlateFiles.SERIES)) {
            Path folder = root.resolve(name);
            if (Files.isDirectory(folder)) {
                Files.walkFileTree(folder, new Collecting(root, paths));
            }
        }
        return paths;
    }

    /** Does not follow links; passes over what cannot be looked into. */
    private static final class Collecting extends SimpleFileVisitor<Path> {
        private final Path root;
        private final SortedSet<String> paths;

        Collecting(Path root, SortedSet<String> paths) {
            this.root = root;
            this.paths = paths;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            String path = root.relativize(file).toString().replace('\\', '/');
            if (attributes.isRegularFile()
                    && (PlateFiles.isPlate(path) || PlateFiles.isSeries(path) || PlateFiles.isPicture(path))) {
                paths.add(path);
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) {
            return FileVisitResult.CONTINUE;
        }
    }
}
