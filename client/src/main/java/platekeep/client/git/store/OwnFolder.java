package platekeep.client.git.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.function.BiPredicate;
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
        refuse(folder, found(folder, 1, OwnFolder::isStrange));
        refuse(folder, found(folder.resolve(Constants.OBJECTS), 1, OwnFolder::isStrange));
        refuse(folder, found(folder.resolve(Constants.LOGS), Integer.MAX_VALUE, OwnFolder::isStrange));
        refuse(folder, found(folder.resolve("refs"), Integer.MAX_VALUE, OwnFolder::isNoPlainName));
        refuseName(folder, folder.resolve(Constants.HEAD));
    }

    /** Whether what is noted under a name of a version lies in the folder of names (gitrepository-layout, git-check-ref-format). */
    static boolean isName(String name) {
        return name.startsWith(Constants.R_REFS) && Repository.isValidRefName(name);
    }

    private static List<Path> found(Path from, int depth, BiPredicate<Path, BasicFileAttributes> which)
            throws IOException {
        if (!Files.isDirectory(from, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> all = Files.find(from, depth, which)) {
            return all.toList();
        }
    }

    private static boolean isStrange(Path path, BasicFileAttributes attributes) {
        return attributes.isSymbolicLink() || attributes.isOther();
    }

    /** Whether a name does not simply hold an id, and so may stand for another name. */
    private static boolean isNoPlainName(Path path, BasicFileAttributes attributes) {
        return isStrange(path, attributes) || attributes.isRegularFile() && attributes.size() != AN_ID;
    }

    /** Of what was found only names may be there that do not stand for one outside. */
    private static void refuse(Path folder, List<Path> found) throws IOException {
        for (Path one : found) {
            if (!Files.isRegularFile(one, LinkOption.NOFOLLOW_LINKS)) {
                throw new LeadsOut(folder.relativize(one).toString());
            }
            refuseName(folder, one);
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
}
