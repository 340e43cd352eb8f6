package platekeep.client.compare;

import platekeep.model.compare.Side;

/**
 * How the two charts take turns.
 *
 * @param front which one is in front
 * @param pace how often they turn by themselves
 * @param going whether they do now
 */
record Blink(Side front, Pace pace, Going going) {

    /** Whether the charts turn by themselves. */
    enum Going {
        ON,
        HELD
    }

    Blink turned() {
        return new Blink(front == Side.BEFORE ? Side.AFTER : Side.BEFORE, pace, going);
    }

    Blink at(Pace other) {
        return new Blink(front, other, other == Pace.BY_HAND ? Going.HELD : Going.ON);
    }

    Blink heldOrOn() {
        return going == Going.ON || pace == Pace.BY_HAND
                ? new Blink(front, pace, Going.HELD)
                : new Blink(front, pace, Going.ON);
    }

    Blink held() {
        return new Blink(front, pace, Going.HELD);
    }
}
