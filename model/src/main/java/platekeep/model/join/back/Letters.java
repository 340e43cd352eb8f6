package platekeep.model.join.back;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** One plate's letters in another plate's palette, which gets the colours that it lacks. */
final class Letters {
    private final Map<Character, Character> there = new HashMap<>();
    private Palette palette;

    Letters(Plate from, Plate now) {
        palette = now.palette();
        from.palette().entries().forEach((key, colour) -> there.put(key, letter(key, colour)));
    }

    /** The same entry under the same letter, else under any; else the letter, whose entry was changed. */
    private char letter(char key, Colour colour) {
        if (palette.get(key).filter(colour::equals).isPresent()) {
            return key;
        }
        Optional<Character> same = palette.entries().entrySet().stream()
                .filter(entry -> entry.getValue().equals(colour))
                .map(Map.Entry::getKey)
                .findFirst();
        return same.orElse(key);
    }

    /** What a cell of the one is in the other. */
    char of(char cell) {
        return cell == Row.EMPTY ? cell : there.getOrDefault(cell, cell);
    }

    /** The same, where the cell is to be put there: the palette has its colour from then on. */
    char put(char cell, Plate from) {
        char letter = of(cell);
        if (letter != Row.EMPTY && !palette.has(letter)) {
            from.palette().get(cell).ifPresent(colour -> palette = palette.with(letter, colour));
        }
        return letter;
    }

    Palette palette() {
        return palette;
    }
}
