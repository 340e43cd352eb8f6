package platekeep.client.series;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import platekeep.model.colour.Ciede2000;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;

/**
 * The colours that the plates of a series share, nearly share, or call by one name though they differ. How near two are is
 * their difference by CIEDE2000; the number of comparisons goes with the square of the number of distinct colours.
 */
final class SharedColours {
    /** Differences up to this are taken for one thread that was matched twice; about 1 is the least that is seen. */
    static final double NEAR = 4;

    private SharedColours() {}

    /** How colours belong together. */
    enum Kind {
        /** Colours that are hard to tell apart. */
        NEAR,
        /** One name for colours that can be told apart. */
        ONE_NAME,
        /** The very same colour in several plates. */
        SAME
    }

    /**
     * A colour in some of the plates.
     *
     * @param colour with the name and floss that it has in the first of them
     * @param plates ids, in the order of the series
     */
    record Use(Colour colour, List<String> plates) {
        Use {
            plates = List.copyOf(plates);
        }
    }

    /**
     * Colours that belong together, the one in most plates first.
     *
     * @param farthest the greatest difference from the first; 0 for the same
     */
    record Group(Kind kind, List<Use> uses, double farthest) {
        Group {
            uses = List.copyOf(uses);
        }

        /** In how many plates any of them is. */
        int plates() {
            return (int) uses.stream()
                    .flatMap(use -> use.plates().stream())
                    .distinct()
                    .count();
        }
    }

    /** The groups: what may be mended first, then what is the same; in each those in most plates first. */
    static List<Group> of(List<Plate> plates) {
        List<Use> uses = uses(plates);
        List<Group> groups = new ArrayList<>();
        uses.stream()
                .filter(use -> use.plates().size() > 1)
                .forEach(use -> groups.add(new Group(Kind.SAME, List.of(use), 0)));
        List<Group> near = near(uses);
        groups.addAll(near);
        groups.addAll(oneName(uses, near));
        groups.sort(Comparator.comparing(Group::kind)
                .thenComparing(Comparator.comparingInt(Group::plates).reversed()));
        return groups;
    }

    private static List<Use> uses(List<Plate> plates) {
        Map<String, Colour> first = new LinkedHashMap<>();
        Map<String, Set<String>> where = new LinkedHashMap<>();
        for (Plate plate : plates) {
            for (Colour colour : plate.palette().entries().values()) {
                first.putIfAbsent(colour.srgb(), colour);
                where.computeIfAbsent(colour.srgb(), srgb -> new LinkedHashSet<>())
                        .add(plate.id());
            }
        }
        return first.entrySet().stream()
                .map(entry -> new Use(entry.getValue(), List.copyOf(where.get(entry.getKey()))))
                .sorted(Comparator.comparingInt((Use use) -> -use.plates().size()))
                .toList();
    }

    private static List<Group> near(List<Use> uses) {
        List<Group> groups = new ArrayList<>();
        Set<Use> taken = new LinkedHashSet<>();
        for (Use leader : uses) {
            if (taken.contains(leader)) {
                continue;
            }
            List<Use> group = new ArrayList<>(List.of(leader));
            double farthest = 0;
            for (Use other : uses) {
                double away = difference(leader, other);
                if (other != leader && !taken.contains(other) && away <= NEAR) {
                    group.add(other);
                    farthest = Math.max(farthest, away);
                }
            }
            if (group.size() > 1 && isInSeveral(group)) {
                taken.addAll(group);
                groups.add(new Group(Kind.NEAR, group, farthest));
            }
        }
        return groups;
    }

    /** Two near colours of one plate alone are meant to differ. */
    private static boolean isInSeveral(List<Use> group) {
        return group.stream().flatMap(use -> use.plates().stream()).distinct().count() > 1;
    }

    private static List<Group> oneName(List<Use> uses, List<Group> near) {
        Map<String, List<Use>> byName = new LinkedHashMap<>();
        uses.forEach(use -> byName.computeIfAbsent(
                        use.colour().name().strip().toLowerCase(java.util.Locale.ROOT), n -> new ArrayList<>())
                .add(use));
        List<Group> groups = new ArrayList<>();
        for (Map.Entry<String, List<Use>> named : byName.entrySet()) {
            List<Use> group = named.getValue();
            boolean isNear = near.stream().anyMatch(n -> n.uses().containsAll(group));
            if (group.size() > 1 && !named.getKey().isEmpty() && !isNear && isInSeveral(group)) {
                double farthest = group.stream()
                        .mapToDouble(use -> difference(group.get(0), use))
                        .max()
                        .orElse(0);
                groups.add(new Group(Kind.ONE_NAME, group, farthest));
            }
        }
        return groups;
    }

    private static double difference(Use one, Use other) {
        return Ciede2000.difference(one.colour().rgb(), other.colour().rgb());
    }

    /** A plate in which the colours of a group are one thread: strands stay as they are in each. */
    static Plate equal(Plate plate, Group group, Colour thread) {
        Set<String> others = new LinkedHashSet<>();
        group.uses().forEach(use -> others.add(use.colour().srgb()));
        var palette = plate.palette();
        for (Map.Entry<Character, Colour> entry : plate.palette().entries().entrySet()) {
            Colour before = entry.getValue();
            if (others.contains(before.srgb()) && !before.srgb().equals(thread.srgb())) {
                palette = palette.with(
                        entry.getKey(),
                        new Colour(thread.name(), thread.srgb(), before.strands(), thread.floss(), before.unknown()));
            }
        }
        return palette.equals(plate.palette())
                ? plate
                : plate.edit().palette(palette).build();
    }
}
