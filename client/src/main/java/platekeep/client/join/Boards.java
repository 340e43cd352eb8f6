package platekeep.client.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.model.draw.Drawing;
import platekeep.model.join.Settled;
import platekeep.model.join.back.Reversal;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;

/** Works a board out. Takes as long as drawing and checking the plate a few times; for a background thread. */
final class Boards {
    private static final int ROWS_AROUND = 2;
    private static final int POSITIONS_AROUND = 6;
    private static final int MOST_ROWS = 9;
    private static final int MOST_POSITIONS = 26;
    private static final int LARGE = 160_000;

    private Boards() {}

    /**
     * A plate as it stands.
     *
     * @param now as decided so far
     * @param isJoined whether the join stands
     */
    record Standing(
            Case of, Plate now, boolean isJoined, boolean changed, Optional<String> undo, Optional<String> redo) {}

    /**
     * What was worked out before, to be used again while the plate is the same.
     *
     * @param checked the plate that the faults are of; empty where none was checked
     */
    record Known(Drawing drawing, List<Faults.Fault> faults, Optional<Plate> checked) {}

    static Board of(Standing standing, int selected, Optional<Known> known) {
        return of(standing, selected, known, Depth.ALL);
    }

    /** How much is worked out. */
    enum Depth {
        /** Chart and list; the findings are those of before, the answers are left out. */
        FIRST,
        ALL
    }

    /** Whether a plate is so large that it is shown before all is worked out. */
    static boolean isLarge(Plate plate) {
        return (long) plate.rows().size() * plate.positions() > LARGE;
    }

    static Board of(Standing standing, int selected, Optional<Known> known, Depth depth) {
        Case of = standing.of();
        Plate now = standing.now();
        boolean isAll = depth == Depth.ALL;
        Known is = known(now, of, known, isAll);
        List<Board.Matter> matters = standing.isJoined() ? matters(of, now) : List.of();
        List<Choice> choices = standing.isJoined() && isAll ? choices(of, now, selected) : List.of();
        int open = (int)
                of.clashes().stream().filter(c -> ClashAnswers.isOpen(c, now)).count();
        return new Board(
                is.drawing(),
                matters,
                matters.isEmpty() ? -1 : Math.min(selected, matters.size() - 1),
                answers(of, selected, choices),
                open,
                of.clashes().size(),
                is.faults(),
                standing.undo(),
                standing.redo(),
                standing.isJoined(),
                standing.changed(),
                isAll);
    }

    private static Known known(Plate now, Case of, Optional<Known> before, boolean isAll) {
        Optional<Drawing> drawn = before.map(Known::drawing).filter(d -> d.plate() == now);
        Drawing drawing = drawn.orElseGet(() -> Drawing.of(now));
        if (!isAll) {
            return new Known(drawing, before.map(Known::faults).orElse(List.of()), before.flatMap(Known::checked));
        }
        boolean isChecked = before.flatMap(Known::checked).filter(p -> p == now).isPresent();
        return isChecked
                ? new Known(drawing, before.get().faults(), Optional.of(now))
                : new Known(drawing, Faults.of(now, of.knownFaults()), Optional.of(now));
    }

    /** The answers to a matter; empty when there is no such matter. */
    static List<Choice> choices(Case of, Plate now, int matter) {
        int clashes = of.clashes().size();
        if (matter < 0 || matter >= clashes + of.settlements().size()) {
            return List.of();
        }
        return matter < clashes
                ? ClashAnswers.of(of, of.clashes().get(matter), now)
                : SettledAnswers.of(of, of.settlements().get(matter - clashes), now);
    }

    /** Where a matter lies in a plate. */
    static Optional<Area> area(Case of, Plate plate, int matter) {
        int clashes = of.clashes().size();
        return matter < clashes
                ? Areas.of(plate, of.joined(), of.clashes().get(matter))
                : Areas.of(plate, of.settlements().get(matter - clashes).reversal());
    }

