package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Condition;
import tideover.engine.part.Selling;

/** Who sells a part and on what terms, and where that was read. */
final class SellingColumns {
    static final List<String> ALL = List.of("seller", "source", "prices", "shipping_each", "taxed");

    private static final String EXPECTED = "volume prices, such as from 4 at 20.00; from 10 at 18.50";
    private static final Pattern FROM = Pattern.compile("from\\s+([0-9]{1,6})\\s+at\\s+(\\S.*)");
    private static final int MOST_BREAKS = 20;
    private static final int LONGEST_SELLER = 60;
    private static final int LONGEST_SOURCE = 200;

    private SellingColumns() {}

    /** Null where something is wrong, or where the price is, against which the others are held. */
    static @Nullable Selling read(Row row, @Nullable Condition condition, @Nullable Money price) {
        int before = row.flaws();
        String seller = row.has("seller") ? row.text("seller", "who sells it", LONGEST_SELLER) : "";
        String readAt = row.has("source") ? row.text("source", "where the price was read", LONGEST_SOURCE) : "";
        List<Selling.VolumePrice> breaks = breaks(row, price);
        long shippingCents = 0;
        if (row.has("shipping_each")) {
            Money shipping = amount(row, "shipping_each", row.cell("shipping_each"), price, "");
            if (shipping != null) {
                shippingCents = shipping.cents();
                row.settle("shipping_each", shipping.plain());
            }
        }
        String taxed = row.has("taxed")
                ? row.choice("taxed", "whether sales tax is added to its price", List.of("yes", "no"))
                : "yes";
        if (condition == Condition.OWNED && (!breaks.isEmpty() || shippingCents > 0)) {
            String column = breaks.isEmpty() ? "shipping_each" : "prices";
            row.problem(column, Reading.quoted(row.cell(column)), "nothing, for what is owned costs nothing more", "");
        }
        return row.flaws() > before || price == null || taxed == null
                ? null
                : new Selling(seller, breaks, shippingCents, taxed.equals("yes"), readAt);
    }

    private static List<Selling.VolumePrice> breaks(Row row, @Nullable Money price) {
        List<Selling.VolumePrice> breaks = new ArrayList<>();
        if (!row.has("prices")) {
            return breaks;
        }
        String[] typed = row.cell("prices").replaceAll("\\s+", " ").split(";", -1);
        if (typed.length > MOST_BREAKS) {
            row.problem("prices", typed.length + " volume prices", "at most " + MOST_BREAKS, "");
            return breaks;
        }
        int count = 1;
        long cents = price == null ? Long.MAX_VALUE : price.cents();
        for (int i = 0; i < typed.length; i++) {
            String one = typed[i].strip();
            if (one.isEmpty() && i == typed.length - 1 && i > 0) {
                continue; // a semicolon at the end does no harm
            }
            Matcher match = FROM.matcher(one);
            if (!match.matches()) {
                row.problem("prices", Reading.quoted(one), EXPECTED, "");
                continue;
            }
            Money each = amount(row, "prices", match.group(2), price, one);
            int from = Integer.parseInt(match.group(1));
            if (from <= count || from > 1000) {
                row.problem(
                        "prices",
                        Reading.quoted(one),
                        from > 1000 ? "at most 1000 pieces" : "more pieces than " + count + ", the lesser count first",
                        "");
            } else if (each != null && each.cents() >= cents) {
                row.problem(
                        "prices",
                        Reading.quoted(one),
                        "less than the price of fewer pieces, " + new Money(cents, each.currency()).words(),
                        "");
            } else if (each != null) {
                breaks.add(new Selling.VolumePrice(from, each.cents()));
                count = from;
                cents = each.cents();
            }
        }
        row.settle("prices", words(breaks));
        return breaks;
    }

    private static String words(List<Selling.VolumePrice> breaks) {
        return breaks.stream()
                .map(one -> "from " + one.fromCount() + " at " + new Money(one.eachCents(), "").plain())
                .collect(Collectors.joining("; "));
    }

    /** @param quoted what to show of a cell with several amounts; empty where the amount is all of it */
    private static @Nullable Money amount(Row row, String column, String typed, @Nullable Money price, String quoted) {
        String shown = quoted.isEmpty() ? typed : quoted;
        Money.Outcome whole = row.isOfKeys() ? Money.read(typed) : new Money.Outcome(null, "", "");
        Money.Outcome outcome =
                whole.money() == null ? Money.amount(typed, price == null ? "" : price.currency()) : whole;
        Money money = outcome.money();
        if (money == null) {
            row.problem(
                    column,
                    Reading.quoted(shown),
                    quoted.isEmpty() ? outcome.expected() : EXPECTED,
                    outcome.suggestion());
        } else if (price != null && !money.currency().equals(price.currency())) {
            row.problem(column, Reading.quoted(shown), "the currency of its price, " + price.currency(), "");
            return null;
        }
        return money;
    }
}
