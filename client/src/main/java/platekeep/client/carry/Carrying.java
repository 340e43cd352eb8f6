package platekeep.client.carry;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.room.LibraryNames;
import platekeep.model.plate.Plate;

/** Plates on their way from one library to another without anybody being asked. */
public final class Carrying {
    private final Plan plan;

    private Carrying(Plan plan) {
        this.plan = plan;
    }

    /**
     * Looks at what carrying comes to; nothing is changed yet.
     *
     * @param drafts where what is not saved is kept
     */
    public static Carrying of(Way way, Library from, List<String> ids, Library to, List<Drafts> drafts)
            throws LibraryException {
        LibraryNames names = LibraryNames.of(Map.of(from, from.name(), to, to.name()));
        return new Carrying(Plan.of(way, Load.read(from, ids, drafts), to, names));
    }

    /** What happens and what to mind, a sentence each. */
    public List<String> words() {
        return plan.words();
    }

    /** Ids of plates that are in the other library afterwards. */
    public List<String> carried() {
        return plan.carried().stream().map(Plate::id).toList();
    }

    /** Ids of plates that are left as they are. */
    public List<String> left() {
        return Stream.concat(plan.different().stream(), plan.held().stream())
                .map(Plate::id)
                .toList();
    }

    /** Whether anything would happen. */
    public boolean doesSomething() {
        return plan.doesSomething();
    }

    /** Carries them; gives the reason of the versions that were made. */
    public String carry() throws LibraryException {
        plan.carry();
        return plan.reason();
    }
}
