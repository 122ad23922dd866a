package tideover.engine.part;

import java.time.LocalDate;
import tideover.engine.quantity.Require;

/**
 * What a parts file says of any part.
 *
 * @param id         short name, unique in its file
 * @param priceCents whole cents of {@code currency}; 0 for what is owned
 * @param atHand     how many can be had: what is owned or used is not there any number of times
 * @param pricedOn   when the price was read
 * @param source     file and line
 * @param selling    volume prices, shipping and tax
 */
public record Listing(
        String id,
        String name,
        long priceCents,
        String currency,
        LocalDate pricedOn,
        Condition condition,
        int atHand,
        double massKg,
        String source,
        Selling selling) {
    private static final long MILLION = 1_000_000;

    public Listing {
        Require.text("id", id);
        Require.text("name", name);
        Require.atLeast(0, "priceCents", priceCents, "cents");
        Require.within(1, 1000, "atHand", atHand);
        Require.atLeast(0, "massKg", massKg, "kg");
    }

    /** Sold for its price and nothing more. */
    public Listing(
            String id,
            String name,
            long priceCents,
            String currency,
            LocalDate pricedOn,
            Condition condition,
            int atHand,
            double massKg,
            String source) {
        this(id, name, priceCents, currency, pricedOn, condition, atHand, massKg, source, Selling.PLAIN);
    }

    /** The same on other terms. */
    public Listing with(Selling other) {
        return new Listing(id, name, priceCents, currency, pricedOn, condition, atHand, massKg, source, other);
    }

    /**
     * How many are best bought where so many are needed: as many as make price and shipping by the piece least, for ten may be
     * had for less than nine. Never more than are at hand; the fewest of those that cost the same. What tax or free
     * shipping of a whole order would make of one more is not looked at.
     */
    public int boughtFor(int count) {
        return bestCount(count, 0);
    }

    /** Price of what is {@linkplain #boughtFor bought}, in whole cents, without shipping or tax. */
    public long goodsCents(int count) {
        int bought = boughtFor(count);
        return bought * eachCents(bought);
    }

    /** Shipping by the piece of what is {@linkplain #boughtFor bought}, in whole cents; the seller's for an order comes on top. */
    public long shippingCents(int count) {
        return boughtFor(count) * selling.shippingEachCents();
    }

    /**
     * What it costs to have at least so many of it, in whole cents, shipping by the piece with it and tax left out. Never less
     * for more of them, as long as they are at hand, so it is no more than what this part adds to the price of any rig that
     * has so many or more.
     */
    public long costCents(int count) {
        if (selling.breaks().isEmpty()) {
            return count * (priceCents + selling.shippingEachCents());
        }
        int bought = boughtFor(count);
        return bought * (eachCents(bought) + selling.shippingEachCents());
    }

    /**
     * The least that so many or more can add to a final price, in millionths of a cent: price, tax on it where it is taxed and
     * shipping by the piece. Less than what {@link #boughtFor} comes to where tax makes another count the cheaper one.
     */
    public long leastWithTaxMillionths(int count, long taxPerMillion) {
        long taxed = taxed(taxPerMillion);
        return millionths(bestCount(count, taxed), taxed);
    }

    /** What each costs where so many are bought. */
    public long eachCents(int count) {
        long cents = priceCents;
        for (Selling.VolumePrice from : selling.breaks()) {
            if (count >= from.fromCount()) {
                cents = from.eachCents();
            }
        }
        return cents;
    }

    /** Between two breaks more pieces never cost less, so that the count asked for and the breaks above it are all to look at. */
    private int bestCount(int count, long taxPerMillion) {
        int best = count;
        for (Selling.VolumePrice from : selling.breaks()) {
            int more = from.fromCount();
            if (count > 0
                    && more > count
                    && more <= atHand
                    && millionths(more, taxPerMillion) < millionths(best, taxPerMillion)) {
                best = more;
            }
        }
        return best;
    }

    private long millionths(int count, long taxPerMillion) {
        return count * (eachCents(count) * (MILLION + taxPerMillion) + selling.shippingEachCents() * MILLION);
    }

    private long taxed(long taxPerMillion) {
        return selling.taxed() ? taxPerMillion : 0;
    }
}
