package platekeep.model.join.edits.change;

import platekeep.model.plate.Colour;

/** A colour that a designer added, under the key that she gave it. */
public record Fresh(char key, Colour colour) {}
