/**
 * The program: chooses window or command line, and puts the parts together by their constructors.
 *
 * <p>The only package that sees all others. Read {@link platekeep.client.Main} first.
 */
package platekeep.client;
