package platekeep.client.look;

import java.util.Optional;
import platekeep.client.library.Library;
import platekeep.model.look.Signature;
import platekeep.model.plate.Plate;

/**
 * A plate as it is now, with what it looks like.
 *
 * @param content the id of its content
 * @param signature empty where it has no cable
 */
record Sight(Library library, Plate plate, String content, Optional<Signature> signature) {}
