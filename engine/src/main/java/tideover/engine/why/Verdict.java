package tideover.engine.why;

/** What a rule says. Only {@link #FAIL} rejects a rig. */
public enum Verdict {
    PASS,
    CAUTION,
    FAIL
}
