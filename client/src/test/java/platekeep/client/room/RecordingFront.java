package platekeep.client.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.library.Hand;

/** Keeps what a window would have been told. */
public final class RecordingFront implements Front {
    public final List<Place> places = new ArrayList<>();
    public final List<String> said = new ArrayList<>();
    public final List<String> troubles = new ArrayList<>();
    public Optional<Hand> answer = Optional.empty();
    public int asked;

    @Override
    public void show(Place place) {
        places.add(place);
    }

    @Override
    public void say(String sentence) {
        said.add(sentence);
    }

    @Override
    public void trouble(String sentences) {
        troubles.add(sentences);
    }

    @Override
    public void busy(String what) {
        // work on one thread is never waited for
    }

    @Override
    public Optional<Hand> askHand(String library, Hand before) {
        asked++;
        return answer;
    }
}
