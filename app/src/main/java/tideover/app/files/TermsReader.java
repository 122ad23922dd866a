package tideover.app.files;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Condition;
import tideover.engine.part.Listing;
import tideover.engine.part.Part;
import tideover.engine.part.SmallPart;
import tideover.engine.why.Basis;
import tideover.engine.wiring.Terms;

/** What a plan says of tax and of shipping by the order. */
final class TermsReader {
    private static final Range TAX_PCT = Range.from(0, 100).likely(0, 27);
    private static final double MILLIONTHS_OF_PERCENT = 10_000;
    private static final int MOST_SELLERS = 50;
    private static final int LONGEST_SELLER = 60;

    private final Reading reading;
    private final Moneys moneys;
    private final Map<String, Terms.Order> orders = new LinkedHashMap<>();
    private final Map<String, Field> sellers = new LinkedHashMap<>();
    private int taxPerMillion;
    private boolean isAsked;

    /** Reads an amount in the plan's one currency and notes it; null where it is wrong. */
    interface Moneys {
        @Nullable
        Money read(Field field, String what, String name);
    }

    TermsReader(Reading reading, Moneys moneys) {
        this.reading = reading;
        this.moneys = moneys;
    }

    void read(Field tax, Field shippingList) {
        if (tax.isPresent()) {
            tax.note("Sales tax, on prices and not on shipping", Basis.YOURS);
            taxPerMillion = taxPerMillion(tax);
        }
        if (!shippingList.isPresent()) {
            return;
        }
        isAsked = true;
        List<Field> items = shippingList.items("a list of sellers, such as - {seller: Tarnwhistle, each order: 9 USD}");
        if (items.size() > MOST_SELLERS) {
            shippingList.problem(items.size() + " sellers", "at most " + MOST_SELLERS, "");
            return;
        }
        for (Field item : items) {
            order(item);
        }
    }

    /** To the millionth, so that tax is exact to the cent. */
    private static int taxPerMillion(Field tax) {
        double millionths = 100 * MILLIONTHS_OF_PERCENT * tax.share(TAX_PCT);
        long whole = Math.round(millionths);
        if (Math.abs(millionths - whole) > 1e-6) {
            tax.problem(Reading.quoted(tax.shown()), "at most four digits after the point", "");
        }
        return (int) whole;
    }

    private void order(Field item) {
        item.keys("seller", "each order", "free from");
        Field sellerField = item.child("seller");
        String seller = sellerField
                .text("who sells, as the parts file names them", LONGEST_SELLER)
                .replaceAll("\\s+", " ");
        String of = seller.isEmpty() ? "" : " from " + seller;
        Money each = moneys.read(item.child("each order"), "what shipping an order costs", "Shipping of an order" + of);
        Field freeField = item.child("free from");
        Money free = freeField.isPresent()
                ? moneys.read(
                        freeField,
                        "the price of the goods from which on shipping is free",
                        "Goods" + of + " shipped free from")
                : null;
        if (seller.isEmpty()) {
            return;
        }
        Field earlier = sellers.putIfAbsent(seller, sellerField);
        if (earlier != null) {
            sellerField.problem(
                    Reading.quoted(seller) + " a second time",
                    "each seller once",
                    "The first stands in line " + earlier.line() + ".");
        } else if (each != null) {
            orders.put(
                    seller,
                    new Terms.Order(each.cents(), free == null ? OptionalLong.empty() : OptionalLong.of(free.cents())));
        }
    }

    /** A slip in a name would ship for nothing in silence. */
    void checkSellers(List<Part> parts, List<SmallPart> smallParts) {
        if (!isAsked) {
            return;
        }
        Map<String, Listing> selling = new HashMap<>();
        Set<String> names = new TreeSet<>();
        Stream.concat(parts.stream().map(Part::listing), smallParts.stream().map(SmallPart::listing))
                .filter(listing -> !listing.selling().seller().isEmpty())
                .forEach(listing -> {
                    names.add(listing.selling().seller());
                    if (listing.condition() != Condition.OWNED) {
                        selling.putIfAbsent(listing.selling().seller(), listing);
                    }
                });
        sellers.forEach((seller, field) -> {
            if (!names.contains(seller)) {
                field.caution(Reading.quoted(seller) + " sells none of the parts." + nearest(seller, names));
            }
        });
        for (String name : names) {
            Listing first = selling.get(name);
            if (first != null && !sellers.containsKey(name)) {
                reading.caution(first.source() + " seller: nothing is told of what " + Reading.quoted(name)
                        + " asks for shipping, so nothing is counted." + nearest(name, sellers.keySet()));
            }
        }
    }

    private static String nearest(String name, Set<String> known) {
        return Nearest.to(name, known)
                .map(near -> " Is it " + Reading.quoted(near) + "?")
                .orElse("");
    }

    Terms terms() {
        return new Terms(taxPerMillion, orders);
    }
}
