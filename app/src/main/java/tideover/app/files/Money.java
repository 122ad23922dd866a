package tideover.app.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A price: whole cents, exactly.
 *
 * @param currency three letters of ISO 4217
 */
record Money(long cents, String currency) {
    static final long MOST_CENTS = 1_000_000_000L;
    private static final Pattern AMOUNT_THEN_CURRENCY =
            Pattern.compile("(-?[0-9]{1,12}(?:\\.[0-9]{1,20})?)\\s*([A-Za-z]{3})");
    private static final Pattern PLAIN_AMOUNT = Pattern.compile("-?[0-9]{1,12}(?:\\.[0-9]{1,20})?");
    private static final Pattern SIGN = Pattern.compile("(?:US)?\\$\\s*([0-9.]+)|([0-9.]+)\\s*\\$");

    /** What a text turned out to be: money, or what is wrong with it. */
    record Outcome(@Nullable Money money, String expected, String suggestion) {}

    /** Such as {@code 900 USD}. */
    static Outcome read(String typed) {
        String text = Quantities.tidy(typed);
        Matcher match = AMOUNT_THEN_CURRENCY.matcher(text);
        if (!match.matches()) {
            return wrong(suggestionFor(text));
        }
        String currency = match.group(2).toUpperCase(Locale.ROOT);
        if (!isCurrency(currency)) {
            return new Outcome(null, "an amount and a currency in three letters, such as 900 USD", "");
        }
        return cents(match.group(1), currency);
    }

    /** A bare amount whose currency stands elsewhere. */
    static Outcome amount(String typed, String currency) {
        String text = Quantities.tidy(typed);
        if (!PLAIN_AMOUNT.matcher(text).matches()) {
            Quantities.Outcome why = Quantities.bareNumber(text, "an amount in plain digits, such as 249.50");
            Matcher sign = SIGN.matcher(text);
            boolean dollars = sign.matches();
            return new Outcome(
                    null,
                    "an amount in plain digits, such as 249.50",
                    dollars ? "Write the number alone; the currency has a column of its own." : why.suggestion());
        }
        return cents(text, currency);
    }

    static boolean isCurrency(String letters) {
        try {
            return Currency.getInstance(letters) != null;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** Such as "249.50 USD". */
    String words() {
        return plain() + " " + currency;
    }

    /** Such as "249.50". */
    String plain() {
        return BigDecimal.valueOf(cents, 2).toPlainString();
    }

    private static Outcome cents(String amount, String currency) {
        BigDecimal exact = new BigDecimal(amount).movePointRight(2);
        if (exact.signum() < 0) {
            return new Outcome(null, "an amount of 0 or more", "");
        }
        BigDecimal whole = exact.setScale(0, RoundingMode.DOWN);
        if (whole.compareTo(exact) != 0) {
            return new Outcome(null, "whole cents, at most two digits after the point", "");
        }
        if (whole.compareTo(BigDecimal.valueOf(MOST_CENTS)) > 0) {
            return new Outcome(null, "an amount of at most ten million", "");
        }
        return new Outcome(new Money(whole.longValueExact(), currency), "", "");
    }

    private static Outcome wrong(String suggestion) {
        return new Outcome(null, "an amount and its currency, such as 900 USD", suggestion);
    }

    private static String suggestionFor(String text) {
        Matcher sign = SIGN.matcher(text);
        if (sign.matches()) {
            return "Write " + (sign.group(1) != null ? sign.group(1) : sign.group(2)) + " USD.";
        }
        if (PLAIN_AMOUNT.matcher(text).matches()) {
            return "Write " + text + " USD, or your own currency's three letters.";
        }
        Quantities.Outcome number = Quantities.bareNumber(text, "");
        return number.suggestion().startsWith("Write the number alone") ? "" : number.suggestion();
    }
}