    private static List<Board.Matter> matters(Case of, Plate now) {
        List<Board.Matter> out = new ArrayList<>();
        for (Clash clash : of.clashes()) {
            boolean isOpen = ClashAnswers.isOpen(clash, now);
            String standing = isOpen ? "open" : decided(ClashAnswers.of(of, clash, now));
            out.add(new Board.Matter(
                    "To decide",
                    ValueWords.place(isOpen ? now : of.joined(), clash),
                    standing,
                    isOpen ? Board.State.OPEN : Board.State.DECIDED,
                    Areas.of(now, of.joined(), clash),
                    ValueWords.meanwhile(clash)));
        }
        of.settlements().forEach(settlement -> out.add(settled(of, settlement, now)));
        return out;
    }

    private static String decided(List<Choice> choices) {
        return choices.stream()
                .filter(Choice::stands)
                .map(Choice::who)
                .findFirst()
                .orElse("decided");
    }

    private static Board.Matter settled(Case of, Settlement settlement, Plate now) {
        Reversal reversal = settlement.reversal();
        Settled.By by = reversal.settled().by();
        String group =
                switch (by) {
                    case MINE -> "Settled: yours";
                    case THEIRS -> "Settled: " + of.theirs().name().orElse("the partner's");
                    case BOTH -> "Settled: both alike";
                };
        Board.State state =
                switch (reversal.standing(now)) {
                    case IN -> Board.State.IN;
                    case OUT -> settlement.isAlone() ? Board.State.OUT : Board.State.WHOLE;
                    case PARTLY -> Board.State.PARTLY;
                };
        String standing =
                switch (state) {
                    case OUT -> "taken back";
                    case PARTLY -> "in part";
                    default -> "";
                };
        return new Board.Matter(group, settlement.words(), standing, state, Areas.of(now, reversal), "");
    }

    private static List<Board.Answer> answers(Case of, int matter, List<Choice> choices) {
        List<Board.Answer> out = new ArrayList<>();
        for (Choice choice : choices) {
            out.add(answer(of, matter, choice));
        }
        return out;
    }

    /** With the spot as the answer would leave it; without where the answer does not fit the chart any more. */
    private static Board.Answer answer(Case of, int matter, Choice choice) {
        Optional<Board.Spotted> spot = Optional.empty();
        Optional<Integer> shade = Optional.empty();
        try {
            Plate result = choice.result().get();
            spot = area(of, result, matter).map(area -> spotted(result, area));
            shade = shade(of, result, matter);
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            ClashAnswers.leftOut(e);
        }
        return new Board.Answer(choice.who(), choice.detail(), choice.words(), choice.stands(), spot, shade);
    }

    private static Optional<Integer> shade(Case of, Plate result, int matter) {
        return Optional.of(matter)
                .filter(m -> m < of.clashes().size())
                .map(of.clashes()::get)
                .filter(clash -> clash.what() == Clash.What.COLOUR)
                .flatMap(clash -> clash.textAt("key"))
                .flatMap(key -> result.palette().get(key.charAt(0)))
                .map(Colour::rgb);
    }

    private static Board.Spotted spotted(Plate plate, Area area) {
        Area window = area.around(ROWS_AROUND, POSITIONS_AROUND, plate.rows().size(), plate.positions());
        return new Board.Spotted(Drawing.of(plate), held(window, area), area);
    }

    /** A large area is shown from its middle, as far as it can be seen enlarged. */
    private static Area held(Area window, Area area) {
        int top = window.top();
        int bottom = window.bottom();
        if (window.rows() > MOST_ROWS) {
            int middle = (area.top() + area.bottom()) / 2;
            top = Math.max(window.top(), middle - MOST_ROWS / 2);
            bottom = Math.min(window.bottom(), top + MOST_ROWS - 1);
        }
        int from = window.from();
        int to = window.to();
        if (window.positions() > MOST_POSITIONS) {
            int middle = (area.from() + area.to()) / 2;
            from = Math.max(window.from(), middle - MOST_POSITIONS / 2);
            to = Math.min(window.to(), from + MOST_POSITIONS - 1);
        }
        return new Area(top, bottom, from, to);
    }
}
