package platekeep.client.plate.work;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * A version of the plate as the history strip shows it.
 *
 * @param versionId its id
 * @param content the id of the plate's content there; empty text where it was put away
 * @param plate the plate there; empty where it was put away or the file was damaged
 * @param day when
 * @param hand by whom, and by whom entered where that is somebody else
 * @param reason why
 * @param names names given to it
 */
public record HistoryStep(
        String versionId,
        String content,
        Optional<Plate> plate,
        String day,
        String hand,
        String reason,
        List<String> names) {
    public HistoryStep {
        names = List.copyOf(names);
    }
}
