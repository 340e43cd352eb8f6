package platekeep.client.git.store;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/**
 * Files by path, in the order of the paths' characters; never changes. One that is made from another by a few changes
 * shares with it all blocks but the few that changed, so ten thousand files are neither copied for one of them nor
 * compared.
 */
final class PathMap extends AbstractMap<String, FileAt> {
    /** So many files are in a block at most. */
    static final int MOST = 128;

    private static final int USUAL = 96;

    private final Block[] blocks;
    private final int size;

    /** Some files in order, never none. */
    private record Block(String[] paths, FileAt[] files) {
        int count() {
            return paths.length;
        }

        /** Where a path is; less than 0 as {@link Arrays#binarySearch} says where it would be. */
        int find(String path) {
            return Arrays.binarySearch(paths, path);
        }
    }

    private PathMap(List<Block> blocks) {
        this.blocks = blocks.toArray(new Block[0]);
        this.size = blocks.stream().mapToInt(Block::count).sum();
    }

    /** The same files. */
    static PathMap of(Map<String, FileAt> files) {
        if (files instanceof PathMap is) {
            return is;
        }
        boolean isInOrder = files instanceof SortedMap<String, FileAt> sorted && sorted.comparator() == null;
        Building building = new Building();
        (isInOrder ? files : new TreeMap<>(files)).forEach(building::add);
        return new PathMap(building.finished());
    }

    /** These files after some changes, by path; empty where a file goes. */
    PathMap with(Map<String, Optional<FileAt>> changes) {
        SortedMap<String, Optional<FileAt>> rest = new TreeMap<>(changes);
        Building building = new Building();
        for (int i = 0; i < blocks.length; i++) {
            boolean isLast = i == blocks.length - 1;
            SortedMap<String, Optional<FileAt>> here =
                    isLast ? rest : rest.headMap(blocks[i + 1].paths()[0]);
            if (here.isEmpty()) {
                building.add(blocks[i]);
            } else {
                building.add(blocks[i], here);
                here.clear();
            }
        }
        rest.forEach((path, file) -> file.ifPresent(f -> building.add(path, f)));
        List<Block> made = building.finished();
        PathMap changed = new PathMap(made);
        boolean isScattered = made.size() > 4 + 4 * changed.size / MOST;
        return isScattered ? of(new TreeMap<>(changed)) : changed;
    }

    /** Blocks in the making. What is added comes after all that was added before. */
    private static final class Building {
        private final List<Block> done = new ArrayList<>();
        private final List<String> paths = new ArrayList<>();
        private final List<FileAt> files = new ArrayList<>();

        void add(String path, FileAt file) {
            paths.add(path);
            files.add(file);
            if (paths.size() == USUAL) {
                finish();
            }
        }

        void add(Block block) {
            finish();
            done.add(block);
        }

        /** A block with changes, which are used up. */
        void add(Block block, SortedMap<String, Optional<FileAt>> changes) {
            finish();
            SortedMap<String, FileAt> all = new TreeMap<>();
            for (int i = 0; i < block.count(); i++) {
                all.put(block.paths()[i], block.files()[i]);
            }
            changes.forEach((path, file) -> file.ifPresentOrElse(f -> all.put(path, f), () -> all.remove(path)));
            if (!all.isEmpty() && all.size() <= MOST) {
                done.add(new Block(
                        all.keySet().toArray(new String[0]), all.values().toArray(new FileAt[0])));
            } else {
                all.forEach(this::add);
                finish();
            }
        }

        private void finish() {
            if (!paths.isEmpty()) {
                done.add(new Block(paths.toArray(new String[0]), files.toArray(new FileAt[0])));
                paths.clear();
                files.clear();
            }
        }

        List<Block> finished() {
            finish();
            return done;
        }
    }

    private Optional<FileAt> at(String path) {
        int low = 0;
        int high = blocks.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (blocks[middle].paths()[0].compareTo(path) <= 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        int place = low == 0 ? -1 : blocks[low - 1].find(path);
        return place < 0 ? Optional.empty() : Optional.of(blocks[low - 1].files()[place]);
    }

    @Override
    public FileAt get(Object path) {
        return path instanceof String text ? at(text).orElse(null) : null;
    }

    @Override
    public boolean containsKey(Object path) {
        return get(path) != null;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public void forEach(BiConsumer<? super String, ? super FileAt> each) {
        for (Block block : blocks) {
            for (int i = 0; i < block.count(); i++) {
                each.accept(block.paths()[i], block.files()[i]);
            }
        }
    }

    @Override
    public Set<Map.Entry<String, FileAt>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Map.Entry<String, FileAt>> iterator() {
                return new Entries(new Place(PathMap.this));
            }

            @Override
            public int size() {
                return size;
            }
        };
    }

    private static final class Entries implements Iterator<Map.Entry<String, FileAt>> {
        private final Place next;

        Entries(Place next) {
            this.next = next;
        }

        @Override
        public boolean hasNext() {
            return !next.isOver();
        }

        @Override
        public Map.Entry<String, FileAt> next() {
            if (next.isOver()) {
                throw new NoSuchElementException();
            }
            Map.Entry<String, FileAt> entry = Map.entry(next.path(), next.file());
            next.step();
            return entry;
        }
    }

    /** Hears of a path at which there is not the same file; empty where there is none. */
    interface Heard {
        void differs(String path, Optional<FileAt> before, Optional<FileAt> after);
    }

    /** Tells in order where these files and others differ; what both share is passed over. */
    void compare(PathMap after, Heard heard) {
        Place old = new Place(this);
        Place now = new Place(after);
        while (!old.isOver() || !now.isOver()) {
            if (old.isAtSameBlock(now)) {
                old.skip();
                now.skip();
                continue;
            }
            int order = old.order(now);
            if (order < 0) {
                heard.differs(old.path(), Optional.of(old.file()), Optional.empty());
            } else if (order > 0) {
                heard.differs(now.path(), Optional.empty(), Optional.of(now.file()));
            } else if (!old.file().equals(now.file())) {
                heard.differs(now.path(), Optional.of(old.file()), Optional.of(now.file()));
            }
            if (order <= 0) {
                old.step();
            }
            if (order >= 0) {
                now.step();
            }
        }
    }

    /** Where one stands while going through. */
    private static final class Place {
        private final Block[] blocks;
        private int block;
        private int at;

        Place(PathMap map) {
            this.blocks = map.blocks;
        }

        boolean isOver() {
            return block == blocks.length;
        }

        String path() {
            return blocks[block].paths()[at];
        }

        FileAt file() {
            return blocks[block].files()[at];
        }

        void step() {
            if (++at == blocks[block].count()) {
                skip();
            }
        }

        void skip() {
            block++;
            at = 0;
        }

        boolean isAtSameBlock(Place other) {
            return at == 0
                    && other.at == 0
                    && !isOver()
                    && !other.isOver()
                    && blocks[block] == other.blocks[other.block];
        }

        /** Which path comes first; one that is over comes last. */
        int order(Place other) {
            if (isOver() || other.isOver()) {
                return isOver() ? 1 : -1;
            }
            return path().compareTo(other.path());
        }
    }
}
