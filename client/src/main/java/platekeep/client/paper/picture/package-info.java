/**
 * Pictures of paper and of finished work as files: their measures before their dots, which way up they are, what is
 * taken out of them on the way into a library, and how they are made smaller.
 *
 * <p>What a camera or a scanner writes beside the dots (place, time, names, thumbnails, comments) goes; what is needed to
 * see the dots in their right colours stays, an ICC profile too. Dots that are not made smaller are kept byte for byte: a
 * picture that lies on its side keeps a mark that says so, and nothing else, since turning it would cost a JPEG some of
 * its quality. Read {@link platekeep.client.paper.picture.PictureFile} first.
 */
package platekeep.client.paper.picture;
