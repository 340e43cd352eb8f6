package platekeep.client.look;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.room.Latest;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Sought;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.client.task.Step;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Dates;
import platekeep.model.compare.Comparison;
import platekeep.model.draw.Spot;
import platekeep.model.look.Mirror;
import platekeep.model.look.Motif;
import platekeep.model.look.Overlay;
import platekeep.model.look.Wanted;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * What the search by look does: searches in the background, shows hits as they come, and leads from a hit to the plate,
 * to both side by side, on to what is like it, or back into the library where it was put away.
 */
public final class LookPresenter implements RoomListener {
    private static final int MOST_DIFFERENCES = 12;
    private static final double NEAR = 0.8;

    private static final String NO_PLATE =
            "Choose a plate in the gallery, or open one, and press Ctrl+Shift+Y to see what is like it.";
    private static final String NO_MOTIF =
            "On the Plate screen choose a part of the chart, then press Ctrl+Shift+F to find plates that contain it.";

    private final Workroom room;
    private final LookView view;
    private final Sights sights;
    private final OldTexts texts;
    private final Latest<Optional<LookState.Detail>> details;
    private final Map<String, Hit> hits = new LinkedHashMap<>();
    private Optional<Sought> sought = Optional.empty();
    private LookState.Way way = LookState.Way.LIKE;
    private final Map<LookState.Way, Sought> lastPictures = new EnumMap<>(LookState.Way.class);
    private Options options = Options.FIRST;
    private Finds finds = Finds.NONE;
    private Optional<Tasks.Running> running = Optional.empty();
    private String progress = "";
    private int run;

    public LookPresenter(Workroom room, LookView view) {
        this.room = room;
        this.view = view;
        this.sights = new Sights(room.tasks().helpers());
        this.texts = new OldTexts(sights);
        this.details = new Latest<>(room);
        room.listen(this);
    }

    /** Shows where one is. */
    public void begin() {
        show();
    }

    @Override
    public void librariesChanged() {
        sights.forget();
        texts.forget();
        stop();
        lastPictures.values().removeIf(this::isGone);
        sought = sought.filter(wanted -> !isGone(wanted));
        found(Finds.NONE);
        if (sought.isPresent()) {
            search();
        }
    }

    @Override
    public void contentChanged(Library library) {
        if (!finds.hits().isEmpty()) {
            search();
        }
    }

    private boolean isGone(Sought wanted) {
        return room.open().isEmpty()
                || wanted instanceof Sought.LikePlate like && !room.open().contains(like.library());
    }

    /** Searches for something else. */
    public void search(Sought wanted) {
        sought = Optional.of(wanted);
        way = way(wanted);
        if (picture(wanted).isPresent()) {
            lastPictures.put(way, wanted);
        }
        search();
    }

    /** Takes another of the four ways; two of them need a picture, which is chosen elsewhere. */
    public void take(LookState.Way other) {
        if (other == LookState.Way.DOUBLES) {
            search(new Sought.Doubles());
        } else if (other == LookState.Way.ONCE) {
            search(new Sought.OnceSaid(""));
        } else if (way != other) {
            stop();
            way = other;
            sought = Optional.ofNullable(lastPictures.get(other));
            found(Finds.NONE);
            search();
        }
    }

    /** Asks for words in old versions. */
    public void words(String words) {
        search(new Sought.OnceSaid(words));
    }

    /** Looks into old versions too, or no longer so. */
    public void times(Options.Times times) {
        options = options.with(times);
        search();
    }

    /** Looks for the motif more or less strictly. */
    public void wanted(Wanted wanted) {
        options = options.with(wanted);
        search();
    }

    private void search() {
        stop();
        if (sought.isEmpty() || room.open().isEmpty()) {
            show();
            return;
        }
        int mine = ++run;
        finds = Finds.NONE;
        hits.clear();
        progress = "Searching …";
        show();
        Hunt hunt = hunt(sought.get());
        running = Optional.of(room.tasks()
                .run(
                        p -> hunt.run(p, found -> room.tasks().onEventThread(() -> ifNewest(mine, () -> found(found)))),
                        step -> ifNewest(mine, () -> progress(step)),
                        outcome -> ifNewest(mine, () -> {
                            progress = "";
                            outcome.fold(
                                    done -> found(done.value()),
                                    failed -> failed(failed.why()),
                                    cancelled -> found(finds));
                        })));
    }

    private boolean failed(Exception why) {
        room.trouble(why);
        return found(finds);
    }

    private void ifNewest(int mine, Runnable then) {
        if (mine == run) {
            then.run();
        }
    }

    private Hunt hunt(Sought wanted) {
        List<Library> open = room.open();
        if (wanted instanceof Sought.LikePlate like) {
            return new LikeHunt(open, sights, like.plate(), options.times());
        }
        if (wanted instanceof Sought.WithMotif motif) {
            return new MotifHunt(open, sights, motif.motif(), options);
        }
        if (wanted instanceof Sought.OnceSaid said) {
            return new OnceSaidHunt(open, texts, said.words());
        }
        return new DoublesHunt(open, sights);
    }

