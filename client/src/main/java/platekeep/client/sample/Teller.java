package platekeep.client.sample;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.client.library.Change;
import platekeep.client.library.Hand;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.text.PlateText;
import platekeep.model.text.Reading;
import platekeep.model.text.SeriesText;
import platekeep.sample.Happening;
import platekeep.sample.Happening.Who;
import platekeep.sample.SampleStory;

/** Makes in a library what happened in the story. */
final class Teller {
    private final Library library;
    private final SampleStory story;
    private final StoryClock clock;
    private final Map<String, String> idAt = new HashMap<>();

    Teller(Library library, SampleStory story, StoryClock clock) {
        this.library = library;
        this.story = story;
        this.clock = clock;
    }

    static Hand hand(Who who) {
        return new Hand(who.fullName(), who.address());
    }

    void tell(List<Happening> happenings) throws LibraryException {
        for (Happening happening : happenings) {
            tell(happening);
        }
    }

    void tell(Happening happening) throws LibraryException {
        clock.set(happening.on());
        Hand enteredBy = hand(happening.enteredBy());
        if (!library.hand().equals(Optional.of(enteredBy))) {
            library.introduce(enteredBy);
        }
        List<Change> changes = new ArrayList<>();
        happening.put().keySet().stream()
                .sorted()
                .forEach(path -> changes.add(put(path, happening.put().get(path))));
        happening.away().forEach(path -> changes.add(new Change.PutAway(idAt.get(path))));
        Version version = library.save(
                new Saving(changes, happening.reason(), Optional.of(hand(happening.inNameOf())), Optional.empty()));
        for (String plateId : happening.names().keySet().stream().sorted().toList()) {
            library.nameVersion(plateId, version.id(), happening.names().get(plateId));
        }
    }

    private Change put(String path, String resource) {
        byte[] text = story.text(resource);
        if (path.startsWith("series/")) {
            Series series = good(SeriesText.read(resource, text));
            return new Change.PutSeries(series);
        }
        Plate plate = good(PlateText.read(resource, text));
        idAt.put(path, plate.id());
        return new Change.PutPlate(plate);
    }

    private static <T> T good(Reading<T> reading) {
        return reading.fold(good -> good.read(), bad -> {
            throw new IllegalStateException(bad.problems().get(0).sentence());
        });
    }
}
