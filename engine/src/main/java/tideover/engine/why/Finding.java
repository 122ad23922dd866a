package tideover.engine.why;

/**
 * What one rule found on one rig.
 *
 * @param rule     short name of the rule, the key under which rejections are counted
 * @param value    what the rig has, in {@code unit}; NaN where the rule compares words
 * @param limit    what it is held against, in {@code unit}; NaN where the rule compares words
 * @param margin   room left before the limit, in {@code unit}; negative where it is broken, NaN for words
 * @param sentence one plain sentence with its numbers and units
 * @param basis    how the limit is known
 * @param source   standard and clause, part id, or the practice
 */
public record Finding(
        String rule,
        Verdict verdict,
        double value,
        double limit,
        double margin,
        String unit,
        String sentence,
        Basis basis,
        String source) {

    /** A finding where more than {@code most} is wrong. */
    public static Finding atMost(
            String rule,
            Verdict ifBroken,
            double value,
            double most,
            String unit,
            String sentence,
            Basis basis,
            String source) {
        Verdict verdict = value <= most ? Verdict.PASS : ifBroken;
        return new Finding(rule, verdict, value, most, most - value, unit, sentence, basis, source);
    }

    /** A finding that compares words, not figures. */
    public static Finding inWords(String rule, Verdict verdict, String sentence, Basis basis, String source) {
        return new Finding(rule, verdict, Double.NaN, Double.NaN, Double.NaN, "", sentence, basis, source);
    }
}
