package platekeep.model.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import platekeep.model.compare.Difference.About;
import platekeep.model.plate.Age;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.State;
import platekeep.model.plate.Value;

/** The change of all that is not the picture itself, in words. */
final class FactWords {
    private final Plate before;
    private final Plate after;
    private final Renaming renaming;
    private final CarriedThings carried;
    private final ThingPlaces places;
    private final List<Difference> out = new ArrayList<>();

    FactWords(Plate before, Plate after, Renaming renaming, CarriedThings carried) {
        this.carried = carried;
        this.before = before;
        this.after = after;
        this.renaming = renaming;
        this.places = new ThingPlaces(before, after);
    }

    List<Difference> differences() {
        colours();
        field("title", p -> Optional.of("“" + p.title() + "”"));
        field("number", Plate::number);
        field("state", p -> p.state().map(State::word));
        field("kind of origin", p -> p.origin().kind());
        field("origin", p -> p.origin().by());
        field("place of the paper", p -> p.origin().place());
        field("allowed use", p -> p.origin().use());
        set("theme", before.themes(), after.themes());
        set("age", words(before.ages()), words(after.ages()));
        set("use", before.uses(), after.uses());
        set("designer", before.designers(), after.designers());
        notes();
        order(About.FACTS, "designers", Plate::designers);
        order(About.FACTS, "notes", Plate::notes);
        cloth();
        field("repeat", p -> p.repeat().map(r -> "every " + r.every() + " pleats, " + r.times() + " times"));
        field("plate it was started from", p -> p.fromPlate().map(f -> f.id()));
        starts();
        things(About.LINES, "geometric line", Plate::lines, carried::line, FactWords::lineKey, this::lineWords);
        order(
                About.LINES,
                "geometric lines",
                p -> p.lines().stream().map(FactWords::lineKey).toList());
        things(
                About.MARKS,
                "mark",
                Plate::marks,
                carried::mark,
                m -> m.stitch() + m.row() + m.pleat(),
                this::markWords);
        things(About.NOTIONS, "notion", Plate::notions, n -> n.kind() + n.size(), (side, n) -> notionWords(n));
        order(
                About.NOTIONS,
                "notions",
                p -> p.notions().stream().map(n -> n.kind() + n.size()).toList());
        things(
                About.REMARKS,
                "remark",
                Plate::remarks,
                carried::remark,
                r -> r.id().text(),
                (side, r) -> remarkWords(r));
        things(
                About.CLASHES,
                "open clash",
                Plate::clashes,
                c -> c.what() + c.place().text(),
                (side, c) -> clashWords(c));
        unknown();
        return out;
    }

    private void say(String words) {
        say(About.FACTS, words);
    }

    private void say(About about, String words) {
        out.add(new Difference(words, about, List.of()));
    }

    // ---- colours

    private void colours() {
        Map<Character, Character> renamed = renaming.renamed();
        renamed.forEach((from, to) -> {
            boolean swapped = from.equals(renamed.get(to));
            if (!swapped) {
                say(About.COLOURS, "key " + from + " renamed " + to);
            } else if (from < to) {
                say(About.COLOURS, "keys " + from + " and " + to + " exchanged");
            }
        });
        renaming.merged().keySet().stream()
                .sorted()
                .forEach(key -> say(
                        About.COLOURS,
                        "colour " + name(before, key) + " made one with "
                                + name(before, renaming.merged().get(key))));
        renaming.gone().stream()
                .sorted()
                .forEach(key -> say(About.COLOURS, "colour " + name(before, key) + " removed"));
        Set<Character> exchanged = exchanged();
        before.palette()
                .entries()
                .forEach((key, was) -> renaming.letter(key)
                        .filter(letter -> renaming.letters().containsKey(key) && !exchanged.contains(key))
                        .flatMap(after.palette()::get)
                        .ifPresent(is -> colour(was, is)));
        after.palette().entries().forEach((key, colour) -> {
            if (!renaming.letters().containsValue(key)) {
                say(About.COLOURS, "colour " + colour.name() + " added (" + colour.srgb() + ")");
            }
        });
    }

    /** Keys that kept their cables while their entries changed places. */
    private Set<Character> exchanged() {
        Set<Character> found = new HashSet<>();
        Map<Character, Colour> was = before.palette().entries();
        was.forEach((key, colour) -> was.forEach((other, second) -> {
            boolean stayed = renaming.letters().getOrDefault(key, '.') == key.charValue()
                    && renaming.letters().getOrDefault(other, '.') == other.charValue();
            if (key < other
                    && stayed
                    && !colour.equals(second)
                    && after.palette().get(key).equals(Optional.of(second))
                    && after.palette().get(other).equals(Optional.of(colour))) {
                found.add(key);
                found.add(other);
                say(About.COLOURS, "threads " + colour.name() + " and " + second.name() + " exchanged");
            }
        }));
        return found;
    }

    private static String name(Plate plate, char key) {
        return plate.palette().get(key).map(Colour::name).orElse(String.valueOf(key));
    }

