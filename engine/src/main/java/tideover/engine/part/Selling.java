package tideover.engine.part;

import java.util.List;
import tideover.engine.quantity.Require;

/**
 * On what terms a part is sold beside its price.
 *
 * @param seller            who sells it; empty where nobody said
 * @param breaks            what each piece costs from so many on, more pieces and a lower price from one to the next; all
 *                          pieces are then had at that price, not only those beyond
 * @param shippingEachCents for every piece, whole cents, beside what the seller asks for an order
 * @param taxed             whether sales tax is added to the price
 * @param readAt            where the price was read, in words; may be empty
 */
public record Selling(String seller, List<VolumePrice> breaks, long shippingEachCents, boolean taxed, String readAt) {
    /** Nothing but the price, to which tax is added where there is any. */
    public static final Selling PLAIN = new Selling("", List.of(), 0, true, "");

    /** What each piece costs where at least so many are bought. */
    public record VolumePrice(int fromCount, long eachCents) {
        public VolumePrice {
            Require.within(2, 1000, "fromCount", fromCount);
            Require.atLeast(0, "eachCents", eachCents, "cents");
        }
    }

    public Selling {
        breaks = List.copyOf(breaks);
        Require.atLeast(0, "shippingEachCents", shippingEachCents, "cents");
        for (int i = 1; i < breaks.size(); i++) {
            if (breaks.get(i).fromCount() <= breaks.get(i - 1).fromCount()
                    || breaks.get(i).eachCents() >= breaks.get(i - 1).eachCents()) {
                throw new IllegalArgumentException("breaks must rise in count and fall in price: " + breaks);
            }
        }
    }
}
