package platekeep.model.join.edits;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/** Plain line merging of the texts, by the native program; needs {@code git} on the path. */
final class LineMerge implements Joiner {
    private final Path folder;

    LineMerge() {
        try {
            folder = Files.createTempDirectory("line-merge");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Override
    public Plate join(Plate base, Plate mine, Plate theirs) {
        try {
            Path m = put("mine.json", mine);
            Process git = new ProcessBuilder(
                            "git",
                            "merge-file",
                            "-p",
                            m.toString(),
                            put("base.json", base).toString(),
                            put("theirs.json", theirs).toString())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            byte[] merged = git.getInputStream().readAllBytes();
            if (git.waitFor() != 0) {
                throw new Stopped("lines in conflict");
            }
            return PlateText.read("merged.json", merged)
                    .value()
                    .orElseThrow(() -> new IllegalStateException("what came out is no plate"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private Path put(String name, Plate plate) throws IOException {
        return Files.write(folder.resolve(name), PlateText.bytes(plate));
    }
}