    private void colour(Colour was, Colour is) {
        if (!was.name().equals(is.name())) {
            say(About.COLOURS, "colour " + was.name() + " now named " + is.name());
        }
        if (!was.srgb().equals(is.srgb())) {
            say(About.COLOURS, "colour " + is.name() + " now " + is.srgb());
        }
        if (was.strands() != is.strands()) {
            say(
                    About.COLOURS,
                    "colour " + is.name() + " now with " + is.strands() + (is.strands() == 1 ? " strand" : " strands"));
        }
        if (!was.floss().equals(is.floss())) {
            say(
                    About.COLOURS,
                    "floss of " + is.name() + " "
                            + is.floss().map(f -> "now " + f).orElse("taken out"));
        }
        if (!was.unknown().equals(is.unknown())) {
            say(About.COLOURS, "colour " + is.name() + " changed in an entry that this version does not know");
        }
    }

    // ---- fields, sets, lists

    private void field(String name, Function<Plate, Optional<String>> get) {
        Optional<String> was = get.apply(before);
        Optional<String> is = get.apply(after);
        if (was.equals(is)) {
            return;
        }
        if (is.isEmpty()) {
            say(name + " taken out (was " + was.orElse("") + ")");
        } else {
            say(name + " now " + is.get() + was.map(w -> " instead of " + w).orElse(""));
        }
    }

    private static List<String> words(List<Age> ages) {
        return ages.stream().map(Age::word).toList();
    }

    private static List<String> quoted(List<String> texts) {
        return texts.stream().map(t -> "“" + t + "”").toList();
    }

    private void set(String name, List<String> was, List<String> is) {
        List<String> added = new ArrayList<>(is);
        was.forEach(added::remove);
        List<String> removed = new ArrayList<>(was);
        is.forEach(removed::remove);
        added.forEach(t -> say(name + " " + t + " added"));
        removed.forEach(t -> say(name + " " + t + " removed"));
    }

    /** One note that went and one that came are one that was written anew. */
    private void notes() {
        List<String> came = new ArrayList<>(after.notes());
        before.notes().forEach(came::remove);
        List<String> went = new ArrayList<>(before.notes());
        after.notes().forEach(went::remove);
        if (came.size() == 1 && went.size() == 1) {
            say("note changed: “" + came.get(0) + "” instead of “" + went.get(0) + "”");
        } else {
            set("note", quoted(before.notes()), quoted(after.notes()));
        }
    }

    private void order(About about, String name, Function<Plate, List<String>> get) {
        List<String> was = new ArrayList<>(get.apply(before));
        List<String> is = new ArrayList<>(get.apply(after));
        was.retainAll(get.apply(after));
        is.retainAll(get.apply(before));
        if (!was.equals(is) && was.size() == is.size()) {
            say(about, name + " in another order");
        }
    }

    private void cloth() {
        field("gathering rows of the cloth", p -> p.cloth().gatheringRows().map(String::valueOf));
        field("spacing of the gathering rows", p -> p.cloth().spacingMm().map(d -> d.toPlainString() + " mm"));
        field("stacked rows to a space", p -> p.cloth().stackedRows().map(String::valueOf));
        field("fullness", p -> p.cloth().fullness().map(d -> d.toPlainString() + " to 1"));
        field(
                "holding rows",
                p -> Optional.of(String.join(", ", p.cloth().holding())).filter(h -> !h.isEmpty()));
    }

    private <T> void things(
            About about,
            String name,
            Function<Plate, List<T>> get,
            Function<T, String> key,
            BiFunction<Side, T, String> words) {
        things(about, name, get, thing -> thing, key, words);
    }

    /** @param brought a thing of the earlier plate as it would stand had nobody changed it itself */
    private <T> void things(
            About about,
            String name,
            Function<Plate, List<T>> get,
            UnaryOperator<T> brought,
            Function<T, String> key,
            BiFunction<Side, T, String> words) {
        Map<String, T> was = byKey(get.apply(before), brought.andThen(key));
        Map<String, T> is = byKey(get.apply(after), key);
        is.forEach((k, thing) -> {
            T old = was.get(k);
            if (old == null) {
                tell(about, name + " added: " + words.apply(Side.AFTER, thing), places.of(Side.AFTER, thing));
            } else if (!brought.apply(old).equals(thing)) {
                List<Place> where = new ArrayList<>(places.of(Side.BEFORE, old));
                where.addAll(places.of(Side.AFTER, thing));
                String now = words.apply(Side.AFTER, thing);
                String then = words.apply(Side.BEFORE, old);
                tell(
                        about,
                        now.equals(then)
                                ? name + " " + now + elsewhere(old, thing)
                                : name + " changed: " + now + " instead of " + then,
                        where);
            }
        });
        was.forEach((k, thing) -> {
            if (!is.containsKey(k)) {
                tell(about, name + " removed: " + words.apply(Side.BEFORE, thing), places.of(Side.BEFORE, thing));
            }
        });
    }

