package tideover.engine.wiring;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import tideover.engine.load.Load;
import tideover.engine.part.Condition;
import tideover.engine.part.Listing;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * What a rig costs in the end, in whole cents.
 *
 * @param partsCents      the main parts at their listed prices, as many as are bought, with the fuel that an engine among them
 *                        burns in one outage
 * @param smallPartsCents wire, fuses and all that belongs to them: counted, or the household's allowance for this way of building
 * @param toolsCents      what is bought once and left over; 0 where an allowance stands for small parts and tools together
 * @param hardWiredCents  the allowance for joining the hard-wired loads that this rig serves
 * @param taxCents        sales tax on what is taxed, rounded once
 * @param shippingCents   by the piece and by the order
 */
public record Price(
        long partsCents,
        long smallPartsCents,
        long toolsCents,
        long hardWiredCents,
        long taxCents,
        long shippingCents) {
    /** Where nothing is taxed or shipped. */
    public Price(long partsCents, long smallPartsCents, long toolsCents, long hardWiredCents) {
        this(partsCents, smallPartsCents, toolsCents, hardWiredCents, 0, 0);
    }

    public static Price of(Build build, List<Load> loads, Allowances allowances, Terms terms) {
        Rig rig = build.rig();
        Basket basket = new Basket(terms);
        long parts = build.fuelCents();
        for (Chosen chosen : rig.chosen()) {
            parts += basket.take(chosen.part().listing(), chosen.count());
        }
        long joining = allowances.hardWiredCents() * hardWiredServed(rig, loads);
        if (!build.counted()) {
            return new Price(parts, allowed(rig, allowances), 0, joining, basket.taxCents(), basket.shippingCents());
        }
        for (PartsList.Line line : build.partsList().lines()) {
            basket.take(line.part().listing(), line.bought());
        }
        return new Price(
                parts,
                build.partsList().smallPartsCents(),
                build.partsList().toolsCents(),
                joining,
                basket.taxCents(),
                basket.shippingCents());
    }

    /**
     * What a rig costs where another that it contains was bought before. Main parts: only what is more than was bought then, at the
     * price of so many. Small parts and tools line by line: what was bought then and is of the same kind serves again, wherever in
     * the rig. Allowances: what this way of building takes more than that one, no less than nothing. Tax and shipping: of what is
     * added alone, as an order of its own.
     */
    public static Price ofAddition(Build build, Build before, List<Load> loads, Allowances allowances, Terms terms) {
        Rig rig = build.rig();
        Basket basket = new Basket(terms);
        Map<String, Integer> mainBefore = new TreeMap<>();
        for (Chosen chosen : before.rig().chosen()) {
            Listing listing = chosen.part().listing();
            mainBefore.merge(listing.id(), listing.boughtFor(chosen.count()), Integer::sum);
        }
        long parts = Math.max(0, build.fuelCents() - before.fuelCents());
        for (Chosen chosen : rig.chosen()) {
            Listing listing = chosen.part().listing();
            int more = chosen.count() - mainBefore.getOrDefault(listing.id(), 0);
            parts += more > 0 ? basket.take(listing, more) : 0;
        }
        int joined = hardWiredServed(rig, loads) - hardWiredServed(before.rig(), loads);
        long joining = allowances.hardWiredCents() * Math.max(0, joined);
        if (!build.counted()) {
            long allowed = Math.max(0, allowed(rig, allowances) - allowed(before.rig(), allowances));
            return new Price(parts, allowed, 0, joining, basket.taxCents(), basket.shippingCents());
        }
        PartsList added = build.partsList().beyond(before.partsList());
        for (PartsList.Line line : added.lines()) {
            basket.take(line.part().listing(), line.bought());
        }
        return new Price(
                parts, added.smallPartsCents(), added.toolsCents(), joining, basket.taxCents(), basket.shippingCents());
    }

    /**
     * No more than the total of any rig that has at least these main parts, on these terms. Every term is the least it can come
     * to: of each part the count, this or a greater one, that is cheapest with its tax; of a seller's shipping nothing where
     * a fuller order may be free of it; and the sum is rounded as the tax is.
     *
     * @param main                     main parts, each part once
     * @param smallPartsAndToolsCents  least of these, without tax and shipping; or the allowance
     * @param hardWiredCents           least of this allowance
     */
    public static long atLeastCents(List<Chosen> main, long smallPartsAndToolsCents, long hardWiredCents, Terms terms) {
        long millionths = 0;
        long orders = 0;
        TreeSet<String> sellers = new TreeSet<>();
        for (Chosen chosen : main) {
            Listing listing = chosen.part().listing();
            millionths += listing.leastWithTaxMillionths(chosen.count(), terms.taxPerMillion());
            Terms.Order order = terms.order(listing.selling().seller());
            if (order != null
                    && isShipped(listing, chosen.count())
                    && sellers.add(listing.selling().seller())) {
                orders += order.leastCents();
            }
        }
        return Terms.wholeCents(millionths) + orders + smallPartsAndToolsCents + hardWiredCents;
    }

    /** What is owned lies at home. */
    private static boolean isShipped(Listing listing, int count) {
        return count > 0 && listing.condition() != Condition.OWNED;
    }

    /** All that is bought, for what only the whole can tell. */
    private static final class Basket {
        private final Terms terms;
        private final Map<String, Long> goodsBySeller = new TreeMap<>();
        private long taxedCents;
        private long shippingCents;

        Basket(Terms terms) {
            this.terms = terms;
        }

        /** The price of the goods alone. */
        long take(Listing listing, int count) {
            long goods = listing.goodsCents(count);
            if (listing.selling().taxed()) {
                taxedCents += goods;
            }
            shippingCents += listing.shippingCents(count);
            String seller = listing.selling().seller();
            if (terms.order(seller) != null && isShipped(listing, count)) {
                goodsBySeller.merge(seller, goods, Long::sum);
            }
            return goods;
        }

        long taxCents() {
            return terms.taxCents(taxedCents);
        }

        long shippingCents() {
            long cents = shippingCents;
            for (Map.Entry<String, Long> order : goodsBySeller.entrySet()) {
                cents += Objects.requireNonNull(terms.order(order.getKey())).cents(order.getValue());
            }
            return cents;
        }
    }

    /** Aids by themselves, with what belongs to them. */
    static Price withoutRig(List<Chosen> aids, PartsList list, Terms terms) {
        Basket basket = new Basket(terms);
        long parts = 0;
        for (Chosen chosen : aids) {
            parts += basket.take(chosen.part().listing(), chosen.count());
        }
        for (PartsList.Line line : list.lines()) {
            basket.take(line.part().listing(), line.bought());
        }
        return new Price(
                parts, list.smallPartsCents(), list.toolsCents(), 0, basket.taxCents(), basket.shippingCents());
    }

    private static long allowed(Rig rig, Allowances allowances) {
        return switch (rig.route()) {
            case READY_BOX -> allowances.readyBoxCents();
            case ENCLOSURE -> allowances.enclosureCents();
            case SEPARATE_PARTS -> allowances.separatePartsCents();
        };
    }

    /** Those that find an outlet: what is nice to have and finds none goes without, and is not joined. */
    private static int hardWiredServed(Rig rig, List<Load> loads) {
        List<Load> hardWired =
                loads.stream().filter(load -> load.nature().hardWired()).toList();
        if (hardWired.isEmpty()) {
            return 0;
        }
        return (int) Sockets.of(rig, hardWired).plugged().stream()
                .filter(plugged -> plugged.throughInverter(rig) || plugged.direct())
                .count();
    }

    /**
     * Small parts, tools and joining, without the tax and shipping of any of them: with {@link Listing#costCents} of the main parts
     * no more than the total, for one more part may make an order free of shipping.
     */
    public long besidePartsCents() {
        return smallPartsCents + toolsCents + hardWiredCents;
    }

    public long totalCents() {
        return partsCents + besidePartsCents() + taxCents + shippingCents;
    }
}
