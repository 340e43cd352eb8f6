package platekeep.client.many;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.find.tag.Tagging;
import platekeep.model.find.tag.Tags;
import platekeep.model.plate.Plate;

/** What it costs to give one theme to many plates as one version and to look at that to take it back, as the gallery does both. */
final class TagFigures {
    private static final int TAGGED = 2000;

    private final Library library;
    private final NativeGit git;
    private final Consumer<Figure> told;
    private int turn;

    /**
     * @param library a copy that may be changed; it has at least twice as many plates as are tagged
     */
    TagFigures(Library library, NativeGit git, Consumer<Figure> told) {
        this.library = library;
        this.git = git;
        this.told = told;
    }

    void measure() throws Exception {
        List<Entry> entries = library.list(Progress.NONE);
        library.versions(1);
        List<String> ids = entries.stream()
                .flatMap(entry -> entry.plate().stream())
                .limit(TAGGED)
                .map(Plate::id)
                .toList();
        List<String> files =
                entries.stream().skip(entries.size() - TAGGED).map(Entry::path).toList();
        Figure.Work ours = () -> tag(ids);
        Figure.inTurn(1, ours, () -> change(files, NativeGit.USUAL));
        double[] usual = Figure.inTurn(3, ours, () -> change(files, NativeGit.USUAL));
        String name = "one theme on " + TAGGED + " plates as one version, forced to disk";
        told.accept(Figure.beside(name, usual[0], "write, git add, git commit", usual[1], 0));
        double[] forced = Figure.inTurn(3, ours, () -> change(files, NativeGit.FORCING));
        told.accept(Figure.beside("the same", forced[0], "the same, forcing too (core.fsync=all)", forced[1], 0));
        ours.run();
        double[] looked = Figure.inTurn(3, this::look, () -> git.says("diff", "--numstat", "HEAD^", "HEAD"));
        told.accept(Figure.beside(
                "what that version changed, to be taken back",
                looked[0],
                "git diff --numstat HEAD^ HEAD",
                looked[1],
                0));
        Figure.require(git.says("status", "--porcelain").isEmpty());
    }

    private void tag(List<String> ids) throws Exception {
        String theme = "theme of turn " + turn++;
        Tagging tagging = new Tagging(new Tags(List.of(theme), List.of(), List.of(), List.of()), Tags.NONE);
        List<Change> changes = new ArrayList<>();
        for (String id : ids) {
            Plate plate = library.plate(id).flatMap(Entry::plate).orElseThrow();
            changes.add(new Change.PutPlate(tagging.on(plate)));
        }
        library.save(new Saving(
                changes, tagging.words(), Optional.empty(), library.newest().map(Version::id)));
    }

    private void change(List<String> files, String fsync) throws Exception {
        for (String path : files) {
            Path file = library.folder().resolve(path);
            Files.writeString(file, Files.readString(file) + "\n");
        }
        byte[] paths = (String.join("\n", files) + "\n").getBytes(StandardCharsets.UTF_8);
        git.fed(input -> input.write(paths), "-c", fsync, "add", "--pathspec-from-file=-");
        git.says("-c", fsync, "commit", "--quiet", "-m", "Tagged");
    }

    private void look() throws Exception {
        String newest = library.newest().orElseThrow().id();
        Figure.require(library.changed(newest, TAGGED).plates().size() == TAGGED);
    }
}
