package platekeep.client.many;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.UUID;

/** Chance that comes out the same for the same seed on every machine: {@link Random}'s algorithm is part of Java. */
final class Chance {
    private final Random random;

    /** A chance of its own for each seed and use. */
    Chance(long seed, String use) {
        UUID mixed = UUID.nameUUIDFromBytes((use + "/" + seed).getBytes(StandardCharsets.UTF_8));
        this.random = new Random(mixed.getMostSignificantBits() ^ mixed.getLeastSignificantBits());
    }

    Random random() {
        return random;
    }

    /** From {@code least} to {@code most}, both included. */
    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** True so many times of a hundred. */
    boolean percent(double percent) {
        return random.nextDouble() * 100 < percent;
    }

    <T> T of(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    UUID id() {
        long most = random.nextLong() & 0xFFFFFFFFFFFF0FFFL | 0x4000L;
        long least = random.nextLong() & 0x3FFFFFFFFFFFFFFFL | 0x8000000000000000L;
        return new UUID(most, least);
    }
}
