package platekeep.client.command.partner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.file.ReadablePlate;
import platekeep.client.command.keep.LibraryVerb;
import platekeep.client.command.keep.Told;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.library.Arrivals;
import platekeep.client.library.BroughtIn;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;
import platekeep.model.compare.Comparison;
import platekeep.model.join.ClashWords;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;

/** Brings the partner's versions in and joins what both changed; or only looks at what waits. */
public final class BringVerb extends LibraryVerb {

    private final Word look = flag("Only tell what waits there and here, and change nothing.", "--look");

    public BringVerb(Desk desk) {
        super(
                desk,
                new About(
                        "bring",
                        "Brings your partner's versions in; what you both changed is joined.",
                        "0 all joined, 1 clashes are open in some plates, 2 trouble and nothing changed.",
                        List.of("platekeep bring --look", "platekeep bring")));
    }

    @Override
    protected int answer(Library library) throws LibraryException {
        Arrivals arrivals = library.look(Progress.NONE);
        if (look.given()) {
            tell(arrivals);
            return Exit.FINE;
        }
        if (arrivals.incoming().isEmpty()) {
            tellNothingCame(library);
            return Exit.FINE;
        }
        BroughtIn brought = library.bringIn(arrivals, List.of(), Progress.NONE);
        if (asJson()) {
            sayJson(json(brought));
        } else {
            tell(library, brought);
        }
        return brought.clashing().isEmpty() ? Exit.FINE : Exit.FOUND;
    }

    private void tell(Arrivals arrivals) {
        if (asJson()) {
            sayJson(new Value.Builder()
                    .put(
                            "incoming",
                            Told.items(
                                    arrivals.incoming().stream().map(Told::json).toList()))
                    .put(
                            "waiting",
                            Told.items(
                                    arrivals.waiting().stream().map(Told::json).toList()))
                    .put(
                            "plates",
                            Told.items(arrivals.plates().stream()
                                    .map(BringVerb::json)
                                    .toList()))
                    .build());
            return;
        }
        say(ReadablePlate.count(arrivals.incoming().size(), "version") + " to bring in.");
        arrivals.incoming().forEach(version -> say("  " + Told.line(version)));
        arrivals.plates().forEach(arrival -> desk.say(words(arrival)));
        say(ReadablePlate.count(arrivals.waiting().size(), "version") + " to send.");
        arrivals.waiting().forEach(version -> say("  " + Told.line(version)));
    }

    /** What the partner changed in a plate, in words. */
    private static List<String> words(Arrivals.Arrival arrival) {
        List<String> lines = new ArrayList<>();
        lines.add(title(arrival) + (arrival.bothChanged() ? " (you changed it too):" : ":"));
        changes(arrival).forEach(words -> lines.add("  " + words));
        return lines;
    }

    private static String title(Arrivals.Arrival arrival) {
        return arrival.theirs()
                .or(arrival::base)
                .or(arrival::mine)
                .map(Plate::title)
                .orElse(arrival.plateId());
    }

    private static List<String> changes(Arrivals.Arrival arrival) {
        Optional<Plate> before = arrival.base();
        Optional<Plate> theirs = arrival.theirs();
        if (theirs.isEmpty()) {
            return List.of("Put away.");
        }
        return before.map(plate -> Comparison.of(plate, theirs.get()).words()).orElse(List.of("New."));
    }

    private static Value.Entries json(Arrivals.Arrival arrival) {
        return new Value.Builder()
                .put("id", arrival.plateId())
                .put("title", title(arrival))
                .put("bothChanged", Value.of(arrival.bothChanged()))
                .put("words", Value.ofTexts(changes(arrival)))
                .build();
    }

    private void tellNothingCame(Library library) throws LibraryException {
        if (asJson()) {
            sayJson(new Value.Builder()
                    .put("version", library.newest().map(v -> Value.of(v.id())).orElse(Value.NOTHING))
                    .put("tookOver", Value.ofTexts(List.of()))
                    .put("joined", Value.ofTexts(List.of()))
                    .put("clashing", Value.ofTexts(List.of()))
                    .build());
        } else {
            say("There is nothing to bring in.");
        }
    }

    private static Value.Entries json(BroughtIn brought) {
        return new Value.Builder()
                .put("version", brought.newest().id())
                .put("tookOver", Value.ofTexts(brought.tookOver()))
                .put("joined", Value.ofTexts(brought.joined()))
                .put("clashing", Value.ofTexts(brought.clashing()))
                .build();
    }

    private void tell(Library library, BroughtIn brought) throws LibraryException {
        for (String id : brought.tookOver()) {
            say("Took over: " + titleOf(library, id));
        }
        for (String id : brought.joined()) {
            say("Joined: " + titleOf(library, id));
        }
        for (String id : brought.clashing()) {
            say("Joined, with open clashes: " + titleOf(library, id));
            Optional<Plate> plate = library.plate(id).flatMap(Entry::plate);
            plate.map(ClashWords::of).orElse(List.of()).forEach(clash -> say("  " + clash));
        }
        say("Now at: " + Told.line(brought.newest()));
    }

    private static String titleOf(Library library, String id) throws LibraryException {
        return library.plate(id)
                .flatMap(Entry::plate)
                .map(Plate::title)
                .orElse("a plate that is put away (" + id + ")");
    }
}
