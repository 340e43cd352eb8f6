package platekeep.client.git.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.Repository;

/**
 * Where versions are kept, looked at before anything is written there: a link in it, or a note that its parts lie elsewhere
 * ("commondir" in gitrepository-layout), would let what is saved be written over somebody's file in another place.
 */
public final class OwnFolder {
    private static final String ELSEWHERE = "commondir";

    /** How a name begins that stands for another one. */
    private static final String FOR = "ref:";

    /** An id and the end of its line. */
    private static final int AN_ID = 41;

    /** No name is longer; what is, stands for none. */
    private static final int LONGEST = 4096;

    private OwnFolder() {}

    /** Nothing is read or written through what leads out; the message names it. */
    static final class LeadsOut extends IOException {
        private static final long serialVersionUID = 1L;

        LeadsOut(String what) {
            super("\"" + what + "\" in the folder where its versions are kept leads to another place");
        }
    }

    /**
     * Refuses a folder of versions that leads out of itself; costs a look at some hundred names.
     *
     * @param folder with the objects and the names of versions in it
     */
    public static void refuseLeadingOut(Path folder) throws IOException {
        if (Files.exists(folder.resolve(ELSEWHERE), LinkOption.NOFOLLOW_LINKS)) {
            throw new LeadsOut(ELSEWHERE);
        }
        refuse(folder, folder, 1);
        refuse(folder, folder.resolve(Constants.OBJECTS), 1);
        for (String names : List.of("refs", Constants.LOGS)) {
            refuse(folder, folder.resolve(names), Integer.MAX_VALUE);
        }
        refuseName(folder, folder.resolve(Constants.HEAD));
        for (Path name : namesOfOtherLength(folder.resolve("refs"))) {
            refuseName(folder, name);
        }
    }

    /** Whether what is noted under a name of a version lies in the folder of names (gitrepository-layout, git-check-ref-format). */
    static boolean isName(String name) {
        return name.startsWith(Constants.R_REFS) && Repository.isValidRefName(name);
    }

    /** The names that do not simply hold an id, and so may stand for other names. */
    private static List<Path> namesOfOtherLength(Path refs) throws IOException {
        if (!Files.isDirectory(refs, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> all = Files.find(
                refs,
                Integer.MAX_VALUE,
                (path, attributes) -> attributes.isRegularFile() && attributes.size() != AN_ID)) {
            return all.toList();
        }
    }

    private static void refuseName(Path folder, Path file) throws IOException {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) <= LONGEST) {
            String text = Files.readString(file, StandardCharsets.ISO_8859_1);
            if (text.startsWith(FOR) && !isName(text.substring(FOR.length()).strip())) {
                throw new LeadsOut(folder.relativize(file).toString());
            }
        }
    }

    private static void refuse(Path folder, Path from, int depth) throws IOException {
        if (!Files.isDirectory(from, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.find(from, depth, OwnFolder::isStrange, new FileVisitOption[0])) {
            Optional<Path> first = all.findFirst();
            if (first.isPresent()) {
                throw new LeadsOut(folder.relativize(first.get()).toString());
            }
        }
    }

    private static boolean isStrange(Path path, BasicFileAttributes attributes) {
        return attributes.isSymbolicLink() || attributes.isOther();
    }
}
