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
        String source) {
    public Listing {
        Require.text("id", id);
        Require.text("name", name);
        Require.atLeast(0, "priceCents", priceCents, "cents");
        Require.within(1, 1000, "atHand", atHand);
        Require.atLeast(0, "massKg", massKg, "kg");
    }

    /** What so many of it cost, in whole cents. */
    public long costCents(int count) {
        return count * priceCents;
    }
}
