package platekeep.client.git.desk;

import platekeep.client.library.LibraryException;

/** Why something is not done, in sentences. */
final class Refusals {
    private static final String NOTHING_LOST = " Nothing was changed; your work is still in the window.";

    private Refusals() {}

    static LibraryException nobodyIntroduced() {
        return new LibraryException(
                "This library does not know yet who you are. Give your name first, then try again.");
    }

    static LibraryException noVersion(String text) {
        return new LibraryException("There is no version \"" + text + "\" in this library. Look it up in the history.");
    }

    static LibraryException severalVersions(String text) {
        return new LibraryException("Several versions begin with " + text + ". Give more of its digits.");
    }

    static LibraryException noReason() {
        return new LibraryException("A version needs a reason. Write in a few words why." + NOTHING_LOST);
    }

    static LibraryException nothingChanged() {
        return new LibraryException("Nothing differs from the newest version, so there is no version to save.");
    }

    static LibraryException movedOn(String title) {
        return new LibraryException("\"" + title + "\" was changed in another window or brought in since you opened it."
                + " Open the newest version beside yours and take over what you want to keep." + NOTHING_LOST);
    }

    static LibraryException unreadable(String sentence) {
        return new LibraryException("This cannot be saved as it is: " + sentence + "." + NOTHING_LOST);
    }

    static LibraryException noPicture() {
        return new LibraryException(
                "This file is neither a JPEG nor a PNG picture. Save it as one of the two first. Nothing was changed.");
    }

    static LibraryException tooLargePicture() {
        return new LibraryException("This picture is larger than 64 MB, which is more than a library keeps. Make it"
                + " smaller first. Nothing was changed.");
    }

    static LibraryException noPlateForPicture() {
        return new LibraryException(
                "The plate that the picture belongs to is not in the library. Nothing was changed.");
    }

    static LibraryException pictureNotHere() {
        return new LibraryException("That picture is not in the library any more. Nothing was changed.");
    }

    static LibraryException noSeries() {
        return new LibraryException("That series is not in the library any more. Nothing was changed.");
    }

    static LibraryException noFacts() {
        return new LibraryException("The file library.json in this folder is missing or damaged. Bring it back from an"
                + " older version or from your partner.");
    }

    static LibraryException unfitHand() {
        return new LibraryException("Give a name and an address, each on one line and without < and >.");
    }

    static LibraryException notHere() {
        return new LibraryException("That plate is not in the library, so it cannot be put away. Nothing was changed.");
    }

    static LibraryException notThereThen() {
        return new LibraryException("That plate was not there in that version. Nothing was changed.");
    }

    static LibraryException badName() {
        return new LibraryException("A name of a version is one line of text that is not blank. Nothing was changed.");
    }

    static LibraryException nameIsTaken(String name) {
        return new LibraryException("That version has the name \"" + name + "\" already. Nothing was changed.");
    }

    static LibraryException damagedByHand(String sentence) {
        return new LibraryException(
                sentence + ". Put that right in the file, or put the file back, then take it in. Nothing was changed.");
    }

    static LibraryException changedAgain(String path) {
        return new LibraryException(path + " has changed again since you looked. Look again. Nothing was changed.");
    }
}
