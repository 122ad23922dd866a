package tideover.engine.why;

/** What a maker says of a trait. What is unknown is taken as the bad case where people or a battery are at stake. */
public enum Stated {
    YES,
    NO,
    UNKNOWN
}