    /** Gives the search up; what was found stays. */
    public void stop() {
        running.filter(r -> !r.over()).ifPresent(Tasks.Running::cancel);
        running = Optional.empty();
        if (!progress.isEmpty()) {
            run++;
            progress = "";
            show();
        }
    }

    private void progress(Step step) {
        progress =
                step.total() == 0 ? step.what() + " …" : step.what() + ", " + 100 * step.done() / step.total() + " %";
        show();
    }

    private boolean found(Finds newFinds) {
        finds = newFinds;
        hits.clear();
        finds.hits().forEach(hit -> hits.put(hit.key(), hit));
        show();
        return true;
    }

    private static LookState.Way way(Sought wanted) {
        if (wanted instanceof Sought.LikePlate) {
            return LookState.Way.LIKE;
        }
        if (wanted instanceof Sought.WithMotif) {
            return LookState.Way.MOTIF;
        }
        return wanted instanceof Sought.Doubles ? LookState.Way.DOUBLES : LookState.Way.ONCE;
    }

    private void show() {
        Optional<Plate> asked = sought.flatMap(LookPresenter::picture);
        String title = sought.map(LookPresenter::title).orElse("");
        String words = sought.filter(s -> s instanceof Sought.OnceSaid)
                .map(s -> ((Sought.OnceSaid) s).words())
                .orElse("");
        List<LookCard> cards = hits.values().stream().map(this::card).toList();
        view.show(new LookState(way, asked, title, words, options, cards, summary(), progress));
    }

    private String summary() {
        if (room.open().isEmpty()) {
            return room.isOpening() ? "Opening the library …" : "No library is open.";
        }
        if (sought.isEmpty()) {
            return way == LookState.Way.MOTIF ? NO_MOTIF : NO_PLATE;
        }
        return finds.summary();
    }

    private static Optional<Plate> picture(Sought wanted) {
        if (wanted instanceof Sought.LikePlate like) {
            return Optional.of(like.plate());
        }
        return wanted instanceof Sought.WithMotif motif ? Optional.of(motif.motif()) : Optional.empty();
    }

    private static String title(Sought wanted) {
        if (wanted instanceof Sought.LikePlate like) {
            return like.plate().title();
        }
        return wanted instanceof Sought.WithMotif motif ? "Part of " + motif.from() : "";
    }

    private LookCard card(Hit hit) {
        List<String> where = new ArrayList<>();
        hit.then().ifPresent(then -> where.add(words(then)));
        if (room.open().size() > 1) {
            where.add(room.nameOf(hit.library()));
        }
        String mark = hit.isThere() ? hit.then().map(t -> "once").orElse("") : "put away";
        return new LookCard(
                hit.key(),
                hit.content(),
                hit.plate(),
                hit.plate().title(),
                hit.why(),
                String.join("  ·  ", where),
                mark,
                hit.places(),
                hit.group());
    }

    /** A version in words: its names, day, hand and reason. */
    private static String words(PlateVersion then) {
        Version version = then.version();
        String names = then.names().isEmpty() ? "" : String.join(", ", then.names()) + ", ";
        return names + Dates.shortDay(version.on()) + ", " + version.inNameOf().name() + ": "
                + version.reason().lines().findFirst().orElse("");
    }

    /** Shows more of a hit. */
    public void choose(String key) {
        Optional<Hit> hit = Optional.ofNullable(hits.get(key));
        if (hit.isEmpty()) {
            view.show(Optional.empty());
            return;
        }
        Optional<Beside> beside = beside(hit.get());
        details.ask(p -> Optional.of(detail(hit.get(), beside)), view::show);
    }

    /** What a hit is compared with. */
    private record Beside(Place.Side side, Optional<Plate> plate, String title) {}

    private Optional<Beside> beside(Hit hit) {
        if (hit.group() > 0) {
            return hits.values().stream()
                    .filter(other -> other.group() == hit.group())
                    .findFirst()
                    .filter(first -> first != hit)
                    .map(first -> new Beside(
                            side(first),
                            Optional.of(first.plate()),
                            first.plate().title()));
        }
        if (sought.isPresent() && sought.get() instanceof Sought.LikePlate like) {
            Place.Side side = new Place.Side(
                    like.library(),
                    like.plate().id(),
                    Optional.empty(),
                    like.plate().title());
            return Optional.of(
                    new Beside(side, Optional.of(like.plate()), like.plate().title()));
        }
        if (hit.then().isPresent() && hit.isThere()) {
            Place.Side now = new Place.Side(hit.library(), hit.plate().id(), Optional.empty(), "as it is now");
            return Optional.of(new Beside(now, Optional.empty(), "as it is now"));
        }
        return Optional.empty();
    }

    private static Place.Side side(Hit hit) {
        return new Place.Side(
                hit.library(),
                hit.plate().id(),
                hit.then().map(t -> t.version().id()),
                hit.then().map(LookPresenter::words).orElse(hit.plate().title()));
    }

