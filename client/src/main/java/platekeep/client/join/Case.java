package platekeep.client.join;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.client.library.Arrivals;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.join.Joined;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/**
 * One plate to decide on, as it was found: nothing in here changes while she decides.
 *
 * @param origin where its clashes come from
 * @param before the plate as the library has it, before anything was joined
 * @param joined what the join made by itself; {@code before} where the join was made earlier
 * @param settlements what was settled by itself
 * @param mine her side
 * @param theirs the partner's side
 * @param knownFaults what the check said of either side already
 * @param sides whose a side of a clash is, where the names do not tell
 * @param mark tells apart what was decided about this from what was decided about something that has changed since
 */
record Case(
        Origin origin,
        Plate before,
        Plate joined,
        List<Settlement> settlements,
        Party mine,
        Party theirs,
        Set<String> knownFaults,
        Optional<Sides> sides,
        String mark) {

    /** Where the clashes of a plate come from. */
    enum Origin {
        /** It came from the partner and is not brought in yet. */
        ARRIVED,
        /** It stands in the library with open clashes. */
        OPEN
    }

    Case {
        settlements = List.copyOf(settlements);
        knownFaults = Set.copyOf(knownFaults);
    }

    /** Two edits that have to be joined. */
    static Case arrived(Arrivals.Arrival arrival) {
        Plate mine = arrival.mine().orElseThrow();
        Plate theirs = arrival.theirs().orElseThrow();
        Party here = Party.of(arrival.changedHere());
        Party there = Party.of(arrival.changedThere());
        Joined joined = Join.of(arrival.base(), mine, theirs, new Hands(here.name(), there.name()));
        List<Settlement> settlements = arrival.base()
                .map(base -> Settlement.of(base, mine, theirs, joined))
                .orElse(List.of());
        Set<String> known = new HashSet<>(Faults.keys(mine));
        known.addAll(Faults.keys(theirs));
        return new Case(
                Origin.ARRIVED,
                mine,
                joined.plate(),
                settlements,
                here,
                there,
                known,
                here.tellsApart(there) ? Optional.empty() : Optional.of(Sides.of(arrival.base(), mine, theirs)),
                mark(arrival.base(), mine, theirs));
    }

    /**
     * A plate with clashes from an earlier join.
     *
     * @param me her name, to tell her side
     */
    static Case open(Plate plate, Optional<String> me, String version) {
        return new Case(
                Origin.OPEN,
                plate,
                plate,
                List.of(),
                new Party(me, ""),
                Party.UNKNOWN,
                Faults.keys(plate),
                Optional.empty(),
                version);
    }

    String id() {
        return before.id();
    }

    /** The clashes that there are to decide, decided or not. */
    List<Clash> clashes() {
        return joined.clashes();
    }

    /** Whether a side of a clash is hers. */
    boolean isMine(Clash clash, Clash.Side side) {
        return sides.map(s -> s.isMine(clash, side))
                .orElseGet(() -> side.by().isPresent() && side.by().equals(mine.name()));
    }

    /** Whether a side of a clash is the partner's, as far as that is known. */
    boolean isTheirs(Clash clash, Clash.Side side) {
        return sides.map(s -> s.isTheirs(clash, side))
                .orElseGet(() -> side.by().isPresent() && !side.by().equals(mine.name()));
    }

    private static String mark(Optional<Plate> base, Plate mine, Plate theirs) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            base.ifPresent(plate -> digest.update(PlateText.bytes(plate)));
            digest.update(PlateText.bytes(mine));
            digest.update(PlateText.bytes(theirs));
            digest.update("join".getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest.digest(), 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
