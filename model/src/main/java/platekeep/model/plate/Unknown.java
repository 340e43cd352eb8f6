package platekeep.model.plate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Keys of an object that this version does not know, kept through reading and writing because a newer hand may have put
 * them there. They are written after the known keys, sorted by code point in depth.
 */
public record Unknown(Map<String, Value> entries) {

    /** No unknown keys. */
    public static final Unknown NONE = new Unknown(Map.of());

    public Unknown {
        List<String> keys = entries.keySet().stream().sorted(CodePoints.ORDER).toList();
        Map<String, Value> sorted = new LinkedHashMap<>();
        for (String key : keys) {
            sorted.put(key, Value.sorted(entries.get(key)));
        }
        entries = Collections.unmodifiableMap(sorted);
    }
}
