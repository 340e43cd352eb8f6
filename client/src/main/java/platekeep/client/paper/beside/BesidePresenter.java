package platekeep.client.paper.beside;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.Picture;
import platekeep.client.library.Saving;
import platekeep.client.paper.bring.BringPresenter;
import platekeep.client.paper.picture.PaperSource;
import platekeep.client.room.Latest;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Workroom;

/** Shows the pictures beside the plate that is open, adds some and puts some away. */
public final class BesidePresenter implements RoomListener {
    private final Workroom room;
    private final BringPresenter bring;
    private final BesideView view;
    private final Latest<List<Picture>> reading;
    private Optional<Whose> whose = Optional.empty();
    private List<Picture> pictures = List.of();

    private record Whose(Library library, String plateId, String title) {
        boolean isSame(Whose other) {
            return library == other.library && plateId.equals(other.plateId);
        }
    }

    public BesidePresenter(Workroom room, BringPresenter bring, BesideView view) {
        this.room = room;
        this.bring = bring;
        this.view = view;
        this.reading = new Latest<>(room);
        room.listen(this);
    }

    /** Shows what lies beside a plate. */
    public void of(Library library, String plateId, String title) {
        Whose now = new Whose(library, plateId, title);
        boolean isOther = whose.filter(now::isSame).isEmpty();
        whose = Optional.of(now);
        if (isOther) {
            pictures = List.of();
            show();
            read();
        }
    }

    private void read() {
        whose.ifPresent(now -> reading.ask(progress -> now.library().pictures(now.plateId()), read -> {
            if (whose.filter(now::isSame).isPresent()) {
                pictures = read.stream()
                        .sorted(Comparator.comparing(Picture::kind).thenComparing(Picture::path))
                        .toList();
                show();
            }
        }));
    }

    private void show() {
        if (whose.isEmpty()) {
            view.show(BesideState.NOTHING);
            return;
        }
        List<BesideState.Item> items = new ArrayList<>();
        for (int i = 0; i < pictures.size(); i++) {
            items.add(new BesideState.Item(new PaperSource(whose.get().library(), pictures.get(i)), words(i)));
        }
        view.show(new BesideState(whose.get().title(), items));
    }

    private String words(int at) {
        Picture.Kind kind = pictures.get(at).kind();
        long before = pictures.subList(0, at + 1).stream()
                .filter(picture -> picture.kind() == kind)
                .count();
        String word = kind.word();
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1) + " " + before;
    }

    /** Asks for pictures and puts them beside the plate. */
    public void add() {
        whose.ifPresentOrElse(
                now -> bring.pictures(now.library(), now.plateId(), now.title()),
                () -> room.front().trouble("Open a plate first, then add its pictures."));
    }

    /** Puts one of the pictures away. */
    public void putAway(int at) {
        if (whose.isEmpty() || at < 0 || at >= pictures.size()) {
            return;
        }
        Whose now = whose.get();
        Picture picture = pictures.get(at);
        String words = words(at) + " of \"" + now.title() + "\"";
        if (view.askPutAway(words) == BesideView.Answer.PUT_AWAY) {
            room.withHand(now.library(), () -> putAway(now, picture, words + " put away"));
        }
    }

    private void putAway(Whose now, Picture picture, String reason) {
        room.work(
                progress -> now.library()
                        .save(new Saving(
                                List.of(new Change.PutPictureAway(picture)),
                                reason,
                                Optional.empty(),
                                Optional.empty())),
                version -> {
                    room.front().say(reason + ".");
                    room.changed(now.library());
                });
    }

    @Override
    public void contentChanged(Library library) {
        if (whose.filter(now -> now.library() == library).isPresent()) {
            read();
        }
    }

    @Override
    public void librariesChanged() {
        if (whose.filter(now -> !room.open().contains(now.library())).isPresent()) {
            whose = Optional.empty();
            pictures = List.of();
            show();
        }
    }
}
