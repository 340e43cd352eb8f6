/**
 * The sample library: two designers of a harbour-and-orchard workshop, their plates and two years of versions, kept as
 * text. What it becomes is up to whoever reads the story. Read {@link platekeep.sample.SampleStory} first.
 */
package platekeep.sample;
