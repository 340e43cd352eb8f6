package platekeep.client.task;

/** Tells how far long work has come and whether it is still wanted. May be called from any thread. */
public interface Progress {

    /** Nobody watches and nobody cancels. */
    Progress NONE = new Progress() {
        @Override
        public void at(int done, int total, String what) {
            // nobody watches
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /**
     * @param done how much is done
     * @param total of how much; 0 when it is not known
     * @param what in plain words, such as "reading plates"
     */
    void at(int done, int total, String what);

    /** Whether the work should stop soon, leaving everything as it was. */
    boolean cancelled();
}
