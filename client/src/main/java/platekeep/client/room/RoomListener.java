package platekeep.client.room;

import platekeep.client.library.Library;

/** Hears what happens in the room, on the event thread. */
public interface RoomListener {

    /** A library was opened or closed. */
    default void librariesChanged() {}

    /** A library has new versions, names of versions, or plates brought in. */
    default void contentChanged(Library library) {}

    /** A draft was begun, saved or given up. */
    default void draftsChanged() {}
}
