package platekeep.client.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import platekeep.model.join.Settling;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** The answers to a clash: each side's, both or neither where rows were put in, before, and what was painted. */
final class ClashAnswers {
    private final Case of;
    private final Clash clash;
    private final Plate now;
    private final boolean isOpen;
    private final List<Choice> out = new ArrayList<>();

    private ClashAnswers(Case of, Clash clash, Plate now) {
        this.of = of;
        this.clash = clash;
        this.now = now;
        this.isOpen = now.clashes().contains(clash);
    }

    static List<Choice> of(Case of, Clash clash, Plate now) {
        return new ClashAnswers(of, clash, now).all();
    }

    /** Whether the clash is decided in a plate. */
    static boolean isOpen(Clash clash, Plate now) {
        return now.clashes().contains(clash);
    }

    private List<Choice> all() {
        if (clash.what() != Clash.What.ROWS) {
            add("Before", "as you both had it", clash.base());
        }
        clash.sides().stream().filter(side -> of.isMine(clash, side)).forEach(this::side);
        clash.sides().stream().filter(side -> !of.isMine(clash, side)).forEach(this::side);
        if (clash.what() == Clash.What.ROWS) {
            add("Both", "the rows of both", Settling.bothRuns(clash));
            add("Neither", "as before: none of these rows", Value.NOTHING);
        }
        painted();
        return out;
    }

    private void side(Clash.Side side) {
        boolean mine = of.isMine(clash, side);
        Party party = mine ? of.mine() : of.isTheirs(clash, side) ? of.theirs() : new Party(side.by(), "");
        Optional<String> name = party.name().or(side::by);
        String who = mine ? "Yours" : name.orElse("The other side");
        String detail = mine && name.isPresent() ? name.get() + dated(party.when(), ", ") : dated(party.when(), "");
        add(who, detail, side.value());
    }

    private static String dated(String when, String before) {
        return when.isEmpty() ? "" : before + when;
    }

    private void add(String who, String detail, Value value) {
        UnaryOperator<Plate> choose = plate -> Settling.choose(Reopening.of(of.joined(), plate, clash), clash, value);
        try {
            boolean stands = !isOpen && stands(value, choose);
            String words = ValueWords.of(now, clash, value);
            out.add(new Choice(who, detail, words, choose, () -> choose.apply(now), stands));
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            leftOut(e);
        }
    }

    /** The chart was changed so that an answer does not fit any more: it is not offered. */
    static void leftOut(RuntimeException why) {
        System.getLogger(ClashAnswers.class.getName()).log(System.Logger.Level.DEBUG, "answer left out", why);
    }

    /** Whether the value is what stands in the decided plate. */
    private boolean stands(Value value, UnaryOperator<Plate> choose) {
        return switch (clash.what()) {
            case CABLES -> cells(now).equals(text(value));
            case ROW, TWINS ->
                Settling.row(now, clash) < 0
                        ? value.equals(Value.NOTHING)
                        : cells(now).equals(text(value));
            case ROWS -> rowsThere().equals(Areas.ids(value).toList());
            default ->
                out.stream().noneMatch(Choice::stands) && choose.apply(now).equals(now);
        };
    }

    private List<RowId> rowsThere() {
        return Areas.ids(Settling.bothRuns(clash))
                .filter(id -> now.indexOf(id) >= 0)
                .toList();
    }

    private static Optional<String> text(Value value) {
        return value instanceof Value.Text t ? Optional.of(t.string()) : Optional.empty();
    }

    /** The cables that the clash is about, as they are in a plate; empty when its row is not there. */
    private Optional<String> cells(Plate plate) {
        int row = Settling.row(plate, clash);
        if (row < 0) {
            return Optional.empty();
        }
        String cells = plate.rows().get(row).cells();
        int from = clash.numberAt("from").map(f -> f - plate.from()).orElse(0);
        int to = clash.numberAt("to").map(t -> t - plate.from() + 1).orElse(cells.length());
        return from < 0 || to > cells.length() || from > to ? Optional.empty() : Optional.of(cells.substring(from, to));
    }

    private void painted() {
        boolean isOfCells = clash.what() == Clash.What.CABLES || clash.what() == Clash.What.ROW;
        Optional<String> cells = isOfCells ? cells(now) : Optional.empty();
        Optional<String> standing = isOfCells ? cells(of.joined()) : Optional.empty();
        boolean isNew = cells.isPresent()
                && !cells.equals(standing)
                && !cells.equals(text(clash.base()))
                && clash.sides().stream().noneMatch(side -> cells.equals(text(side.value())));
        if (isNew) {
            Value value = Value.of(cells.get());
            out.add(new Choice(
                    "Painted",
                    "as it is in the chart now",
                    ValueWords.of(now, clash, value),
                    plate -> Settling.keep(plate, clash),
                    () -> Settling.keep(now, clash),
                    !isOpen));
        }
    }

    /** A value of one side for all the rest. */
    static Optional<UnaryOperator<Plate>> forAll(Case of, Clash clash, Bulk.Whose whose) {
        Optional<Value> value =
                switch (whose) {
                    case BEFORE -> Optional.of(clash.what() == Clash.What.ROWS ? Value.NOTHING : clash.base());
                    case MINE ->
                        clash.sides().stream()
                                .filter(side -> of.isMine(clash, side))
                                .map(Clash.Side::value)
                                .findFirst();
                    case THEIRS ->
                        clash.sides().stream()
                                .filter(side -> of.isTheirs(clash, side))
                                .map(Clash.Side::value)
                                .findFirst();
                };
        return value.map(v -> plate -> {
            try {
                return Settling.choose(plate, clash, v);
            } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
                System.getLogger(ClashAnswers.class.getName()).log(System.Logger.Level.DEBUG, "left open", e);
                return plate;
            }
        });
    }
}
