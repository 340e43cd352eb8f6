package platekeep.client.look;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.NamedVersion;
import platekeep.client.library.PastPlate;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Telling;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.find.Index;
import platekeep.model.find.Saying;
import platekeep.model.find.Summary;
import platekeep.model.find.Surroundings;
import platekeep.model.find.Told;

/**
 * All texts that plates of a library have or had, in an index like that of the gallery, so that words are found in them
 * just as there. A text that is no more is found by the reason and the names of its version too, and by who made it.
 * Each text is read once; made anew where the library has a newer version.
 */
final class OldTexts {
    /** So many are read before what was found is told first; then each time twice as many. */
    private static final int FIRST_PART = 2000;

    private final Sights sights;
    private final Map<Library, Texts> kept = new HashMap<>();

    /**
     * What is there to be asked.
     *
     * @param newest the library's newest version
     * @param past all texts, the newest first
     * @param index of those that were read; each has its place in that list as its key
     */
    record Texts(String newest, List<PastPlate> past, Index index) {
        static final Texts NONE = new Texts("", List.of(), Index.empty());

        /** The text that a key stands for. */
        PastPlate at(String key) {
            return past.get(Integer.parseInt(key));
        }
    }

    /**
     * @param sights remembers texts that were read
     */
    OldTexts(Sights sights) {
        this.sights = sights;
    }

    /** Forgets everything, as when libraries were closed. */
    synchronized void forget() {
        kept.clear();
    }

    /**
     * The texts of a library.
     *
     * @param soFar hears, a few times and less and less often, of what has been read until then
     */
    synchronized Texts of(Library library, Progress progress, Consumer<Texts> soFar) throws LibraryException {
        Optional<String> newest = library.newest().map(Version::id);
        if (newest.isEmpty()) {
            return Texts.NONE;
        }
        Texts before = kept.getOrDefault(library, Texts.NONE);
        if (!before.newest().equals(newest.get())) {
            kept.put(library, read(library, newest.get(), progress, soFar));
        }
        return kept.get(library);
    }

    private Texts read(Library library, String newest, Progress progress, Consumer<Texts> soFar)
            throws LibraryException {
        List<PastPlate> past = library.past();
        Sayings sayings = Sayings.of(library);
        Surroundings around = Surroundings.of(library.facts(), library.series());
        Texts texts = new Texts(newest, past, Index.empty());
        for (int from = 0, to = 0; from < past.size(); from = to) {
            to = Math.min(past.size(), Math.max(FIRST_PART, 2 * from));
            progress.at(from, past.size(), "reading old versions");
            sights.learn(library, past.subList(from, to), new Silent(progress));
            List<Summary> part = new ArrayList<>();
            for (int i = from; i < to; i++) {
                PastPlate one = past.get(i);
                String key = String.format("%07d", i);
                sights.summary(one)
                        .map(summary -> summary.as(key).in(around).withTold(sayings.of(one)))
                        .ifPresent(part::add);
            }
            texts = new Texts(newest, past, texts.index().with(part, List.of()));
            if (to < past.size()) {
                soFar.accept(texts);
            }
        }
        return texts;
    }

    /** Hears no steps, since a part of the work is none, but can be cancelled. */
    private record Silent(Progress asked) implements Progress {
        @Override
        public void at(int done, int total, String what) {
            // the parts are told of
        }

        @Override
        public boolean cancelled() {
            return asked.cancelled();
        }
    }

    /**
     * What was said of versions.
     *
     * @param versions by id
     * @param names of a plate's texts, by plate and content
     */
    private record Sayings(Map<String, Version> versions, Map<String, List<String>> names) {

        static Sayings of(Library library) throws LibraryException {
            Map<String, Version> versions = Telling.versions(library);
            Map<String, List<String>> names = new HashMap<>();
            List<String> named = library.names().stream()
                    .map(NamedVersion::plateId)
                    .distinct()
                    .toList();
            for (String plateId : named) {
                for (PlateVersion step : library.history(plateId)) {
                    step.entry()
                            .ifPresent(
                                    entry -> names.computeIfAbsent(plateId + entry.content(), key -> new ArrayList<>())
                                            .addAll(step.names()));
                }
            }
            return new Sayings(versions, names);
        }

        /** Nothing for a text that the plate has still: by what its versions tell, the gallery finds it. */
        Told of(PastPlate one) {
            Version version = versions.get(one.versionId());
            if (one.isNow() || version == null) {
                return Told.NOTHING;
            }
            List<Saying> sayings = new ArrayList<>();
            names.getOrDefault(one.plateId() + one.content(), List.of())
                    .forEach(name -> sayings.add(Telling.saying(Saying.Kind.NAME, name, version)));
            sayings.add(Telling.saying(Saying.Kind.REASON, version.reason(), version));
            sayings.add(Telling.saying(Saying.Kind.HAND, version.inNameOf().name(), version));
            return new Told(List.of(version.on().toLocalDate()), sayings);
        }
    }
}
