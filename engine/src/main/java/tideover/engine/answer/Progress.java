package tideover.engine.answer;

/** Told what is being done and how far it is. */
public interface Progress {
    Progress SILENT = (stage, share) -> {};

    /** @param share of the stage done, 0..1 */
    void at(String stage, double share);
}
