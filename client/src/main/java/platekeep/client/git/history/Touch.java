package platekeep.client.git.history;

import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;

/**
 * What a version did to one plate.
 *
 * @param plateId which plate
 * @param path where its file lies afterwards, or lay when it went
 * @param content the text's id; empty where the version put the plate away
 */
public record Touch(String plateId, String path, Optional<ObjectId> content) {
    public Touch {
        content = content.map(ObjectId::copy);
    }
}
