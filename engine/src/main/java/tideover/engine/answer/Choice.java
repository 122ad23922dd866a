package tideover.engine.answer;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import tideover.engine.rig.Rig;
import tideover.engine.search.Rated;

/**
 * Among the winner and its near ties: the safer one and the lighter one, each with one sentence why. Either may be the winner
 * itself.
 *
 * @param safer     by {@link Safety}
 * @param saferWhy  against the winner
 * @param lighter   the least mass of all parts, then the lightest heaviest piece, then the price
 * @param lighterWhy against the winner
 */
public record Choice(Rated winner, Rated safer, String saferWhy, Rated lighter, String lighterWhy) {
    /** As the search takes them. */
    static final Comparator<Rated> BY_PRICE = Comparator.<Rated>comparingLong(
                    one -> one.price().totalCents())
            .thenComparingDouble(one -> one.rig().massKg())
            .thenComparing(one -> one.rig().id());

    public boolean winnerIsSafer() {
        return safer == winner;
    }

    public boolean winnerIsLighter() {
        return lighter == winner;
    }

    /** @param all the winner first, then its near ties, each with how safe it is */
    static Choice of(List<Judged> all) {
        Judged winner = all.get(0);
        Judged safer = all.stream().min(Comparator.comparing(Judged::safety)).orElse(winner);
        Judged lighter = all.stream()
                .min(Comparator.<Judged>comparingDouble(
                                one -> grams(one.rated().rig().massKg()))
                        .thenComparingDouble(one -> one.rated().rig().heaviestMovedKg())
                        .thenComparing(Judged::rated, BY_PRICE))
                .orElse(winner);
        return new Choice(
                winner.rated(),
                safer.rated(),
                safer == winner ? "no near tie is safer" : safer.safety().against(winner.safety()),
                lighter.rated(),
                lighter == winner
                        ? "no near tie is lighter"
                        : lighter(lighter.rated().rig(), winner.rated().rig()));
    }

    private static String lighter(Rig rig, Rig than) {
        String all = String.format(
                Locale.ROOT, "%.1f kg against %.1f kg, the heaviest that is moved ", rig.massKg(), than.massKg());
        return grams(rig.heaviestMovedKg()) == grams(than.heaviestMovedKg())
                ? all + String.format(Locale.ROOT, "%.1f kg in both", rig.heaviestMovedKg())
                : all
                        + String.format(
                                Locale.ROOT, "%.1f kg against %.1f kg", rig.heaviestMovedKg(), than.heaviestMovedKg());
    }

    /** Sums of the same parts in another order must not differ. */
    private static double grams(double kg) {
        return Math.rint(kg * 1000);
    }

    record Judged(Rated rated, Safety safety) {}
}
