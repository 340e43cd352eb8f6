package platekeep.model.text;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Texts with one fault each: a sound text in which every node in turn is replaced, taken out or touched. */
final class Faults {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** What stands in for a node, as JSON. */
    private static final List<String> STAND_INS = List.of(
            "\"x\"",
            "\"\"",
            "\" \"",
            "7",
            "-1",
            "2.5",
            "1.0",
            "100001",
            "10000000000",
            "true",
            "null",
            "[]",
            "{}",
            "{\"x\": 7}",
            "[\"x\", 7]",
            "\"a\\u0007b\"",
            "\"8 1/2\"",
            "\"2026-13-01\"",
            "\"abcd\"");

    /** One faulty (or, by chance, sound) text. */
    record Fault(String name, String text) {
        @Override
        public String toString() {
            return name;
        }
    }

    private Faults() {}

    /** Every single change of every node below a path of a sound text. */
    static List<Fault> of(String sound, String below) {
        List<Fault> out = new ArrayList<>();
        for (String path : paths(tree(sound).at(below), below)) {
            for (String standIn : STAND_INS) {
                out.add(new Fault(
                        path + " := " + standIn, changed(sound, path, node -> put(node, path, tree(standIn)))));
            }
            out.add(new Fault(path + " taken out", changed(sound, path, node -> takeOut(node, path))));
            out.add(new Fault(
                    path + " touched", changed(sound, path, node -> put(node, path, touched(child(node, path))))));
            if (tree(sound).at(path).isObject()) {
                out.add(new Fault(
                        path + " with a control character in a key",
                        changed(sound, path, node -> ((ObjectNode) child(node, path)).put("a\u0001b", 1))));
                out.add(new Fault(
                        path + " with an unknown key",
                        changed(sound, path, node -> ((ObjectNode) child(node, path)).put("zz", 1))));
            }
        }
        return out;
    }

    static JsonNode tree(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> paths(JsonNode node, String at) {
        List<String> out = new ArrayList<>();
        node.fieldNames().forEachRemaining(key -> {
            String path = at + "/" + key;
            out.add(path);
            out.addAll(paths(node.get(key), path));
        });
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            out.add(at + "/" + i);
            out.addAll(paths(node.get(i), at + "/" + i));
        }
        return out;
    }

    private static String changed(String sound, String path, Consumer<ContainerNode<?>> change) {
        JsonNode tree = tree(sound);
        change.accept((ContainerNode<?>) tree.at(path.substring(0, path.lastIndexOf('/'))));
        return tree.toString();
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private static JsonNode child(ContainerNode<?> parent, String path) {
        return parent instanceof ObjectNode object ? object.get(last(path)) : parent.get(Integer.parseInt(last(path)));
    }

    private static void put(ContainerNode<?> parent, String path, JsonNode node) {
        if (parent instanceof ObjectNode object) {
            object.set(last(path), node);
        } else {
            ((ArrayNode) parent).set(Integer.parseInt(last(path)), node);
        }
    }

    private static void takeOut(ContainerNode<?> parent, String path) {
        if (parent instanceof ObjectNode object) {
            object.remove(last(path));
        } else {
            ((ArrayNode) parent).remove(Integer.parseInt(last(path)));
        }
    }

    /** Nearly the same: a text with a mark put to it, a number one greater, a list with its first item twice. */
    private static JsonNode touched(JsonNode node) {
        if (node.isTextual()) {
            return new TextNode(node.textValue() + "?");
        }
        if (node.isIntegralNumber()) {
            return new IntNode(node.intValue() + 1);
        }
        if (node instanceof ArrayNode list && !list.isEmpty()) {
            return list.deepCopy().add(list.get(0));
        }
        return node;
    }
}