    private LookState.Detail detail(Hit hit, Optional<Beside> beside) throws LibraryException {
        Optional<Plate> other = beside.flatMap(Beside::plate);
        if (beside.isPresent() && other.isEmpty()) {
            other = hit.library().plate(hit.plate().id()).flatMap(entry -> entry.plate());
        }
        List<String> differences = other.filter(o -> isNear(o, hit))
                .map(o -> differences(o, hit.plate()))
                .orElse(List.of());
        return new LookState.Detail(
                card(hit),
                other,
                beside.map(Beside::title).orElse(""),
                differences,
                beside.isPresent(),
                hit.then().isPresent());
    }

    /** Whether a list of differences says more than that the two are different. */
    private static boolean isNear(Plate other, Hit hit) {
        return other.id().equals(hit.plate().id())
                || hit.mirror() == Mirror.NONE
                        && Overlay.of(other, hit.plate(), Mirror.NONE)
                                .filter(laid -> laid.agreement() >= NEAR)
                                .isPresent();
    }

    private static List<String> differences(Plate before, Plate after) {
        List<String> words = Comparison.of(before, after).words();
        if (words.size() <= MOST_DIFFERENCES) {
            return words;
        }
        List<String> first = new ArrayList<>(words.subList(0, MOST_DIFFERENCES));
        first.add("and " + (words.size() - MOST_DIFFERENCES) + " more");
        return first;
    }

    /** Opens a plate, where a motif was found at its place; an old version beside what the plate is now; one that was put away can be brought back. */
    public void open(String key) {
        Hit hit = hits.get(key);
        if (hit == null) {
            return;
        }
        if (hit.then().isEmpty()) {
            room.go(place(hit));
        } else if (hit.isThere()) {
            room.go(new Place.Compare(
                    side(hit), new Place.Side(hit.library(), hit.plate().id(), Optional.empty(), "as it is now")));
        } else {
            bringBack(key);
        }
    }

    /** The plate; with where the motif lies in it, if that was asked for. */
    private Place place(Hit hit) {
        Optional<Motif> motif = sought.filter(s -> s instanceof Sought.WithMotif)
                .flatMap(s -> Motif.of(((Sought.WithMotif) s).motif()));
        if (motif.isEmpty() || hit.places().isEmpty()) {
            return new Place.OnePlate(hit.library(), hit.plate().id());
        }
        List<List<Spot>> parts =
                hit.places().stream().map(place -> spots(motif.get(), place)).toList();
        return new Place.InPlate(hit.library(), hit.plate().id(), hit.plate(), parts);
    }

    private static List<Spot> spots(Motif motif, Outlined.Place place) {
        List<String> cells = motif.mirrored(place.mirror()).cells();
        List<Spot> spots = new ArrayList<>();
        for (int row = 0; row < cells.size(); row++) {
            for (int i = 0; i < cells.get(row).length(); i++) {
                if (cells.get(row).charAt(i) != Row.EMPTY) {
                    spots.add(new Spot(place.row() + row, place.index() + i));
                }
            }
        }
        return spots;
    }

    /** Shows what was asked for and a hit side by side. */
    public void compare(String key) {
        Optional<Hit> hit = Optional.ofNullable(hits.get(key));
        Optional<Beside> beside = hit.flatMap(this::beside);
        if (beside.isPresent()) {
            boolean isOldFirst =
                    hit.get().then().isPresent() && beside.get().plate().isEmpty();
            Place.Side other = beside.get().side();
            room.go(isOldFirst ? new Place.Compare(side(hit.get()), other) : new Place.Compare(other, side(hit.get())));
        } else if (hit.isPresent()) {
            room.front().say("There is nothing to put it beside.");
        }
    }

    /** Searches on for plates like a hit. */
    public void likeThis(String key) {
        Optional.ofNullable(hits.get(key)).ifPresent(hit -> search(new Sought.LikePlate(hit.library(), hit.plate())));
    }

    /** Brings a plate back as it was, after asking. */
    public void bringBack(String key) {
        Hit hit = hits.get(key);
        if (hit == null || hit.then().isEmpty()) {
            room.front().say("Only what was found in an old version can be brought back.");
            return;
        }
        String title = "\"" + hit.plate().title() + "\"";
        String day = Dates.day(hit.then().get().version().on());
        String question = hit.isThere()
                ? "Bring " + title + " back as it was on " + day + "? What it is now stays in its history."
                : "Bring " + title + " back into the library, as it was on " + day + "?";
        if (view.askBringBack(question)) {
            room.withHand(hit.library(), () -> save(hit, title + " brought back as of " + day));
        }
    }

    private void save(Hit hit, String reason) {
        room.work(
                (Progress p) -> hit.library()
                        .save(new Saving(
                                List.of(new Change.PutPlate(hit.plate())), reason, Optional.empty(), Optional.empty())),
                version -> {
                    room.front().say(reason + ".");
                    room.changed(hit.library());
                    room.go(new Place.OnePlate(hit.library(), hit.plate().id()));
                });
    }
}
