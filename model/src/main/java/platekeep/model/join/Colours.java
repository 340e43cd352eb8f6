package platekeep.model.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.compare.Renaming;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * The colours of three plates as one set of identities, whatever letters they go by. An identity is a character: the key
 * of the earlier plate for a colour that was there, a number from 128 for one that came.
 */
final class Colours {
    private static final char FIRST_NEW = 128;
    /** Of the private use of Unicode, so that no key of a plate is taken for one. */
    private static final char FIRST_STAND_IN = 0xE000;

    private final Plate base;
    private final Plate[] sides;
    private final Renaming[] renamings;
    private final char[][] toIdentity = new char[2][128];
    private final List<New> news = new ArrayList<>();
    private final char[] letters = new char[256];
    /** For each side the letter that an earlier key's cables have there if nobody painted them; 0 where it went. */
    private final char[][] expected = new char[2][128];

    private final boolean[] keptLetters = new boolean[2];
    private final Set<Character> named = new HashSet<>();

    /** A colour that came: its wished letter, its entry, and which sides brought it. */
    private record New(char letter, Colour colour, boolean mine, boolean theirs) {}

    Colours(Plate base, Plate[] sides, Renaming[] renamings) {
        this.base = base;
        this.sides = sides;
        this.renamings = new Renaming[] {withoutMerges(renamings[0]), withoutMerges(renamings[1])};
        Arrays.fill(letters, Row.EMPTY);
        for (int s = 0; s < 2; s++) {
            toIdentity[s][Row.EMPTY] = Row.EMPTY;
            int side = s;
            this.renamings[s].letters().forEach((key, letter) -> toIdentity[side][letter] = key);
            base.palette()
                    .entries()
                    .keySet()
                    .forEach(key -> expected[side][key] =
                            this.renamings[side].letter(key).orElse((char) 0));
        }
        for (int s = 0; s < 2; s++) {
            addNew(s);
            keptLetters[s] = this.renamings[s].letters().entrySet().stream()
                    .allMatch(e -> e.getKey().equals(e.getValue()));
        }
    }

    /** Colours made one are cables drawn anew and a colour taken out. */
    private static Renaming withoutMerges(Renaming in) {
        Set<Character> gone = new HashSet<>(in.gone());
        gone.addAll(in.merged().keySet());
        return new Renaming(in.letters(), Map.of(), gone);
    }

    private void addNew(int s) {
        sides[s].palette().entries().forEach((letter, colour) -> {
            if (toIdentity[s][letter] != 0) {
                return;
            }
            for (int n = 0; n < news.size(); n++) {
                New other = news.get(n);
                if (s == 1
                        && other.mine()
                        && other.letter() == letter
                        && other.colour().equals(colour)) {
                    news.set(n, new New(letter, colour, true, true));
                    toIdentity[s][letter] = (char) (FIRST_NEW + n);
                    return;
                }
            }
            toIdentity[s][letter] = (char) (FIRST_NEW + news.size());
            news.add(new New(letter, colour, s == 0, s == 1));
        });
    }

    /** The identity of a side's letter where nothing was before. */
    char identity(int side, char letter) {
        char id = toIdentity[side][letter];
        return id == 0 ? letter : id;
    }

    /** The identity of a side's letter over a cable that had identity {@code was}: {@code was} itself if it only followed. */
    char identity(int side, char letter, char was) {
        return was < 128 && was != Row.EMPTY && expected[side][was] == letter ? was : identity(side, letter);
    }

    /** Whether every earlier key kept its letter on a side, so that equal cells are equal colours. */
    boolean keptLetters(int side) {
        return keptLetters[side];
    }

    /** Whether the side took the colour out, by making it one with another too. */
    boolean tookOut(int side, char identity) {
        return identity < 128
                && base.palette().has(identity)
                && !renamings[side].letters().containsKey(identity);
    }

    /** The entry of an identity on a side, if it is there. */
    Optional<Colour> entry(int side, char identity) {
        if (identity >= FIRST_NEW) {
            New n = news.get(identity - FIRST_NEW);
            return (side == 0 ? n.mine() : n.theirs()) ? Optional.of(n.colour()) : Optional.empty();
        }
        return Optional.ofNullable(renamings[side].letters().get(identity)).flatMap(sides[side].palette()::get);
    }

