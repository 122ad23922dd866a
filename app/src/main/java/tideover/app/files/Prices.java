package tideover.app.files;

import org.jspecify.annotations.Nullable;
import tideover.engine.part.Condition;

/** Holds all prices of a file to one currency, the plan's. */
final class Prices {
    private @Nullable String currency;
    private final boolean plansOwn;
    private @Nullable String firstOther;
    private String firstOtherAt = "";
    private int others;

    Prices(@Nullable String plansCurrency) {
        this.currency = plansCurrency;
        this.plansOwn = plansCurrency != null;
    }

    @Nullable
    Money read(Row row, @Nullable Condition condition) {
        Money whole = written(row);
        String letters = whole != null && !row.has("currency")
                ? whole.currency()
                : row.text("currency", "the currency in three letters, such as USD", 20);
        if (!letters.isEmpty() && !Money.isCurrency(letters)) {
            row.problem("currency", Reading.quoted(letters), "a currency in three letters, such as USD", "");
            letters = "";
        }
        if (!letters.isEmpty()) {
            if (currency == null) {
                currency = letters;
            } else if (!currency.equals(letters) && others++ == 0) {
                firstOther = letters;
                firstOtherAt = row.source();
            }
        }
        String typed = row.cell("price");
        if (typed.isEmpty()) {
            row.tellEmpty("price", "the price, such as 249.50");
            return null;
        }
        Money.Outcome outcome = whole == null ? Money.amount(typed, letters) : Money.read(typed);
        Money price = outcome.money();
        if (price == null) {
            row.problem("price", Reading.quoted(typed), outcome.expected(), outcome.suggestion());
            return null;
        }
        if (condition == Condition.OWNED && price.cents() != 0) {
            row.problem("price", Reading.quoted(typed), "0, for what is owned costs nothing more", "");
        } else if (condition != null && condition != Condition.OWNED && price.cents() == 0) {
            row.caution("price", "a price of 0 for a part that is not owned.");
        } else if (price.cents() > 2_000_000) {
            row.caution("price", price.words() + " is taken, but is unlikely for one part.");
        }
        if (whole != null && !letters.isEmpty() && !letters.equals(whole.currency())) {
            row.problem("price", Reading.quoted(typed), "the currency of its own part, " + letters, "");
            return null;
        }
        return letters.isEmpty() ? null : price;
    }

    /** A price with its currency, as a list of keys may have it; null where it has none. */
    private static @Nullable Money written(Row row) {
        return row.isOfKeys() ? Money.read(row.cell("price")).money() : null;
    }

    void tell(Reading reading) {
        if (firstOther != null) {
            String more = others > 1 ? ", and " + (others - 1) + " more rows in another currency" : "";
            reading.problem(
                    firstOtherAt + " currency",
                    "\"" + firstOther + "\"" + more,
                    currency + (plansOwn ? ", the plan's currency" : ", as in the rows before") + ", for every price",
                    "");
        }
    }
}
