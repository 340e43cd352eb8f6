package platekeep.client.git.store;

import platekeep.client.library.LibraryException;

/** Why a version is not made, in sentences. */
final class Refusals {
    private Refusals() {}

    static LibraryException onOldVersion() {
        return new LibraryException(
                "Another program has put this folder on an old version. Let it go back to the newest"
                        + " one, then try again. Nothing was changed.");
    }

    static LibraryException movedOn() {
        return new LibraryException(
                "Another window or program saved a version at the same moment. Try again. Nothing was changed.");
    }

    static LibraryException badName(String path) {
        return new LibraryException("A file name that not every system can keep: " + path + ". Nothing was changed.");
    }

    static LibraryException changedByHand(String path) {
        return new LibraryException(
                path + " was changed outside Platekeep since the newest version. Take that change in"
                        + " first, or put the file back, then try again. Nothing was changed.");
    }
}
