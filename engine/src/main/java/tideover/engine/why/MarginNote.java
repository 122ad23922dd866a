package tideover.engine.why;

/**
 * The "why" of one number that went into an answer.
 *
 * @param name   what it is, in the reader's words
 * @param value  figure and unit as shown
 * @param basis  how far it can be trusted
 * @param source where it comes from: file and field, table, standard; or the formula and what went into it
 */
public record MarginNote(String name, String value, Basis basis, String source) {
    /** Name of the note that tells which rows of one parts file a later one stands for. */
    public static final String REPLACED_PARTS = "Parts replaced by a later file";
}
