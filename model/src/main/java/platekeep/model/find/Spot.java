package platekeep.model.find;

import java.util.Optional;

/**
 * A place in a plate, or in what its versions tell, where a word that was looked for stands.
 *
 * @param place which
 * @param text all that stands there
 * @param saying what was said of a version; empty where it stands in the plate itself
 */
public record Spot(Place place, String text, Optional<Saying> saying) {

    /** The places, the weightiest first. */
    public enum Place {
        TITLE("title"),
        NUMBER("number"),
        THEME("themes"),
        ALSO("themes"),
        SERIES("series"),
        DESIGNER("designers"),
        USE("what it is for"),
        AGE("ages"),
        STATE("how far it is"),
        ORIGIN("where it comes from"),
        TEXT("notes and colours"),
        NAME("name of a version"),
        REASON("reason of a version"),
        HAND("who made a version");

        private final String word;

        Place(String word) {
            this.word = word;
        }

        /** What people call it. */
        public String word() {
            return word;
        }
    }

    static Spot of(Place place, String text) {
        return new Spot(place, text, Optional.empty());
    }

    static Spot of(Saying saying) {
        Place place =
                switch (saying.kind()) {
                    case NAME -> Place.NAME;
                    case REASON -> Place.REASON;
                    case HAND -> Place.HAND;
                };
        return new Spot(place, saying.text(), Optional.of(saying));
    }
}
