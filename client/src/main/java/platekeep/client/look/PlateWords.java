package platekeep.client.look;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;

/** All words of a plate, plain and each after a blank, so that the beginnings of words are found in them. */
final class PlateWords {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern GAPS = Pattern.compile("[^\\p{L}\\p{N}]+");

    private PlateWords() {}

    static String of(Plate plate) {
        List<String> texts = new ArrayList<>();
        texts.add(plate.title());
        plate.number().ifPresent(texts::add);
        texts.addAll(plate.themes());
        texts.addAll(plate.uses());
        plate.ages().stream().map(Age::word).forEach(texts::add);
        texts.addAll(plate.designers());
        texts.addAll(plate.notes());
        plate.origin().by().ifPresent(texts::add);
        plate.origin().place().ifPresent(texts::add);
        plate.palette().entries().values().forEach(colour -> {
            texts.add(colour.name());
            colour.floss().ifPresent(texts::add);
        });
        return plain(String.join(" ", texts));
    }

    static String plain(String text) {
        String letters = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        return " " + GAPS.matcher(letters).replaceAll(" ").strip();
    }

    /** The words of a question, each after a blank; a plural is asked for as its singular, which it begins with. */
    static List<String> asked(String question) {
        return List.of(plain(question).strip().split(" ")).stream()
                .filter(word -> !word.isEmpty())
                .map(word -> " " + stem(word))
                .collect(Collectors.toList());
    }

    private static String stem(String word) {
        boolean isPlural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss");
        return isPlural ? word.substring(0, word.length() - 1) : word;
    }

    static boolean hasAll(String words, List<String> asked) {
        return asked.stream().allMatch(words::contains);
    }
}
