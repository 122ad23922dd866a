package tideover.engine.wiring;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;

/**
 * What is paid to the state and for the way to the door, beside the prices of the parts file.
 *
 * <p>Tax is taken on the price of every part that is taxed, not on shipping: whether shipping is taxed differs from place to
 * place. It is rounded once on the whole, half a cent up, as the Streamlined Sales and Use Tax Agreement lets sellers of its member
 * states do (section 324, from memory). Allowances are the household's own guess of what is paid in the end, and nothing is added to them.
 *
 * @param taxPerMillion sales tax, in millionths of the price
 * @param orders        what a seller asks for the shipping of an order, by the seller's name; all that is bought from one seller is one
 *                      order, and a seller who is not among them asks nothing
 */
public record Terms(int taxPerMillion, Map<String, Order> orders) {
    /** Prices are final. */
    public static final Terms NONE = new Terms(0, Map.of());

    private static final int MILLION = 1_000_000;

    /**
     * A seller's shipping.
     *
     * @param eachCents     for an order, whatever is in it
     * @param freeFromCents price of the goods, without tax, from which on it is free; empty where it never is
     */
    public record Order(long eachCents, OptionalLong freeFromCents) {
        public Order {
            Require.atLeast(0, "eachCents", eachCents, "cents");
        }

        long cents(long goodsCents) {
            return freeFromCents.isPresent() && goodsCents >= freeFromCents.getAsLong() ? 0 : eachCents;
        }

        /** Of an order to which anything may still be added. */
        long leastCents() {
            return freeFromCents.isPresent() ? 0 : eachCents;
        }
    }

    public Terms {
        Require.within(0, MILLION, "taxPerMillion", taxPerMillion);
        orders = Collections.unmodifiableMap(new TreeMap<>(orders));
    }

    /** Sales tax on a sum, in whole cents, half a cent rounded up; exact for any sum. */
    long taxCents(long taxedCents) {
        long millions = taxedCents / MILLION;
        return millions * taxPerMillion + wholeCents(taxedCents % MILLION * taxPerMillion);
    }

    static long wholeCents(long millionths) {
        return (millionths + MILLION / 2) / MILLION;
    }

    @Nullable
    Order order(String seller) {
        return orders.get(seller);
    }
}
