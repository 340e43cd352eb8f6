package platekeep.sample;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import platekeep.sample.Happening.Side;
import platekeep.sample.Happening.Who;

/**
 * Two years in a harbour-and-orchard workshop, as the versions that two designers made of their plates. Lies in the
 * program as text ({@code story.json} and the plates' texts beside it) and is always the same.
 */
public final class SampleStory {
    /** The library's name. */
    public static final String NAME = "Harbour and Orchard";

    /** When the library was made, before the first version. */
    public static final OffsetDateTime BEGAN = OffsetDateTime.parse("2024-10-01T09:00:00+02:00");

    private final List<Happening> happenings;

    private SampleStory(List<Happening> happenings) {
        this.happenings = List.copyOf(happenings);
    }

    /** Reads the story. */
    public static SampleStory read() {
        try {
            List<Happening> happenings = new ArrayList<>();
            for (JsonNode node : new ObjectMapper().readTree(bytes("story.json"))) {
                happenings.add(happening(node));
            }
            return new SampleStory(happenings);
        } catch (IOException e) {
            throw new UncheckedIOException("the sample story is damaged", e);
        }
    }

    /** What happened, in order of time. */
    public List<Happening> happenings() {
        return happenings;
    }

    /** What happened on one side, in order of time. */
    public List<Happening> happenings(Side side) {
        return happenings.stream().filter(h -> h.side() == side).toList();
    }

    /** The text of a plate or a series as it was at one time: one of the values of {@link Happening#put}. */
    public byte[] text(String resource) {
        try {
            return bytes(resource);
        } catch (IOException e) {
            throw new UncheckedIOException("the sample text " + resource + " cannot be read", e);
        }
    }

    private static byte[] bytes(String resource) throws IOException {
        try (InputStream in = SampleStory.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException("no such sample text: " + resource);
            }
            return in.readAllBytes();
        }
    }

    private static Happening happening(JsonNode node) {
        Who enteredBy = who(node.get("hand").asText());
        List<String> away = new ArrayList<>();
        node.path("away").forEach(path -> away.add(path.asText()));
        Map<String, String> names = new LinkedHashMap<>();
        node.path("name")
                .forEach(name ->
                        names.put(name.get("plate").asText(), name.get("name").asText()));
        return new Happening(
                OffsetDateTime.parse(node.get("on").asText()).toZonedDateTime(),
                enteredBy,
                Optional.ofNullable(node.get("for"))
                        .map(hand -> who(hand.asText()))
                        .orElse(enteredBy),
                Optional.ofNullable(node.get("side"))
                        .map(side -> Side.valueOf(side.asText().toUpperCase(Locale.ROOT)))
                        .orElse(Side.BOTH),
                node.get("reason").asText(),
                texts(node.path("set")),
                away,
                names);
    }

    private static Who who(String word) {
        return Who.of(word).orElseThrow(() -> new IllegalStateException("nobody in the story is called " + word));
    }

    private static Map<String, String> texts(JsonNode object) {
        Map<String, String> texts = new LinkedHashMap<>();
        object.properties().forEach(e -> texts.put(e.getKey(), e.getValue().asText()));
        return texts;
    }
}
