/**
 * Makes the sample library out of its story: real libraries in three folders, by the same calls that a screen makes.
 *
 * <p>It knows the port and the story, not how a library is kept. Read {@link platekeep.client.sample.SampleLibrary}
 * first.
 */
package platekeep.client.sample;
