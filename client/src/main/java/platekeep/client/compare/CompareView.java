package platekeep.client.compare;

/** What the presenter needs of the comparison screen. */
interface CompareView {

    void show(CompareState state);
}
