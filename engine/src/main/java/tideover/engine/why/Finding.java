package tideover.engine.why;

import java.util.List;
import java.util.Locale;

/**
 * What one rule found on one rig. The sentence is kept as its pattern and figures and rendered only when somebody reads
 * it: most findings are merely counted.
 *
 * @param rule    short name of the rule, the key under which rejections are counted
 * @param value   what the rig has, in {@code unit}; NaN where the rule compares words
 * @param limit   what it is held against, in {@code unit}; NaN where the rule compares words
 * @param margin  room left before the limit, in {@code unit}; negative where it is broken, NaN for words
 * @param pattern format of one plain sentence
 * @param figures what goes into it
 * @param basis   how the limit is known
 * @param source  standard and clause, part id, or the practice
 */
public record Finding(
        String rule,
        Verdict verdict,
        double value,
        double limit,
        double margin,
        String unit,
        String pattern,
        List<Object> figures,
        Basis basis,
        String source) {
    public Finding {
        figures = List.copyOf(figures);
    }

    /** One plain sentence with its numbers and units. */
    public String sentence() {
        return String.format(Locale.ROOT, pattern, figures.toArray());
    }

    /** A finding where more than {@code most} is wrong. */
    public static Finding atMost(
            String rule,
            Verdict ifBroken,
            double value,
            double most,
            String unit,
            Basis basis,
            String source,
            String pattern,
            Object... figures) {
        Verdict verdict = value <= most ? Verdict.PASS : ifBroken;
        return new Finding(rule, verdict, value, most, most - value, unit, pattern, List.of(figures), basis, source);
    }

    /** A finding where less than {@code least} is wrong. */
    public static Finding atLeast(
            String rule,
            Verdict ifBroken,
            double value,
            double least,
            String unit,
            Basis basis,
            String source,
            String pattern,
            Object... figures) {
        Verdict verdict = value >= least ? Verdict.PASS : ifBroken;
        return new Finding(rule, verdict, value, least, value - least, unit, pattern, List.of(figures), basis, source);
    }

    /** A finding that compares words, not figures. */
    public static Finding inWords(
            String rule, Verdict verdict, Basis basis, String source, String pattern, Object... figures) {
        return new Finding(
                rule, verdict, Double.NaN, Double.NaN, Double.NaN, "", pattern, List.of(figures), basis, source);
    }
}
