package platekeep.client.join;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import platekeep.client.draft.Drafts;
import platekeep.client.draft.KeptDraft;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Workroom;
import platekeep.model.join.ClashWords;
import platekeep.model.join.Settling;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;
import platekeep.model.stitch.Check;
import platekeep.model.stitch.CheckSettings;
import platekeep.model.stitch.Severity;

/**
 * Leads through the open clashes of a plate. Every decision is kept as a draft at once, so that it survives a restart,
 * and can be taken back; it is a version only when she saves.
 */
final class JoinPresenter implements RoomListener {
    private final Workroom room;
    private final Drafts drafts;
    private final JoinView view;
    private Optional<Library> library = Optional.empty();
    private Optional<String> seen = Optional.empty();
    private List<Plate> plates = List.of();
    private Optional<Plate> now = Optional.empty();
    private final Deque<Plate> before = new ArrayDeque<>();
    private final List<String> settled = new ArrayList<>();
    private int clash;

    JoinPresenter(Workroom room, Drafts drafts, JoinView view) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
        room.listen(this);
    }

    /** What was read: the newest version, and the plates with something open, drafts in place of what was saved. */
    private record Found(Optional<String> seen, List<Plate> plates) {}

    void show(Library chosen, Optional<String> plateId) {
        library = Optional.of(chosen);
        read(plateId);
    }

    void entered() {
        if (library.isEmpty() || !room.open().contains(library.get())) {
            library = room.open().stream().findFirst();
        }
        read(now.map(Plate::id));
    }

    @Override
    public void librariesChanged() {
        if (library.isPresent() && !room.open().contains(library.get())) {
            library = Optional.empty();
            plates = List.of();
            work(Optional.empty());
        }
    }

    private void read(Optional<String> wanted) {
        if (library.isEmpty()) {
            work(Optional.empty());
            return;
        }
        Library from = library.get();
        room.work(
                progress -> {
                    List<Plate> open = new ArrayList<>();
                    from.list(progress)
                            .forEach(entry -> entry.plate()
                                    .filter(Plate::hasClashes)
                                    .ifPresent(plate -> open.add(drafts.of(from.folder(), plate.id())
                                            .map(KeptDraft::plate)
                                            .orElse(plate))));
                    open.sort(Comparator.comparing(Plate::title));
                    return new Found(from.newest().map(Version::id), open);
                },
                found -> {
                    seen = found.seen();
                    plates = found.plates();
                    work(plates.stream()
                            .filter(p -> wanted.map(p.id()::equals).orElse(true))
                            .findFirst()
                            .or(() -> plates.stream().findFirst()));
                });
    }

    void choose(int index) {
        if (index >= 0 && index < plates.size()) {
            keepDraft();
            work(Optional.of(plates.get(index)));
        }
    }

    private void work(Optional<Plate> plate) {
        now = plate;
        before.clear();
        settled.clear();
        clash = 0;
        refresh();
    }

    /** Chooses one of the answers to the clash in question. */
    void answer(int index) {
        List<JoinState.Answer> answers = answers();
        if (index >= 0 && index < answers.size() && now.isPresent()) {
            JoinState.Answer chosen = answers.get(index);
            before.push(now.get());
            settled.add(where() + ": " + chosen.who());
            now = Optional.of(chosen.result());
            clash = 0;
            keepDraft();
            refresh();
        }
    }

    void next() {
        int open = now.map(p -> p.clashes().size()).orElse(0);
        clash = open == 0 ? 0 : (clash + 1) % open;
        refresh();
    }

    void undo() {
        if (!before.isEmpty()) {
            now = Optional.of(before.pop());
            settled.remove(settled.size() - 1);
            clash = 0;
            keepDraft();
            refresh();
        }
    }

    private void keepDraft() {
        if (library.isEmpty() || now.isEmpty() || settled.isEmpty() && before.isEmpty()) {
            return;
        }
        Library of = library.get();
        Plate plate = now.get();
        Optional<String> from = seen;
        room.work(
                progress -> {
                    drafts.keep(of.folder(), plate, from);
                    return plate;
                },
                kept -> room.draftsChanged());
    }

    /** What is proposed as the reason of the version. */
    String reason() {
        return settled.isEmpty() ? "Clashes settled" : "Settled: " + String.join("; ", settled);
    }

    void save(String reason) {
        if (library.isEmpty() || now.isEmpty()) {
            return;
        }
        Library into = library.get();
        Plate plate = now.get();
        room.withHand(
                into,
                () -> room.work(
                        progress -> {
                            Version saved = into.save(
                                    new Saving(List.of(new Change.PutPlate(plate)), reason, Optional.empty(), seen));
                            drafts.drop(into.folder(), plate.id());
                            return saved;
                        },
                        saved -> {
                            room.front().say("Version saved.");
                            room.draftsChanged();
                            room.changed(into);
                            read(Optional.of(plate.id()));
                        }));
    }

    private Optional<Clash> clash() {
        return now.filter(p -> clash < p.clashes().size()).map(p -> p.clashes().get(clash));
    }

    private String where() {
        return clash().map(c -> ClashWords.place(now.orElseThrow(), c)).orElse("");
    }

    private List<JoinState.Answer> answers() {
        List<JoinState.Answer> out = new ArrayList<>();
        clash().ifPresent(c -> {
            Plate plate = now.orElseThrow();
            int unnamed = 0;
            for (Clash.Side side : c.sides()) {
                String who = side.by().orElse(unnamed++ == 0 ? "one side" : "the other side");
                option(out, plate, c, who, side.value());
            }
            if (c.what() == Clash.What.ROWS) {
                option(out, plate, c, "both", Settling.bothRuns(c));
                option(out, plate, c, "neither", Value.NOTHING);
            } else {
                out.add(new JoinState.Answer("as it stands", words(plate, c, c.base()), Settling.keep(plate, c)));
            }
        });
        return out;
    }

    /** An answer that does not fit any more (the chart was changed meanwhile) is not offered. */
    private static void option(List<JoinState.Answer> out, Plate plate, Clash clash, String who, Value value) {
        try {
            out.add(new JoinState.Answer(who, words(plate, clash, value), Settling.choose(plate, clash, value)));
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            System.getLogger(JoinPresenter.class.getName()).log(System.Logger.Level.DEBUG, "answer left out", e);
        }
    }

    /** Cells in colour names, as they come: {@code 4 chalk, 2 empty}; a colour by what it is; other values as they are. */
    private static String words(Plate plate, Clash clash, Value value) {
        if (clash.what() == Clash.What.ROW && value.equals(Value.NOTHING)) {
            return "the row taken out";
        }
        if (clash.what() == Clash.What.COLOUR && value instanceof Value.Entries entry) {
            return String.join(
                    ", ",
                    entry.entries().values().stream().map(ClashWords::value).toList());
        }
        boolean cells = clash.what() == Clash.What.CABLES || clash.what() == Clash.What.ROW;
        return cells && value instanceof Value.Text text ? runs(plate, text.string()) : ClashWords.value(value);
    }

    private static String runs(Plate plate, String cables) {
        List<String> runs = new ArrayList<>();
        int start = 0;
        for (int k = 1; k <= cables.length(); k++) {
            if (k == cables.length() || cables.charAt(k) != cables.charAt(start)) {
                char key = cables.charAt(start);
                runs.add((k - start) + " "
                        + plate.palette().get(key).map(Colour::name).orElse("empty"));
                start = k;
            }
        }
        return String.join(", ", runs);
    }

    private void refresh() {
        List<JoinState.Waiting> waiting = plates.stream()
                .map(p -> now.filter(n -> n.id().equals(p.id())).orElse(p))
                .map(p -> new JoinState.Waiting(p.id(), p.title(), p.clashes().size()))
                .toList();
        int chosen = -1;
        for (int i = 0; i < plates.size(); i++) {
            chosen = now.isPresent() && plates.get(i).id().equals(now.get().id()) ? i : chosen;
        }
        view.show(new JoinState(
                waiting, chosen, now, where(), counter(), answers(), settled, findings(), !before.isEmpty()));
    }

    private String counter() {
        if (now.isEmpty()) {
            return "Nothing waits for a decision.";
        }
        int open = now.get().clashes().size();
        return open == 0 ? "All settled. Save the version." : "Clash " + (clash + 1) + " of " + open + " open";
    }

    private List<String> findings() {
        return now.map(plate -> Check.of(plate, CheckSettings.DEFAULT).stream()
                        .filter(f -> f.severity() == Severity.ERROR && !f.rule().contains("clash"))
                        .map(f -> f.row().map(r -> "Row " + r + ": ").orElse("") + f.text())
                        .toList())
                .orElse(List.of());
    }
}
