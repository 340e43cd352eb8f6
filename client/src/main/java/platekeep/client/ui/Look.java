package platekeep.client.ui;

import java.awt.Color;
import java.util.function.Supplier;
import javax.swing.UIManager;

/**
 * The colours of what we paint ourselves, as the theme has them. The cloth is pale in both themes, so that a picture
 * keeps its look.
 */
public final class Look {
    private static final ThreadLocal<Boolean> ON_LIGHT_PAPER = ThreadLocal.withInitial(() -> Boolean.FALSE);

    private Look() {}

    /** The cloth as {@code 0xRRGGBB}. */
    public static int cloth() {
        return colour("Platekeep.cloth", 0xE3E9ED).getRGB() & 0xFFFFFF;
    }

    /** The paper of a chart. */
    public static Color paper() {
        return colour("Platekeep.paper", 0xFCFDFD);
    }

    /** Fine lines of a chart. */
    public static Color fineLine() {
        return colour("Platekeep.fineLine", 0xE3E8EB);
    }

    /** Every tenth line of a chart. */
    public static Color line() {
        return colour("Platekeep.line", 0xBCC7CE);
    }

    /** Gathering rows. */
    public static Color gathering() {
        return colour("Platekeep.gathering", 0x5F8CA3);
    }

    /** The centre valley. */
    public static Color centre() {
        return colour("Platekeep.centre", 0xA4432F);
    }

    /** Text. */
    public static Color ink() {
        return colour("Platekeep.ink", 0x22292E);
    }

    /** Text that may be overlooked. */
    public static Color faintInk() {
        return colour("Platekeep.faintInk", 0x5A666E);
    }

    /** What is chosen, focused or changed. */
    public static Color accent() {
        return colour("Platekeep.accent", 0x2C5F86);
    }

    /** What needs a decision. */
    public static Color trouble() {
        return colour("Platekeep.trouble", 0xA4432F);
    }

    /** What may be wrong. */
    public static Color warning() {
        return colour("Platekeep.warning", 0x8A6512);
    }

    /** The ground of what is chosen. */
    public static Color chosen() {
        return colour("Platekeep.chosen", 0xDCE8F0);
    }

    /** The ground of cards and side panels. */
    public static Color card() {
        return colour("Platekeep.card", 0xFCFDFD);
    }

    /** The edge of cards. */
    public static Color edge() {
        return colour("Platekeep.edge", 0xD2D9DE);
    }

    /** Does something in the colours of the light theme, whatever the window's is; on this thread only. */
    public static <T> T onLightPaper(Supplier<T> work) {
        ON_LIGHT_PAPER.set(Boolean.TRUE);
        try {
            return work.get();
        } finally {
            ON_LIGHT_PAPER.remove();
        }
    }

    private static Color colour(String key, int otherwise) {
        if (ON_LIGHT_PAPER.get()) {
            return new Color(otherwise);
        }
        Color themed = UIManager.getColor(key);
        return themed == null ? new Color(otherwise) : themed;
    }
}
