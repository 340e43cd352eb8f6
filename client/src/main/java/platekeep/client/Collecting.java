package platekeep.client;

import java.nio.file.Path;
import java.util.List;
import platekeep.client.carry.Carrying;
import platekeep.client.command.desk.Carrier;
import platekeep.client.command.desk.Scans;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.paper.bring.BringView;
import platekeep.client.paper.bring.Intake;

/** What commands ask for to bring scans in and to carry plates over, done as in the window. */
public final class Collecting implements Scans, Carrier {
    private final Path dataFolder;

    /**
     * @param dataFolder where the window keeps what is not saved
     */
    public Collecting(Path dataFolder) {
        this.dataFolder = dataFolder;
    }

    @Override
    public Sheets read(Library library, List<Path> files, Scans.Size size) throws LibraryException {
        Intake intake = Intake.read(
                library, files, size == Scans.Size.SMALLER ? BringView.Size.SMALLER : BringView.Size.AS_THEY_ARE);
        return new Sheets(
                intake.ready().stream()
                        .map(sheet -> new Sheet(sheet.title(), sheet.bytes()))
                        .toList(),
                intake.leftOut());
    }

    @Override
    public Load load(Library from, List<String> ids, Library to, Way way) throws LibraryException {
        List<Drafts> drafts =
                List.of(new Drafts(dataFolder.resolve("drafts")), new Drafts(dataFolder.resolve("paper")));
        Carrying carrying = Carrying.of(
                way == Way.MOVE ? platekeep.client.carry.Way.MOVE : platekeep.client.carry.Way.COPY,
                from,
                ids,
                to,
                drafts);
        return new Loaded(carrying);
    }

    private record Loaded(Carrying carrying) implements Load {
        @Override
        public List<String> words() {
            return carrying.words();
        }

        @Override
        public List<String> carried() {
            return carrying.carried();
        }

        @Override
        public List<String> left() {
            return carrying.left();
        }

        @Override
        public boolean doesSomething() {
            return carrying.doesSomething();
        }

        @Override
        public String carry() throws LibraryException {
            return carrying.carry();
        }
    }
}