    /** What changed in a thing that is said in the same words as before. */
    private <T> String elsewhere(T old, T thing) {
        if (thing instanceof Remark is && old instanceof Remark was && is.row().isPresent()) {
            boolean there = is.row().equals(was.row())
                    && is.from().equals(was.from())
                    && is.to().equals(was.to());
            String pleats = is.from().isPresent() && is.to().isPresent()
                    ? ", pleats " + is.from().get() + " to " + (is.to().get() + 1)
                    : "";
            return there
                    ? " changed in its date or an entry not shown"
                    : " now at " + row(is.row().get()) + pleats;
        }
        return " changed in an entry not shown";
    }

    private void tell(About about, String words, List<Place> where) {
        out.add(new Difference(words, about, where));
    }

    private static <T> Map<String, T> byKey(List<T> list, Function<T, String> key) {
        Map<String, T> out = new LinkedHashMap<>();
        for (T thing : list) {
            String k = key.apply(thing);
            while (out.containsKey(k)) {
                k += " again";
            }
            out.put(k, thing);
        }
        return out;
    }

    private static String lineKey(Line line) {
        return line.on() + line.toRow() + line.from();
    }

    private String startKey(Start start) {
        return start.row() + "|" + start.pleat();
    }

    private String row(RowId id) {
        int i = after.indexOf(id);
        if (i >= 0) {
            return "row " + after.numberFromBottom(i);
        }
        int old = before.indexOf(id);
        return old >= 0 ? "row " + before.numberFromBottom(old) + " as it was" : "a row that is not there";
    }

    /** A start that went and one that came are the same one at another place: of one figure, or alone. */
    private void starts() {
        List<Start> went = new ArrayList<>(before.starts());
        List<Start> came = new ArrayList<>(after.starts());
        List<String> keysNow = after.starts().stream().map(this::startKey).toList();
        List<String> keysThen =
                before.starts().stream().map(carried::start).map(this::startKey).toList();
        went.removeIf(start -> keysNow.contains(startKey(carried.start(start))));
        came.removeIf(start -> keysThen.contains(startKey(start)));
        int first = out.size();
        things(About.STARTS, "start", Plate::starts, carried::start, this::startKey, (side, s) -> startWords(s));
        for (Start start : List.copyOf(went)) {
            carried.sameFigure(start, came).ifPresent(now -> {
                startMoved(start, now, first);
                went.remove(start);
                came.remove(now);
            });
        }
        if (went.size() == 1 && came.size() == 1) {
            startMoved(went.get(0), came.get(0), first);
        }
    }

    private void startMoved(Start went, Start came, int first) {
        String now = startWords(came);
        String then = startWords(went);
        out.subList(first, out.size())
                .removeIf(d ->
                        d.words().equals("start added: " + now) || d.words().equals("start removed: " + then));
        List<Place> where = new ArrayList<>(places.of(Side.BEFORE, went));
        where.addAll(places.of(Side.AFTER, came));
        tell(About.STARTS, "start moved: " + now + " instead of " + then, where);
    }

    private String startWords(Start start) {
        return row(start.row()) + ", pleats " + start.pleat() + " and " + (start.pleat() + 1) + ", "
                + start.cable().word() + " cable"
                + start.on().map(on -> " on gathering row " + on).orElse("");
    }

    private Plate plate(Side side) {
        return side == Side.BEFORE ? before : after;
    }

    private String lineWords(Side side, Line line) {
        return line.stitch() + " on gathering row " + line.on()
                + line.toRow().map(to -> " to " + to).orElse("")
                + ", pleats " + line.from() + " to " + line.to() + ", in "
                + name(plate(side), line.colour());
    }

    private String markWords(Side side, Mark mark) {
        return mark.stitch() + " in " + name(plate(side), mark.colour()) + " at " + row(mark.row()) + ", pleat "
                + mark.pleat();
    }

    private static String notionWords(Notion notion) {
        return notion.count() + " " + notion.kind()
                + notion.size().map(s -> " of " + s).orElse("");
    }

    private static String remarkWords(Remark remark) {
        return "“" + remark.text() + "” by " + remark.by() + (remark.done() ? " (done)" : "");
    }

    private static String clashWords(Clash clash) {
        return switch (clash.what()) {
            case FIELD -> clash.textAt("field").orElse("a field");
            case COLOUR -> "colour of key " + clash.textAt("key").orElse("");
            default -> clash.what().word();
        };
    }

    private void unknown() {
        Map<String, Value> was = before.unknown().entries();
        Map<String, Value> is = after.unknown().entries();
        boolean changed = !was.equals(is)
                || !before.origin().unknown().equals(after.origin().unknown())
                || !before.cloth().unknown().equals(after.cloth().unknown());
        if (changed || out.isEmpty() && !before.equals(after) && before.rows().equals(after.rows())) {
            say("something changed that this version does not know");
        }
    }
}
