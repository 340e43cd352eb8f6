package platekeep.client.plate.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import platekeep.client.plate.piece.Area;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Repeat;

/** The Plate screen as its presenters see it. */
public interface PlateView {

    void show(PlateState state);

    /** Says in words what lies under the pointer or the cursor; an empty text says nothing. */
    void place(String words);

    /** Scrolls so that a spot is seen, and points it out. */
    void pointOut(Spot spot);

    /** Scrolls so that a part of the chart is seen. */
    void see(Area area);

    /**
     * Asks why a version is saved.
     *
     * @param suggestion what was changed, in words
     * @param hands names of those in whose name it can be; the first is her own
     * @return empty when she gave it up
     */
    Optional<SaveAnswer> askReason(String suggestion, List<String> hands);

    /** Asks on what cloth a plate is to be worked; empty when she gave it up. */
    Optional<Cloth> askCloth(Cloth before);

    /** Asks why a plate is put away; empty when she gave it up. */
    Optional<String> askPutAway(String title);

    /** Asks for a name for a version; empty when she gave it up. */
    Optional<String> askVersionName(String versionWords);

    /**
     * Asks for a colour; empty when she gave it up.
     *
     * @param series the colours of the series that the plate is in, to choose from
     */
    Optional<Colour> askColour(String title, Colour before, List<Colour> series);

    /** Asks into which other colour of the palette one is to be merged; empty when she gave it up. */
    Optional<Character> askMerge(Palette palette, char gone);

    /**
     * Asks how chosen cables are to be recoloured; empty when she gave it up.
     *
     * @param there the colours among them
     * @param now the colour that is painted with
     */
    Optional<Recolouring> askRecolour(Palette palette, Set<Character> there, Optional<Character> now);

    /**
     * Asks how a chosen part is to be repeated; empty when she gave it up.
     *
     * @param pleats how many pleats it takes
     * @param room for a gap, how many there can be in all
     */
    Optional<Repeating> askRepeat(int pleats, IntUnaryOperator room);

    /**
     * Asks of what strip the chart is a repeat; empty when she gave it up.
     *
     * @param pleats how many pleats the chart covers
     */
    Optional<Strip> askStrip(int pleats, Optional<Repeat> before);

    /** Asks what is to be said; empty when she gave it up. */
    Optional<String> askRemark();

    /** Asks for a geometric line of a plate; empty when she gave it up. */
    Optional<Line> askLine(Plate plate, Line before);

    /** Asks for something that is sewn on; empty when she gave it up. */
    Optional<Notion> askNotion(Notion before);

    /** Asks what a motif is to be called; empty when she gave it up. */
    Optional<String> askMotifName();

    /** Asks which motif is to be put in, or no longer kept; empty when she gave it up. */
    Optional<MotifAnswer> askMotif(List<Plate> motifs);

    /** Asks whether to go ahead with something. */
    Consent askConsent(String question, String yes);

    /**
     * An answer to why a version is saved.
     *
     * @param reason not blank
     * @param hand which of the hands
     */
    record SaveAnswer(String reason, int hand) {}

    /**
     * How cables are recoloured.
     *
     * @param from those of this colour; empty for all
     */
    record Recolouring(Optional<Character> from, char to) {}

    /**
     * How a part is repeated.
     *
     * @param gap pleats between two of them
     * @param times how many in all
     */
    record Repeating(int gap, int times) {}

    /**
     * Of what strip a chart is a repeat.
     *
     * @param repeat empty for none
     */
    record Strip(Optional<Repeat> repeat) {}

    /**
     * What is done with a motif.
     *
     * @param number which, from 0
     */
    record MotifAnswer(int number, What what) {
        /** Put it in, or keep it no longer. */
        public enum What {
            PUT,
            FORGET
        }
    }

    /** An answer to a question for yes or no. */
    enum Consent {
        YES,
        NO
    }
}
