package platekeep.client.plate.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;
import platekeep.client.plate.piece.Area;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Repeat;

/** Keeps what the Plate screen would show, and answers as it was told to. */
final class RecordingPlateView implements PlateView {
    PlateState state = PlateState.NOTHING;
    String place = "";
    Optional<Area> seen = Optional.empty();
    Optional<Spot> pointedOut = Optional.empty();
    List<String> suggestions = new ArrayList<>();
    List<String> hands = List.of();
    Optional<SaveAnswer> reason = Optional.empty();
    Optional<String> line = Optional.empty();
    Optional<Colour> colour = Optional.empty();
    Optional<Cloth> cloth = Optional.empty();
    Consent consent = Consent.NO;
    Optional<Recolouring> recolouring = Optional.empty();
    Optional<Repeating> repeating = Optional.empty();
    Optional<Strip> strip = Optional.empty();
    Optional<Character> mergeInto = Optional.empty();
    Optional<MotifAnswer> motif = Optional.empty();
    List<Colour> series = List.of();
    List<Plate> motifs = List.of();
    UnaryOperator<Line> geometric = UnaryOperator.identity();
    Optional<Notion> notion = Optional.empty();
    int room;

    @Override
    public void show(PlateState newState) {
        state = newState;
    }

    @Override
    public void place(String words) {
        place = words;
    }

    @Override
    public void pointOut(Spot spot) {
        pointedOut = Optional.of(spot);
    }

    @Override
    public void see(Area area) {
        seen = Optional.of(area);
    }

    @Override
    public Optional<SaveAnswer> askReason(String suggestion, List<String> newHands) {
        suggestions.add(suggestion);
        hands = newHands;
        return reason;
    }

    @Override
    public Optional<Cloth> askCloth(Cloth before) {
        return cloth;
    }

    @Override
    public Optional<String> askPutAway(String title) {
        return line;
    }

    @Override
    public Optional<String> askVersionName(String versionWords) {
        return line;
    }

    @Override
    public Optional<Colour> askColour(String title, Colour before, List<Colour> newSeries) {
        series = newSeries;
        return colour;
    }

    @Override
    public Optional<Recolouring> askRecolour(Palette palette, Set<Character> there, Optional<Character> now) {
        return recolouring;
    }

    @Override
    public Optional<Repeating> askRepeat(int pleats, IntUnaryOperator roomFor) {
        room = repeating.map(r -> roomFor.applyAsInt(r.gap())).orElse(0);
        return repeating;
    }

    @Override
    public Optional<Strip> askStrip(int pleats, Optional<Repeat> before) {
        return strip;
    }

    @Override
    public Optional<Character> askMerge(Palette palette, char gone) {
        return mergeInto;
    }

    @Override
    public Optional<String> askRemark() {
        return line;
    }

    @Override
    public Optional<Line> askLine(Plate plate, Line before) {
        return Optional.of(geometric.apply(before));
    }

    @Override
    public Optional<Notion> askNotion(Notion before) {
        return notion;
    }

    @Override
    public Optional<String> askMotifName() {
        return line;
    }

    @Override
    public Optional<MotifAnswer> askMotif(List<Plate> all) {
        motifs = all;
        return motif;
    }

    @Override
    public Consent askConsent(String question, String yes) {
        return consent;
    }
}
