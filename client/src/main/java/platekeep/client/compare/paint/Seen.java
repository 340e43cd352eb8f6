package platekeep.client.compare.paint;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;

/**
 * What of a pane has to be painted.
 *
 * @param clip in dots of the pane
 * @param first the first line
 * @param last the last line, before the first where there is none
 */
record Seen(Rectangle clip, int first, int last) {

    static Seen of(Graphics2D g, PairedPlates plates, Sight sight) {
        Rectangle clip = g.getClipBounds();
        int first = (int) Math.floor(sight.lineAt(clip.getMinY())) - 1;
        int last = (int) Math.floor(sight.lineAt(clip.getMaxY())) + 1;
        return new Seen(clip, Math.max(0, first), Math.min(plates.lines().size() - 1, last));
    }
}
