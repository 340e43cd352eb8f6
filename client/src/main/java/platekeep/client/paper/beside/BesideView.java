package platekeep.client.paper.beside;

/** The pictures beside a plate as their presenter sees them. */
public interface BesideView {

    void show(BesideState state);

    /** Asks whether a picture is to be put away. */
    Answer askPutAway(String words);

    /** Yes or no. */
    enum Answer {
        PUT_AWAY,
        LEAVE
    }
}
