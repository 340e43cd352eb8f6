/**
 * Text to plate and back: the reader, the canonical writer, the problems that a text can have, and the JSON Schema.
 *
 * <p>The only package that knows Jackson. It knows nothing of the craft: a plate that reads well may still be one that
 * cannot be worked. Read {@code PlateText} first.
 */
package platekeep.model.text;
