package platekeep.client.gallery.tag;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import platekeep.client.library.Changed;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.library.Version;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.client.ui.Dates;
import platekeep.model.find.tag.TagReversal;
import platekeep.model.plate.Plate;

/**
 * Takes a change of tags back, as one new version: what was tagged just now, or a version from the history of a library.
 * Only tags and the list of themes are put back; what else changed in the plates since stays.
 */
public final class TakeBackPresenter {
    private static final int MOST_LOOKED_INTO = 300;
    private static final int MOST_OFFERED = 60;
    private static final int PROBES = 3;

    /** How this program tells a change of tags where she gives no reason of her own. */
    private static final Pattern USUAL =
            Pattern.compile("(Theme \"|Tagged |No longer |Taken back: ).*", Pattern.DOTALL);

    private final Workroom room;
    private final TagView view;
    private List<Done> last = new ArrayList<>();

    /** A version that was just made. */
    private record Done(Library library, String versionId) {}

    TakeBackPresenter(Workroom room, TagView view) {
        this.room = room;
        this.view = view;
    }

    /** Something else is being done: what comes now is the last. */
    void begin() {
        last = new ArrayList<>();
    }

    /** A version was made for it. */
    void done(Library library, Version version) {
        last.add(new Done(library, version.id()));
    }

    /** Takes back what was tagged last in this session, in each library that it changed. */
    public void takeBackLast() {
        List<Done> wanted = last.stream()
                .filter(done -> room.open().contains(done.library()))
                .toList();
        if (wanted.isEmpty()) {
            room.front()
                    .say("Nothing was tagged since the program was started. Ctrl+Alt+Z shows what was tagged before.");
            return;
        }
        begin();
        wanted.forEach(done -> takeBack(done.library(), done.versionId()));
    }

    /** Offers the changes of tags in the history of a library, and takes the chosen one back. */
    public void takeBackFrom(Library library) {
        room.saying("Looking through the history …", (Progress progress) -> Offered.of(library), offered -> {
            if (offered.isEmpty()) {
                room.front().say("No version in the history of " + room.nameOf(library) + " changed tags alone.");
                return;
            }
            view.askTagVersion(
                            room.nameOf(library),
                            offered.stream().map(Offered::words).toList())
                    .ifPresent(at -> takeBack(library, offered.get(at).version().id()));
        });
    }

    /** A version to choose. */
    private record Offered(Version version, int plates) {

        /** The newest that changed nothing but tags or the list of themes; in the background. */
        static List<Offered> of(Library library) throws LibraryException {
            Map<String, Integer> plates = new HashMap<>();
            for (PastPlate past : library.past()) {
                plates.merge(past.versionId(), 1, Integer::sum);
            }
            List<Version> likely = library.versions(Integer.MAX_VALUE).stream()
                    .filter(version -> !version.isJoin() && !version.parents().isEmpty())
                    .filter(version -> plates.getOrDefault(version.id(), 0) != 1
                            || USUAL.matcher(version.reason()).matches())
                    .limit(MOST_LOOKED_INTO)
                    .toList();
            List<Offered> offered = new ArrayList<>();
            for (Version version : likely) {
                if (offered.size() < MOST_OFFERED && isOnlyTags(library.changed(version.id(), PROBES))) {
                    offered.add(new Offered(version, plates.getOrDefault(version.id(), 0)));
                }
            }
            return offered;
        }

        private static boolean isOnlyTags(Changed changed) {
            boolean isList = changed.before().isPresent() && !changed.before().equals(changed.after());
            return changed.others() == 0
                    && (isList || !changed.plates().isEmpty())
                    && changed.plates().stream().allMatch(pair -> TagReversal.isOnlyTags(pair.before(), pair.after()));
        }

        String words() {
            return Dates.shortDay(version.on()) + ", " + version.inNameOf().name() + ": "
                    + version.reason().lines().findFirst().orElse("")
                    + (plates == 0 ? "" : " (" + Counted.of(plates, "plate") + ")");
        }
    }

    private void takeBack(Library library, String versionId) {
        room.saying(
                "Looking at what would change …",
                (Progress progress) -> TakeBack.of(library, versionId),
                plan -> ask(library, plan));
    }

    private void ask(Library library, TakeBack plan) {
        if (plan.isEmpty()) {
            room.front().say("There is nothing to take back" + (plan.kept().isEmpty() ? "." : ": " + plan.kept()));
            return;
        }
        String sentence =
                plan.reason() + ", of " + Dates.shortDay(plan.version().on())
                        + (plan.back().isEmpty()
                                ? ", on the list of themes."
                                : ", on " + Counted.of(plan.back().size(), "plate")
                                        + ". Only tags are put back; what else changed in them since stays.")
                        + (plan.kept().isEmpty() ? "" : " Left as they are: " + plan.kept());
        if (view.agrees(sentence, plan.back().stream().map(Plate::title).toList())) {
            room.withHand(library, () -> save(library, plan));
        }
    }

    private void save(Library library, TakeBack plan) {
        room.save((Progress progress) -> library.save(plan.saving()), version -> {
            done(library, version);
            room.front()
                    .say(plan.reason() + " (" + Counted.of(plan.back().size(), "plate") + ")."
                            + (plan.kept().isEmpty() ? "" : " Left as they are: " + plan.kept()));
            room.changed(library);
        });
    }
}
