package tideover.engine.answer;

import org.jspecify.annotations.Nullable;
import tideover.engine.battery.Life;
import tideover.engine.part.Battery;
import tideover.engine.part.Condition;
import tideover.engine.part.RatedStore;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;

/**
 * What a rig's batteries cost as the years go by, at the price they were bought for and with the life that is usual for
 * their chemistry (common practice, no source: {@link Life}). Standing by, they age by the calendar; used every day to
 * their depth, by the calendar and by cycles together. Energy for charging is left out.
 *
 * <p>Not told for batteries known by their label alone, whose chemistry nobody knows, for those inside a ready-made box,
 * whose price is not known by itself, nor for those that cost nothing.
 *
 * @param priceCents          of all batteries, without tax and shipping
 * @param meanDegC            temperature of their room, mean of the weather years
 * @param kwhPerCycle         what they give from full down to their depth, at nominal volts, by what the label is worth
 * @param standbyYears        charged and hardly used
 * @param centsPerStandbyYear price over those years
 * @param dailyYears          used to their depth every day
 * @param centsPerKwh         price over all that they give in those years
 * @param allNew              whether all are new; one that is not has lived part of these years already
 */
public record StandbyCost(
        long priceCents,
        double meanDegC,
        double kwhPerCycle,
        double standbyYears,
        double centsPerStandbyYear,
        double dailyYears,
        double centsPerKwh,
        boolean allNew) {
    private static final double DAYS_A_YEAR = 365;

    static @Nullable StandbyCost of(Rig rig, double meanDegC) {
        long priceCents = 0;
        boolean allNew = true;
        for (Chosen chosen : rig.chosen()) {
            if (chosen.part() instanceof Battery battery) {
                priceCents += battery.listing().goodsCents(chosen.count());
                allNew &= battery.listing().condition() == Condition.NEW;
            }
        }
        if (priceCents == 0 || !(rig.store() instanceof RatedStore bank)) {
            return null;
        }
        Life life = Life.of(bank.chemistry());
        double kwhPerCycle = bank.usableWh() / 1000;
        return new StandbyCost(
                priceCents,
                meanDegC,
                kwhPerCycle,
                life.calendarYears(meanDegC),
                life.centsPerStandbyYear(priceCents, meanDegC),
                life.years(DAYS_A_YEAR, bank.depth(), meanDegC),
                life.centsPerKwh(priceCents, kwhPerCycle, DAYS_A_YEAR, bank.depth(), meanDegC),
                allNew);
    }
}
