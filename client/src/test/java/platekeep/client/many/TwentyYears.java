package platekeep.client.many;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.client.library.Hand;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/**
 * Twenty years of two designers. Mostly they share one line of versions; now and then the partner goes on by herself for
 * a while and the two lines are joined.
 */
final class TwentyYears {
    static final Hand WENNA = new Hand("Wenna Tarrow", "wenna@workshop.example");
    static final Hand ISOLDE = new Hand("Isolde Marsh", "isolde@workshop.example");
    static final Instant BEGAN = Instant.parse("2006-01-09T09:00:00Z");

    private static final long SECONDS = Duration.ofDays(20 * 365).toSeconds();
    private static final String MAIN = "main";
    private static final String ALONE = "alone";

    private final ImportStream out;
    private final Chance chance;
    private final Steps steps;
    private final int versions;
    private final Cabinet cabinet = new Cabinet();
    private final List<Named> names = new ArrayList<>();
    private int made = 1;
    private String newest;

    /** A name given to a version of a plate; the version is a mark of the stream. */
    record Named(String plateId, String version, Hand hand, long at, String text) {}

    /**
     * How large a library is.
     *
     * @param plates how many are there in the end
     * @param versions how many there are in all, the first and the joins too
     */
    record Size(int plates, int versions, long seed) {
        static final Size STANDARD = new Size(10_000, 20_000, 1);

        Size {
            if (plates < 1 || versions < 3) {
                throw new IllegalArgumentException("a library has at least 1 plate and 3 versions");
            }
        }
    }

    /**
     * @param first the version that is there, which made the library
     * @param facts what the library says about itself in it
     */
    TwentyYears(ImportStream out, Size size, String first, LibraryFacts facts) {
        this.out = out;
        this.chance = new Chance(size.seed(), "years");
        this.steps = new Steps(size.plates(), facts, chance);
        this.versions = size.versions();
        this.newest = first;
    }

    /** Writes all of it and gives the names of versions, to be written when the versions' ids are known. */
    List<Named> tell() throws IOException {
        boolean wasAlone = false;
        while (made < versions) {
            if (chance.percent(1.2) && versions - made > 30 && cabinet.ids().size() > 30) {
                partAndJoin();
                wasAlone = true;
            } else {
                Hand hand = chance.percent(60) ? WENNA : ISOLDE;
                newest = write(MAIN, hand, List.of(newest), cabinet, steps.shared(cabinet, versions - made));
            }
        }
        if (wasAlone) {
            out.drop(ALONE);
        }
        return names;
    }

    /** The partner goes on by herself while work goes on here; then the two lines are joined. */
    private void partAndJoin() throws IOException {
        Cabinet before = new Cabinet(cabinet);
        Cabinet hers = new Cabinet(cabinet);
        String herNewest = newest;
        Set<String> herPlates = new LinkedHashSet<>();
        for (int i = chance.between(2, 8); i > 0; i--) {
            Steps.Step step = steps.alone(hers, versions - made);
            step.plateId().ifPresent(herPlates::add);
            herNewest = write(ALONE, ISOLDE, List.of(herNewest), hers, step);
        }
        for (int i = chance.between(1, 6); i > 0; i--) {
            List<String> both =
                    herPlates.stream().filter(before.ids()::contains).toList();
            boolean same = !both.isEmpty() && chance.percent(35);
            Steps.Step step = steps.edit(cabinet, same ? chance.of(both) : chance.of(cabinet.ids()));
            newest = write(MAIN, WENNA, List.of(newest), cabinet, step);
        }
        for (String id : herPlates) {
            Plate theirs = hers.plate(id);
            Optional<Plate> mine = cabinet.maybe(id);
            cabinet.put(mine.isEmpty() ? theirs : joined(before.maybe(id), mine.get(), theirs));
        }
        Steps.Step join = new Steps.Step("Joined with Isolde's versions", Optional.empty());
        newest = write(MAIN, WENNA, List.of(newest, herNewest), cabinet, join);
    }

    private static Plate joined(Optional<Plate> before, Plate mine, Plate theirs) {
        return Join.plate(before, mine, theirs, new Hands(Optional.of(WENNA.name()), Optional.of(ISOLDE.name())));
    }

    private String write(String branch, Hand hand, List<String> parents, Cabinet line, Steps.Step step)
            throws IOException {
        long at = BEGAN.getEpochSecond() + SECONDS * made / versions + chance.between(0, 60);
        Hand enteredBy = chance.percent(4) ? WENNA : hand;
        String mark =
                out.write(new ImportStream.Made(branch, hand, enteredBy, at, step.reason(), parents, line.taken()));
        made++;
        if (step.plateId().isPresent() && chance.percent(2)) {
            int year = Instant.ofEpochSecond(at).atOffset(ZoneOffset.UTC).getYear();
            String text = WordBox.versionName(year, chance);
            names.add(new Named(step.plateId().get(), mark, hand, at, text));
            steps.named(step.plateId().get(), text);
        }
        return mark;
    }
}
