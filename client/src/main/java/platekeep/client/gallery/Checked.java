package platekeep.client.gallery;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import platekeep.client.library.Entry;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Check;
import platekeep.model.stitch.CheckSettings;
import platekeep.model.stitch.Severity;

/** In which contents the check finds what cannot be worked; each content is checked once. Safe for many threads. */
final class Checked {
    private final Set<String> known = ConcurrentHashMap.newKeySet();
    private final Set<String> errors = ConcurrentHashMap.newKeySet();

    /** Checks what is not known yet; in the background, until it is no longer wanted. */
    void check(Stock stock, Progress progress) {
        for (Stock.Item item : stock.items()) {
            if (progress.cancelled()) {
                return;
            }
            Entry entry = item.entry();
            if (known.add(entry.content())) {
                entry.plate().filter(Checked::hasErrors).ifPresent(plate -> errors.add(entry.content()));
            }
        }
    }

    private static boolean hasErrors(Plate plate) {
        return Check.of(plate, CheckSettings.DEFAULT).stream()
                .anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** Contents with errors, as far as they are known now. */
    Set<String> errors() {
        return Set.copyOf(errors);
    }
}
