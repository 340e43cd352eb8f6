package platekeep.model.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Queries as one line of text, to be kept and read again: {@code words=boat;THEME=any|seaside|boats}. */
public final class QueryText {
    private static final String SPECIAL = "%;=|\n\r";

    private QueryText() {}

    public static String write(Query query) {
        StringBuilder text = new StringBuilder("words=").append(escaped(query.words()));
        query.choices().forEach((group, choice) -> {
            text.append(';').append(group.name()).append('=');
            text.append(choice.match() == Choice.Match.ANY ? "any" : "all");
            new TreeSet<>(choice.values()).forEach(value -> text.append('|').append(escaped(value)));
        });
        return text.toString();
    }

    /** Empty where the text is no query, such as one of a later version. */
    public static Optional<Query> read(String text) {
        Query query = Query.ALL;
        for (String part : text.split(";", -1)) {
            String[] sides = part.split("=", -1);
            Optional<Query> more = sides.length == 2 ? read(query, sides[0], sides[1]) : Optional.empty();
            if (more.isEmpty()) {
                return Optional.empty();
            }
            query = more.get();
        }
        return Optional.of(query);
    }

    private static Optional<Query> read(Query query, String name, String value) {
        if (name.equals("words")) {
            return Optional.of(query.withWords(plain(value)));
        }
        List<String> parts = List.of(value.split("\\|", -1));
        Optional<Choice.Match> match =
                switch (parts.get(0)) {
                    case "any" -> Optional.of(Choice.Match.ANY);
                    case "all" -> Optional.of(Choice.Match.ALL);
                    default -> Optional.empty();
                };
        Optional<Group> group = List.of(Group.values()).stream()
                .filter(g -> g.name().equals(name))
                .findFirst();
        Set<String> values = new TreeSet<>();
        parts.subList(1, parts.size()).forEach(part -> values.add(plain(part)));
        return group.flatMap(g -> match.filter(m -> !values.isEmpty()).map(m -> query.with(g, new Choice(values, m))));
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        for (char c : text.toCharArray()) {
            out.append(SPECIAL.indexOf(c) < 0 ? String.valueOf(c) : "%" + SPECIAL.indexOf(c));
        }
        return out.toString();
    }

    private static String plain(String text) {
        List<String> parts = new ArrayList<>(List.of(text.split("%", -1)));
        StringBuilder out = new StringBuilder(parts.remove(0));
        for (String part : parts) {
            int at = part.isEmpty() ? -1 : part.charAt(0) - '0';
            out.append(at >= 0 && at < SPECIAL.length() ? SPECIAL.charAt(at) + part.substring(1) : "%" + part);
        }
        return out.toString();
    }
}
