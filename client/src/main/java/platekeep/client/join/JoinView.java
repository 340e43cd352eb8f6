package platekeep.client.join;

/** The Join screen as its presenter sees it. */
interface JoinView {
    void show(JoinState state);
}
