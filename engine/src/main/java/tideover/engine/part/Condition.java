package tideover.engine.part;

/** How a part comes. What is owned costs nothing more. */
public enum Condition {
    NEW,
    USED,
    OWNED
}
