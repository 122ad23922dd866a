package tideover.engine.proof;

/**
 * One limit of a rig lifted, and what that gains.
 *
 * @param limit         short name of the limit
 * @param words         what was changed
 * @param shareGain     gain in the carried share, 0..1
 * @param meanHoursGain gain in the mean hours carried, capped at the asked length where some outage fails, else as the tide line is
 */
public record Lift(String limit, String words, double shareGain, double meanHoursGain) {}
