package tideover.engine.proof;

/**
 * What came of the starts on the darkest and coldest days, walked with all that storms do.
 *
 * @param share of them carried
 * @param worst the one carried shortest, or with the emptiest store
 */
public record StormProof(CarriedShare share, Trace worst) {}
