package tideover.app.files;

import java.util.Optional;
import tideover.engine.why.Problem;

/** A sum of money typed beside a plan, such as {@code "400 USD"}; without letters it is in the plan's currency. */
public record SumText(long cents, Optional<Problem> problem) {
    /** @param option what the person typed it after */
    public static SumText read(String option, String typed, String currency) {
        boolean bare = typed.strip().matches("-?[0-9.]+");
        Money.Outcome outcome = bare ? Money.amount(typed, currency) : Money.read(typed);
        Money money = outcome.money();
        if (money == null) {
            return wrong(option, typed, outcome.expected(), outcome.suggestion());
        }
        return money.currency().equals(currency)
                ? new SumText(money.cents(), Optional.empty())
                : wrong(option, typed, "an amount in the plan's currency, " + currency, "");
    }

    private static SumText wrong(String option, String typed, String expected, String suggestion) {
        return new SumText(0, Optional.of(new Problem(option, typed, expected, suggestion)));
    }
}
