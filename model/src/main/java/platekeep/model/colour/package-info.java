/**
 * Colour as people see it: sRGB and CIELAB, how far two colours lie apart, what remains of that for people with a
 * colour-vision deficiency, and the contrast of text and marks.
 *
 * <p>It knows numbers only, no palette and no plate. Colours are {@code 0xRRGGBB} in sRGB. Read {@link Lab} first.
 */
package platekeep.model.colour;
