package platekeep.client.look;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.task.Progress;
import platekeep.model.look.Mirror;
import platekeep.model.look.Motif;
import platekeep.model.look.MotifFinder;
import platekeep.model.look.Occurrence;
import platekeep.model.plate.Plate;

/** Looks for plates that contain a motif; tells what it has every few hundred plates. */
final class MotifHunt implements Hunt {
    private static final int TELL = 400;
    private static final int PLACES = 20;

    private final List<Library> libraries;
    private final Sights sights;
    private final Optional<Motif> motif;
    private final Optional<MotifFinder> finder;
    private final Options.Times times;
    private final List<Hit> hits = new ArrayList<>();
    private int all;

    MotifHunt(List<Library> libraries, Sights sights, Plate motif, Options options) {
        this.libraries = libraries;
        this.sights = sights;
        this.motif = Motif.of(motif);
        this.finder = this.motif.map(m -> new MotifFinder(m, options.motif()));
        this.times = options.times();
    }

    @Override
    public Finds run(Progress progress, Consumer<Finds> found) throws LibraryException {
        if (finder.isEmpty()) {
            return new Finds(List.of(), 0, "No cable was chosen.");
        }
        for (Library library : libraries) {
            Set<String> here = now(library, progress, found);
            if (times == Options.Times.ONCE_TOO) {
                once(library, here, progress);
            }
        }
        return finds();
    }

    private Finds finds() {
        String plates = all == 0
                ? "No plate contains it."
                : Counts.of(all, "plate") + (all == 1 ? " contains it" : " contain it");
        return new Finds(hits, all, all > hits.size() ? plates + "; the first " + hits.size() + " are shown" : plates);
    }

    /** The plates that contain it as they are now, by id. */
    private Set<String> now(Library library, Progress progress, Consumer<Finds> found) throws LibraryException {
        int hitsBefore = hits.size();
        int allBefore = all;
        Looking looking = new Looking(library, progress, found);
        List<Entry> entries = library.list(progress, looking::at);
        if (!looking.goesOnTo(entries)) {
            // what was told of while it was read is another thing now
            hits.subList(hitsBefore, hits.size()).clear();
            all = allBefore;
            looking = new Looking(library, progress, found);
        }
        looking.at(entries);
        return looking.here;
    }

    /** Looks into the plates of one library as they are read. */
    private final class Looking {
        private final Library library;
        private final Progress progress;
        private final Consumer<Finds> found;
        private final Set<String> here = new HashSet<>();
        private List<Entry> done = List.of();

        Looking(Library library, Progress progress, Consumer<Finds> found) {
            this.library = library;
            this.progress = progress;
            this.found = found;
        }

        boolean goesOnTo(List<Entry> entries) {
            return done.size() <= entries.size() && done.equals(entries.subList(0, done.size()));
        }

        /** Looks into those of them that are new. */
        void at(List<Entry> entries) {
            for (int i = done.size(); i < entries.size(); i++) {
                if (progress.cancelled()) {
                    throw new CancellationException();
                }
                at(entries.get(i));
                if (i % TELL == TELL - 1) {
                    progress.at(i, entries.size(), "looking at plates");
                    found.accept(finds());
                }
            }
            done = entries;
        }

        private void at(Entry entry) {
            Optional<Plate> plate = entry.plate();
            List<Occurrence> places = plate.filter(p -> finder.get().mayBeIn(sights.trace(entry.content(), p)))
                    .map(p -> finder.get().in(p, PLACES))
                    .orElse(List.of());
            if (!places.isEmpty()) {
                here.add(plate.get().id());
                add(new Hit(
                        library,
                        plate.get(),
                        entry.content(),
                        Optional.empty(),
                        true,
                        words(plate.get(), places),
                        places.get(0).mirror(),
                        places(plate.get(), places),
                        0));
            }
        }
    }

    private void add(Hit hit) {
        all++;
        if (hits.size() < Finds.MOST) {
            hits.add(hit);
        }
    }

    /** Of each plate that does not contain it now the newest version that did. */
    private void once(Library library, Set<String> here, Progress progress) throws LibraryException {
        List<PastPlate> past = sights.past(library, progress).stream()
                .filter(one -> !here.contains(one.plateId()))
                .filter(one -> sights.trace(one).filter(finder.get()::mayBeIn).isPresent())
                .toList();
        Map<PastPlate, List<Occurrence>> found = new ConcurrentHashMap<>();
        library.readPast(past, progress, (one, entry) -> {
            List<Occurrence> places =
                    entry.plate().map(p -> finder.get().in(p, PLACES)).orElse(List.of());
            if (!places.isEmpty()) {
                found.put(one, places);
            }
        });
        Set<String> taken = new HashSet<>();
        List<PastPlate> newest = past.stream()
                .filter(found::containsKey)
                .filter(one -> taken.add(one.plateId()))
                .toList();
        all += Math.max(0, newest.size() - (Finds.MOST - hits.size()));
        List<PastPlate> shown = newest.subList(0, Math.min(newest.size(), Finds.MOST - hits.size()));
        new Once(library).hits(shown, progress, (one, plate) -> {
            List<Occurrence> places = found.get(one);
            return new Once.Why(words(plate, places), places.get(0).mirror(), places(plate, places), this::add);
        });
    }

    private List<Outlined.Place> places(Plate plate, List<Occurrence> places) {
        return places.stream()
                .map(place -> new Outlined.Place(
                        place.row(),
                        place.position() - plate.from(),
                        motif.get().height(),
                        motif.get().width(),
                        place.mirror()))
                .toList();
    }

    private static String words(Plate plate, List<Occurrence> places) {
        Occurrence first = places.get(0);
        int row = plate.numberFromBottom(first.row());
        String where = places.size() == 1
                ? "from row " + row + " down, from pleat " + first.position()
                : "at " + (places.size() == PLACES ? PLACES + " places or more" : places.size() + " places");
        List<String> words = new ArrayList<>(List.of(where));
        if (places.stream().noneMatch(place -> place.mirror() == Mirror.NONE)) {
            words.add(first.mirror().words());
        }
        if (places.stream().noneMatch(place -> place.kinds() == Occurrence.Kinds.SAME)) {
            words.add("up and down exchanged");
        }
        return String.join(", ", words);
    }
}
