package platekeep.client.look;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;

/** All words of a plate, plain and each after a blank, so that the beginnings of words are found in them. */
final class PlateWords {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

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
        String letters = Normalizer.isNormalized(text, Normalizer.Form.NFKD)
                ? text
                : ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                        .replaceAll("");
        StringBuilder out = new StringBuilder(letters.length() + 1);
        boolean isGap = true;
        for (int at = 0; at < letters.length(); at += Character.charCount(letters.codePointAt(at))) {
            int letter = letters.codePointAt(at);
            if (Character.isLetterOrDigit(letter)) {
                out.append(isGap ? " " : "").appendCodePoint(Character.toLowerCase(letter));
            }
            isGap = !Character.isLetterOrDigit(letter);
        }
        return out.toString();
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
