package platekeep.client.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.model.draw.Spot;

/** Keeps what the Join screen would show, and answers as it was told to. */
final class RecordingJoinView implements JoinView {
    JoinState state = JoinState.NOTHING;
    Optional<Area> revealed = Optional.empty();
    Optional<Spot> pointedOut = Optional.empty();
    String place = "";
    Optional<String> reason = Optional.empty();
    Consent consent = Consent.NO;
    List<String> causes = List.of();
    final List<String> questions = new ArrayList<>();
    final List<String> suggestions = new ArrayList<>();

    Board board() {
        return state.board().orElseThrow();
    }

    @Override
    public void show(JoinState newState) {
        state = newState;
    }

    @Override
    public void reveal(Area area) {
        revealed = Optional.of(area);
    }

    @Override
    public void pointOut(Spot spot) {
        pointedOut = Optional.of(spot);
    }

    @Override
    public void causes(List<String> words) {
        causes = words;
    }

    @Override
    public void place(String words) {
        place = words;
    }

    @Override
    public Optional<String> askReason(String suggestion) {
        suggestions.add(suggestion);
        return reason;
    }

    @Override
    public Consent askConsent(String question, String yes) {
        questions.add(question);
        return consent;
    }
}
