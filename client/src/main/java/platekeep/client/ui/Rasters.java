package platekeep.client.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import platekeep.model.draw.ChartScale;

/**
 * Rasters for the scales that were used last. Working out what a cable looks like at a scale costs as much as drawing a
 * small picture with it, and a library's plates are mostly of a few sizes. A raster is used by one thread at a time; where
 * two want the same one, the second gets another. Safe for many threads.
 */
final class Rasters {
    private static final int MOST = 24;

    private final Map<ChartScale, ClothRaster> free = new LinkedHashMap<>(2 * MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<ChartScale, ClothRaster> eldest) {
            return size() > MOST;
        }
    };

    /** Does something with a raster of a scale. */
    <T> T with(ChartScale scale, int cloth, Function<ClothRaster, T> work) {
        ClothRaster kept = take(scale);
        ClothRaster raster = kept != null && kept.isFor(scale, cloth) ? kept : new ClothRaster(scale, cloth);
        T done = work.apply(raster);
        giveBack(scale, raster);
        return done;
    }

    private synchronized ClothRaster take(ChartScale scale) {
        return free.remove(scale);
    }

    private synchronized void giveBack(ChartScale scale, ClothRaster raster) {
        free.put(scale, raster);
    }
}
