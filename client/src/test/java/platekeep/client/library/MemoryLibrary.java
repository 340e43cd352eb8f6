package platekeep.client.library;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import platekeep.client.git.plates.PictureFiles;
import platekeep.client.task.Progress;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.text.LibraryFacts;
import platekeep.model.text.PlateText;

/**
 * A library that keeps everything in memory, for tests of presenters. A partner is there once something
 * {@link #arrives} from one; what is brought in is joined by the real join.
 */
public final class MemoryLibrary implements Library {
    private static final ZonedDateTime FIRST = ZonedDateTime.of(2026, 3, 2, 9, 0, 0, 0, ZoneOffset.UTC);

    private final Path folder;
    private final String name;
    private Optional<Hand> hand;
    private final List<Version> versions = new ArrayList<>();
    private final List<Map<String, Entry>> states = new ArrayList<>();
    private final Map<String, List<String>> names = new LinkedHashMap<>();
    private final List<NamedVersion> named = new ArrayList<>();
    private final Map<String, Series> series = new LinkedHashMap<>();
    private final Map<Picture, byte[]> pictures = new LinkedHashMap<>();
    private final List<LibraryFacts> said = new ArrayList<>();
    private final Map<String, Entry> damaged = new TreeMap<>();
    private Optional<LibraryException> nextFailure = Optional.empty();
    private Optional<Version> partners = Optional.empty();
    private final Map<String, Plate> agreed = new LinkedHashMap<>();
    private final Map<String, Plate> theirs = new LinkedHashMap<>();

    public MemoryLibrary(String name, Optional<Hand> hand) {
        this(Path.of("/libraries").resolve(name).toAbsolutePath(), name, hand);
    }

    public MemoryLibrary(Path folder, String name, Optional<Hand> hand) {
        this.folder = folder;
        this.name = name;
        this.hand = hand;
    }

    /** Lets the next saving fail with a sentence. */
    public void failNext(String sentence) {
        nextFailure = Optional.of(new LibraryException(sentence));
    }

    /**
     * A partner changed plates since the two libraries agreed on them.
     *
     * @param base as both had them
     * @param changed as the partner has them now
     */
    public void arrives(Hand partner, List<Plate> base, List<Plate> changed) {
        base.forEach(plate -> agreed.put(plate.id(), plate));
        changed.forEach(plate -> theirs.put(plate.id(), plate));
        partners = Optional.of(new Version("f".repeat(40), partner, partner, FIRST.plusHours(5), "Hers", List.of()));
    }

    /** Puts a file there that does not read as a plate. */
    public void damage(Entry.Damaged entry) {
        damaged.put(entry.path(), entry);
    }

