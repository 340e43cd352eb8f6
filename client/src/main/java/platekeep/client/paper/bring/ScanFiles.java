package platekeep.client.paper.bring;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import platekeep.client.library.LibraryException;

/** Which files are meant by what she chose: the files themselves, and of a folder the pictures in it. */
final class ScanFiles {
    /** More files than these at one go are a folder chosen by mistake, as a rule. */
    static final int MOST = 500;

    private static final Pattern PICTURE = Pattern.compile("(?i).*\\.(jpe?g|png)");
    private static final int LONGEST_TITLE = 120;

    private ScanFiles() {}

    /** The files in the order of their names, page 2 before page 10. */
    static List<Path> of(List<Path> chosen) throws LibraryException {
        List<Path> files = new ArrayList<>();
        for (Path one : chosen) {
            if (Files.isDirectory(one)) {
                files.addAll(pictures(one));
            } else {
                files.add(one);
            }
        }
        if (files.isEmpty()) {
            throw new LibraryException("There is no JPEG and no PNG picture in "
                    + chosen.stream()
                            .map(ScanFiles::quoted)
                            .reduce((a, b) -> a + ", " + b)
                            .orElse("that folder")
                    + ". Choose the folder or the files again.");
        }
        if (files.size() > MOST) {
            throw new LibraryException("These are " + files.size() + " files, and at most " + MOST
                    + " are brought in at one go. Choose fewer of them.");
        }
        files.sort(Comparator.comparing(ScanFiles::name, NameOrder.NUMBERED).thenComparing(Path::toString));
        return files.stream().distinct().toList();
    }

    private static List<Path> pictures(Path folder) throws LibraryException {
        try (Stream<Path> in = Files.list(folder)) {
            return in.filter(file ->
                            PICTURE.matcher(name(file)).matches() && !name(file).startsWith("."))
                    .filter(Files::isRegularFile)
                    .toList();
        } catch (IOException e) {
            throw new LibraryException(
                    "The folder " + quoted(folder) + " could not be read. Choose another one; nothing was changed.", e);
        }
    }

    static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static String quoted(Path file) {
        return "\"" + name(file) + "\"";
    }

    /** A title to begin with: the file's name, without its ending and made readable. */
    static String title(Path file) {
        String name = PICTURE.matcher(name(file)).matches()
                ? name(file).substring(0, name(file).lastIndexOf('.'))
                : name(file);
        String words = name.replaceAll("[\\p{Cntrl}\\p{Cs}_]+", " ").strip();
        String title = words.codePointCount(0, words.length()) > LONGEST_TITLE
                ? words.substring(0, words.offsetByCodePoints(0, LONGEST_TITLE))
                : words;
        return title.isBlank() ? "Scan" : title;
    }
}