    Optional<Colour> baseEntry(char identity) {
        return base.palette().get(identity);
    }

    /** All identities, those of the earlier plate first. */
    List<Character> all() {
        List<Character> all = new ArrayList<>(base.palette().entries().keySet());
        for (int n = 0; n < news.size(); n++) {
            all.add((char) (FIRST_NEW + n));
        }
        return all;
    }

    /** The letter that an identity would like to have in the joined plate. */
    char wish(char identity) {
        if (identity >= FIRST_NEW) {
            return news.get(identity - FIRST_NEW).letter();
        }
        char mine = renamings[0].letters().getOrDefault(identity, identity);
        char theirs = renamings[1].letters().getOrDefault(identity, identity);
        return mine != identity ? (theirs != identity && theirs != mine ? identity : mine) : theirs;
    }

    /** Whether both sides gave a key a new letter, and not the same one. */
    boolean renamedTwice(char identity) {
        if (identity >= FIRST_NEW) {
            return false;
        }
        char mine = renamings[0].letters().getOrDefault(identity, identity);
        char theirs = renamings[1].letters().getOrDefault(identity, identity);
        return mine != identity && theirs != identity && mine != theirs;
    }

    /**
     * Gives each identity its letter. Where two want one letter, a colour that keeps its old letter has it, then the one
     * whose entry sorts first as text; the others get the first letters that are free in all three plates and the result.
     */
    Palette assign(SortedMap<Character, Colour> entries) {
        Comparator<Character> order = Comparator.comparing((Character id) -> wish(id) != id)
                .thenComparing(id -> entries.get(id).value().text(), CodePoints.ORDER)
                .thenComparing(id -> id);
        List<Character> ids = entries.keySet().stream().sorted(order).toList();
        Set<Character> taken = new HashSet<>();
        List<Character> without = new ArrayList<>();
        for (char id : ids) {
            if (taken.add(wish(id))) {
                letters[id] = wish(id);
            } else {
                without.add(id);
            }
        }
        Set<Character> used = new HashSet<>(taken);
        used.addAll(base.palette().entries().keySet());
        used.addAll(sides[0].palette().entries().keySet());
        used.addAll(sides[1].palette().entries().keySet());
        for (char id : without) {
            letters[id] = free(used, taken);
            used.add(letters[id]);
            taken.add(letters[id]);
        }
        SortedMap<Character, Colour> palette = new TreeMap<>();
        entries.forEach((id, colour) -> palette.put(letters[id], colour));
        return new Palette(palette);
    }

    private static char free(Set<Character> used, Set<Character> taken) {
        for (Set<Character> avoid : List.of(used, taken)) {
            for (char c : Palette.KEYS.toCharArray()) {
                if (!avoid.contains(c)) {
                    return c;
                }
            }
        }
        throw new JoinTrouble(
                "The two plates together have more than 62 colours; take colours out of one of them first.");
    }

    /** Keeps the colours of the earlier plate whose stand-ins a text shows; whether there are any that were not kept. */
    boolean keepNamed(String text) {
        int before = named.size();
        base.palette().entries().keySet().stream()
                .filter(id -> text.indexOf(FIRST_STAND_IN + id) >= 0)
                .forEach(named::add);
        return named.size() > before;
    }

    /** Whether a colour that both took out stays, since a clash names it. */
    boolean isNamed(char identity) {
        return named.contains(identity);
    }

    /** The letter of an identity in the joined plate; a stand-in for a colour of the earlier plate that has none there. */
    char letter(char identity) {
        if (identity == Row.EMPTY) {
            return Row.EMPTY;
        }
        boolean gone = letters[identity] == Row.EMPTY
                && identity < FIRST_NEW
                && base.palette().has(identity);
        return gone ? (char) (FIRST_STAND_IN + identity) : letters[identity];
    }

    /** Cells of identities as cells of the joined plate. */
    String letters(char[] identities, int from, int to) {
        char[] out = new char[to - from];
        for (int k = from; k < to; k++) {
            out[k - from] = letter(identities[k]);
        }
        return new String(out);
    }
}