    /** Puts a text that does not read in the place of a plate at one version, newest or not. */
    public void damageAt(String plateId, String versionId, Entry.Damaged entry) {
        Map<String, Entry> state = new LinkedHashMap<>(state(index(versionId)));
        state.put(plateId, entry);
        states.set(index(versionId), state);
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public LibraryFacts facts() {
        return said(said.size() - 1);
    }

    private LibraryFacts said(int at) {
        return at < 0 ? new LibraryFacts("5f0c2b1e-2f0a-4c59-9f6e-0a1b2c3d4e5f", name()) : said.get(at);
    }

    @Override
    public Changed changed(String versionId, int most) {
        int at = index(versionId);
        List<Changed.Pair> pairs = new ArrayList<>();
        int others = 0;
        Set<String> ids = new TreeSet<>(state(at).keySet());
        ids.addAll(state(at - 1).keySet());
        for (String id : ids) {
            Optional<Entry> before = Optional.ofNullable(state(at - 1).get(id));
            Optional<Entry> after = Optional.ofNullable(state(at).get(id));
            if (!before.equals(after) && pairs.size() + others < most) {
                Optional<Plate> was = before.flatMap(Entry::plate);
                Optional<Plate> is = after.flatMap(Entry::plate);
                if (was.isPresent() && is.isPresent()) {
                    pairs.add(new Changed.Pair(was.get(), is.get()));
                } else {
                    others++;
                }
            }
        }
        return new Changed(versions.get(at), pairs, others, Optional.of(said(at - 1)), Optional.of(said(at)));
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Optional<Hand> hand() {
        return hand;
    }

    @Override
    public void introduce(Hand newHand) {
        this.hand = Optional.of(newHand);
    }

    @Override
    public Optional<Version> newest() {
        return versions.isEmpty() ? Optional.empty() : Optional.of(versions.get(versions.size() - 1));
    }

    @Override
    public List<Entry> list(Progress progress) {
        Map<String, Entry> all = new TreeMap<>();
        state(states.size() - 1).values().forEach(entry -> all.put(entry.path(), entry));
        all.putAll(damaged);
        return List.copyOf(all.values());
    }

    @Override
    public List<Entry> listAt(String versionId, Progress progress) {
        return List.copyOf(state(index(versionId)).values());
    }

    private Map<String, Entry> state(int at) {
        return at < 0 ? Map.of() : states.get(at);
    }

    private int index(String versionId) {
        for (int i = 0; i < versions.size(); i++) {
            if (versions.get(i).id().equals(versionId)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public List<Series> series() {
        return List.copyOf(series.values());
    }

    @Override
    public Optional<Entry> plate(String plateId) {
        return Optional.ofNullable(state(states.size() - 1).get(plateId));
    }

    @Override
    public Optional<Entry> plateAt(String plateId, String versionId) {
        return Optional.ofNullable(state(index(versionId)).get(plateId));
    }

    @Override
    public List<PlateVersion> history(String plateId) {
        List<PlateVersion> history = new ArrayList<>();
        for (int i = 0; i < states.size(); i++) {
            Optional<Entry> now = Optional.ofNullable(states.get(i).get(plateId));
            Optional<Entry> before = Optional.ofNullable(state(i - 1).get(plateId));
            if (!now.equals(before)) {
                String id = versions.get(i).id();
                history.add(new PlateVersion(versions.get(i), now, names.getOrDefault(plateId + id, List.of())));
            }
        }
        Collections.reverse(history);
        return history;
    }

    @Override
    public List<Version> versions(int most) {
        List<Version> newestFirst = new ArrayList<>(versions);
        Collections.reverse(newestFirst);
        return newestFirst.subList(0, Math.min(most, newestFirst.size()));
    }

    @Override
    public List<PastPlate> past() {
        Map<String, PastPlate> past = new LinkedHashMap<>();
        for (int i = states.size() - 1; i >= 0; i--) {
            for (Entry entry : states.get(i).values()) {
                Optional<String> id = entry.plate().map(Plate::id);
                Optional<Entry> before = id.map(state(i - 1)::get);
                if (id.isPresent() && !before.equals(Optional.of(entry))) {
                    boolean isNow = Optional.of(entry).equals(plate(id.get()));
                    String version = versions.get(i).id();
                    past.putIfAbsent(
                            id.get() + entry.content(),
                            new PastPlate(id.get(), entry.path(), entry.content(), version, isNow));
                }
            }
        }
        return List.copyOf(past.values());
    }

    @Override
    public void readPast(List<PastPlate> which, Progress progress, BiConsumer<PastPlate, Entry> each) {
        for (PastPlate past : which) {
            plateAt(past.plateId(), past.versionId()).ifPresent(entry -> each.accept(past, entry));
        }
    }

    @Override
    public List<PlateVersion> putAway() {
        List<PlateVersion> away = new ArrayList<>();
        states.stream().flatMap(state -> state.keySet().stream()).distinct().forEach(id -> {
            List<PlateVersion> history = history(id);
            if (history.get(0).entry().isEmpty()) {
                away.add(history.get(1));
            }
        });
        return away;
    }

    @Override
    public Version save(Saving saving) throws LibraryException {
        if (nextFailure.isPresent()) {
            LibraryException failure = nextFailure.get();
            nextFailure = Optional.empty();
            throw failure;
        }
        Map<String, Entry> state = new LinkedHashMap<>(state(states.size() - 1));
        for (Change change : saving.changes()) {
            if (change instanceof Change.PutPlate put) {
                state.put(put.plate().id(), entry(put.plate()));
            } else if (change instanceof Change.PutAway away) {
                state.remove(away.plateId());
            } else if (change instanceof Change.PutSeries put) {
                series.put(put.series().id(), put.series());
            } else if (change instanceof Change.PutSeriesAway away) {
                series.remove(away.seriesId());
            } else if (change instanceof Change.PutPicture put) {
                pictures.put(picture(put), put.bytes());
            } else if (change instanceof Change.PutPictureAway away) {
                pictures.remove(away.picture());
            }
        }
        boolean isPlatesOnly = saving.changes().stream()
                .allMatch(change -> change instanceof Change.PutPlate || change instanceof Change.PutAway);
        if (state.equals(state(states.size() - 1)) && isPlatesOnly) {
            throw new LibraryException("Nothing has changed.");
        }
        Hand by = saving.inNameOf().or(() -> hand).orElseThrow(() -> new LibraryException("Nobody was introduced."));
        List<String> parents = newest().map(v -> List.of(v.id())).orElse(List.of());
        Version version = new Version(
                String.format("%040x", versions.size() + 1),
                by,
                hand.orElse(by),
                FIRST.plusDays(versions.size()),
                saving.reason(),
                parents);
        versions.add(version);
        states.add(state);
        said.add(saving.changes().stream()
                .filter(change -> change instanceof Change.PutFacts)
                .map(change -> ((Change.PutFacts) change).facts())
                .findFirst()
                .orElseGet(this::facts));
        return version;
    }

    private static Picture picture(Change.PutPicture put) {
        String content = String.format("%08x", Arrays.hashCode(put.bytes()));
        String name = PictureFiles.name(put.plateId(), put.kind(), put.bytes()).orElseThrow();
        return new Picture(put.plateId(), put.kind(), "plates/" + name, content);
    }

    private static Entry entry(Plate plate) {
        String text = PlateText.write(plate);
        String content = Integer.toHexString(text.hashCode()) + text.getBytes(StandardCharsets.UTF_8).length;
        return new Entry.Good("plates/" + plate.id() + ".json", content, plate);
    }

    @Override
    public void nameVersion(String plateId, String versionId, String newName) {
        names.computeIfAbsent(plateId + versionId, key -> new ArrayList<>()).add(newName);
        named.add(new NamedVersion(plateId, versionId, newName));
    }

    @Override
    public List<NamedVersion> names() {
        return List.copyOf(named);
    }

    @Override
    public List<Picture> pictures(String plateId) {
        return pictures().stream()
                .filter(picture -> picture.plateId().equals(plateId))
                .toList();
    }

    @Override
    public List<Picture> pictures() {
        return List.copyOf(pictures.keySet());
    }

    @Override
    public byte[] bytes(Picture picture) throws LibraryException {
        return Optional.ofNullable(pictures.get(picture))
                .orElseThrow(() -> new LibraryException("That picture is not here."));
    }

    @Override
    public List<HandEdit> handEdits() {
        return List.of();
    }

    @Override
    public Version takeIn(List<HandEdit> edits, String reason, Optional<Hand> inNameOf) throws LibraryException {
        throw new LibraryException("Nothing was changed by hand.");
    }

    @Override
    public Optional<Path> sharedCopy() {
        return partners.map(version -> folder.resolveSibling("shared"));
    }

    @Override
    public void share(Path sharedFolder) throws LibraryException {
        throw new LibraryException("This library has no partner.");
    }

    @Override
    public Set<String> unsent() throws LibraryException {
        Set<String> unsent = new HashSet<>();
        for (Entry entry : sharedCopy().isEmpty() ? List.<Entry>of() : list(Progress.NONE)) {
            String id = entry.plate().orElseThrow().id();
            for (PlateVersion version : history(id)) {
                if (version.version().equals(versions(1).get(0))) {
                    unsent.add(id);
                }
            }
        }
        return unsent;
    }

    @Override
    public Arrivals look(Progress progress) throws LibraryException {
        Version came = partners.orElseThrow(() -> new LibraryException("This library has no partner."));
        List<Arrivals.Arrival> plates = new ArrayList<>();
        theirs.forEach((id, plate) -> plates.add(new Arrivals.Arrival(
                id,
                Optional.ofNullable(agreed.get(id)),
                plate(id).flatMap(Entry::plate),
                Optional.of(plate),
                history(id).stream().findFirst().map(PlateVersion::version),
                partners)));
        return new Arrivals(Optional.of(came.id()), plates.isEmpty() ? List.of() : List.of(came), versions(1), plates);
    }

    @Override
    public BroughtIn bringIn(Arrivals seen, List<Plate> settled, Progress progress) throws LibraryException {
        Map<String, Plate> after = new LinkedHashMap<>();
        for (Arrivals.Arrival arrival : seen.plates()) {
            Hands hands = new Hands(
                    arrival.changedHere().map(v -> v.inNameOf().name()),
                    arrival.changedThere().map(v -> v.inNameOf().name()));
            Plate came = arrival.theirs().orElseThrow();
            after.put(
                    arrival.plateId(),
                    arrival.isToJoin()
                            ? Join.plate(arrival.base(), arrival.mine().orElseThrow(), came, hands)
                            : came);
        }
        settled.forEach(plate -> after.put(plate.id(), plate));
        List<Change> changes = after.values().stream()
                .map(p -> (Change) new Change.PutPlate(p))
                .toList();
        Version saved = save(new Saving(changes, "Joined", Optional.empty(), Optional.empty()));
        Version join = new Version(
                saved.id(),
                saved.inNameOf(),
                saved.enteredBy(),
                saved.on(),
                saved.reason(),
                List.of(saved.parents().get(0), seen.partnerHead().orElseThrow()));
        versions.set(versions.size() - 1, join);
        theirs.clear();
        List<String> open =
                after.values().stream().filter(Plate::hasClashes).map(Plate::id).toList();
        List<String> joined =
                after.keySet().stream().filter(id -> !open.contains(id)).toList();
        return new BroughtIn(join, List.of(), joined, open, List.of());
    }

    @Override
    public Sent send(Progress progress) throws LibraryException {
        throw new LibraryException("This library has no partner.");
    }

    @Override
    public void close() {
        // there is nothing to close
    }
}
