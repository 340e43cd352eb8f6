/**
 * The sample library: two designers of a harbour-and-orchard workshop, their plates and two years of versions, kept as
 * text. What it becomes is up to whoever listens to the story. Read {@code SampleStory} first.
 */
package platekeep.sample;
