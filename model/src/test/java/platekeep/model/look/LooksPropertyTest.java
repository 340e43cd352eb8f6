package platekeep.model.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Drawn;

/** Comparing all with all leaves nothing out: it finds the pairs that a plain comparison of each with each finds. */
class LooksPropertyTest {
    private static final String CELLS = "..abc";

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE, seed = "20261126")
    void allPairsAreThoseOfAPlainComparison(@ForAll long seed) {
        Random random = new Random(seed);
        List<Plate> plates = plates(random);
        List<Optional<Signature>> signatures =
                plates.stream().map(Signature::of).toList();
        double least = 0.6 + random.nextInt(4) * 0.1;

        assertThat(found(signatures, least)).isEqualTo(plainly(signatures, least));
    }

    private static Set<String> found(List<Optional<Signature>> signatures, double least) {
        Looks looks = new Looks(signatures);
        Set<String> pairs = new TreeSet<>();
        for (int reading = 0; reading < looks.readings(); reading++) {
            for (Looks.Near near : looks.after(reading, least)) {
                pairs.add(pair(looks.owner(reading), near.at()));
            }
        }
        return pairs;
    }

    private static Set<String> plainly(List<Optional<Signature>> signatures, double least) {
        Set<String> pairs = new TreeSet<>();
        for (int a = 0; a < signatures.size(); a++) {
            for (int b = a + 1; b < signatures.size(); b++) {
                if (likeness(signatures.get(a), signatures.get(b)) >= least) {
                    pairs.add(pair(a, b));
                }
            }
        }
        return pairs;
    }

    private static double likeness(Optional<Signature> one, Optional<Signature> other) {
        double most = 0;
        for (Mirror mirror : Mirror.values()) {
            if (one.isPresent() && other.isPresent()) {
                most = Math.max(most, one.get().mirrored(mirror).likeness(other.get()));
            }
        }
        return most;
    }

    private static String pair(int a, int b) {
        return Math.min(a, b) + " " + Math.max(a, b);
    }

    private static List<Plate> plates(Random random) {
        List<Plate> plates = new ArrayList<>();
        while (plates.size() < 24) {
            Plate plate = random.nextInt(3) == 0 || plates.isEmpty()
                    ? patches(random)
                    : edited(plates.get(random.nextInt(plates.size())), random);
            plates.add(plate);
        }
        return plates;
    }

    private static Plate edited(Plate plate, Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> Edited.leftRight(plate);
            case 1 -> Edited.topBottom(plate);
            case 2 -> Edited.moved(plate, random.nextInt(4), random.nextInt(4), random.nextInt(3), random.nextInt(3));
            default -> Edited.touched(plate, 0.1 * random.nextDouble(), random);
        };
    }

    /** A chart of some blocks of colour on empty cloth, at least one cable. */
    private static Plate patches(Random random) {
        char[][] cells = new char[8 + random.nextInt(12)][10 + random.nextInt(20)];
        for (char[] row : cells) {
            Arrays.fill(row, '.');
        }
        for (int patch = 0; patch < 4; patch++) {
            int top = random.nextInt(cells.length);
            int left = random.nextInt(cells[0].length);
            char colour = patch == 0 ? 'a' : CELLS.charAt(random.nextInt(CELLS.length()));
            for (int r = top; r < Math.min(cells.length, top + 2 + random.nextInt(8)); r++) {
                for (int i = left; i < Math.min(cells[0].length, left + 8); i++) {
                    cells[r][i] = colour;
                }
            }
        }
        cells[0][0] = 'b';
        String[] rows = new String[cells.length];
        for (int r = 0; r < rows.length; r++) {
            rows[r] = new String(cells[r]);
        }
        return Drawn.plate(rows);
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE, seed = "20261127")
    void aMirrorTakesEachFieldFromTheOtherSide(@ForAll long seed) {
        Signature.of(patches(new Random(seed))).ifPresent(signature -> {
            for (Mirror mirror : Mirror.values()) {
                assertThat(signature.mirrored(mirror).bits()).isEqualTo(fieldByField(signature.bits(), mirror));
            }
        });
    }

    private static long[] fieldByField(long[] bits, Mirror mirror) {
        long[] turned = new long[bits.length];
        for (int word = 0; word < bits.length; word++) {
            int in = word % Signature.WORDS;
            if (in == Signature.BORDER_WORDS) {
                turned[word] = bits[word];
                continue;
            }
            int fields = in < Signature.COVER_WORDS ? Signature.FIELDS : Signature.BORDER_FIELDS;
            int plane = fields * fields / Long.SIZE;
            int first = in < Signature.COVER_WORDS ? word - in % plane : word;
            for (int bit = 0; bit < Long.SIZE; bit++) {
                int from = mirror.from((word - first) * Long.SIZE + bit, fields, fields);
                long value = bits[first + from / Long.SIZE] >>> from % Long.SIZE & 1;
                turned[word] |= value << bit;
            }
        }
        return turned;
    }
}
