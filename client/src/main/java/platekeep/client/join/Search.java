package platekeep.client.join;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.client.draft.Drafts;
import platekeep.client.draft.KeptDraft;
import platekeep.client.library.Arrivals;
import platekeep.client.library.Entry;
import platekeep.client.library.Hand;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/** Looks for plates that wait for a decision. Reads the disk; for a background thread. */
final class Search {
    private final Drafts drafts;
    private final Drafts joins;

    /**
     * @param drafts of plates of the library
     * @param joins of plates that came and are not brought in yet
     */
    Search(Drafts drafts, Drafts joins) {
        this.drafts = drafts;
        this.joins = joins;
    }

    /** Whether the partner's versions are looked at. */
    enum Reach {
        /** Always. */
        PARTNER,
        /** Only where deciding about them was begun. */
        BEGUN,
        /** Never. */
        HERE
    }

    /**
     * One plate that was found.
     *
     * @param kept what was decided about it before
     */
    record Hit(Case of, Optional<Plate> kept) {}

    /**
     * What was found.
     *
     * @param newest the library's newest version
     * @param arrivals what came, where it was looked at
     * @param trouble why the partner's versions could not be looked at
     */
    record Found(
            Optional<String> newest, Optional<Arrivals> arrivals, List<Hit> hits, Optional<LibraryException> trouble) {}

    Found in(Library library, Reach reach, Progress progress) throws LibraryException {
        List<KeptDraft> begun = joins.all(library.folder());
        boolean looks = reach == Reach.PARTNER || reach == Reach.BEGUN && !begun.isEmpty();
        Optional<Arrivals> arrivals = Optional.empty();
        Optional<LibraryException> trouble = Optional.empty();
        if (looks && library.sharedCopy().isPresent()) {
            try {
                arrivals = Optional.of(library.look(progress));
            } catch (LibraryException e) {
                trouble = Optional.of(e);
            }
        }
        List<Hit> hits = new ArrayList<>();
        if (arrivals.isPresent()) {
            hits.addAll(arrived(library, arrivals.get(), begun, progress));
        }
        hits.addAll(open(library, hits, progress));
        return new Found(library.newest().map(Version::id), arrivals, hits, trouble);
    }

    /** What came and has to be joined; what was decided about it before and is still about the same. */
    private List<Hit> arrived(Library library, Arrivals arrivals, List<KeptDraft> begun, Progress progress)
            throws LibraryException {
        List<Hit> hits = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Arrivals.Arrival arrival : arrivals.plates()) {
            if (arrival.isToJoin()) {
                progress.at(hits.size(), arrivals.plates().size(), "joining plates");
                Case of = Case.arrived(arrival);
                ids.add(of.id());
                hits.add(new Hit(
                        of,
                        begun.stream()
                                .filter(kept -> kept.plate().id().equals(of.id()))
                                .filter(kept -> kept.seen().equals(Optional.of(of.mark())))
                                .map(KeptDraft::plate)
                                .findFirst()));
            }
        }
        for (KeptDraft kept : begun) {
            if (!ids.contains(kept.plate().id())) {
                joins.drop(library.folder(), kept.plate().id());
            }
        }
        hits.sort(Comparator.comparing((Hit hit) -> hit.of().clashes().isEmpty())
                .thenComparing(hit -> hit.of().before().title()));
        return hits;
    }

    private List<Hit> open(Library library, List<Hit> arrived, Progress progress) throws LibraryException {
        Set<String> ids = new HashSet<>();
        arrived.forEach(hit -> ids.add(hit.of().id()));
        Optional<String> me = library.hand().map(Hand::name);
        List<Hit> hits = new ArrayList<>();
        for (Entry entry : library.list(progress)) {
            Optional<Plate> plate = entry.plate().filter(Plate::hasClashes).filter(p -> !ids.contains(p.id()));
            if (plate.isPresent()) {
                Optional<KeptDraft> draft =
                        drafts.of(library.folder(), plate.get().id());
                hits.add(new Hit(Case.open(plate.get(), me, entry.content()), draft.map(KeptDraft::plate)));
            }
        }
        hits.sort(Comparator.comparing(hit -> hit.of().before().title()));
        return hits;
    }
}
