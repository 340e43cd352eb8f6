package platekeep.model.join;

import java.util.List;
import platekeep.model.plate.Plate;

/**
 * What a join gave.
 *
 * @param plate the joined plate; its {@link Plate#clashes()} are what is open
 * @param settled what each side did that now holds, for a look
 */
public record Joined(Plate plate, List<Settled> settled) {
    public Joined {
        settled = List.copyOf(settled);
    }
}
