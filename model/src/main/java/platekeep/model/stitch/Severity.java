package platekeep.model.stitch;

/** How much a finding weighs. */
public enum Severity {
    /** The plate contradicts itself or waits for a decision; it cannot be worked as it stands. */
    ERROR,
    /** It can be worked, but makes trouble. */
    WARNING,
    /** Worth a look. */
    HINT
}
