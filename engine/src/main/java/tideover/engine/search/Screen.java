package tideover.engine.search;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.PlainStore;
import tideover.engine.proof.ArraySun;
import tideover.engine.proof.BusDemand;
import tideover.engine.proof.Drawdown;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.NetGains;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.RigFigures;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Rig;

/**
 * The drawdown screening of one rig by itself, for whoever asks about few: the share of outages that it carries at most, and exactly
 * so for a plain store fed by nothing but the sun under loads that follow the clock. The same sums as {@link Search}; for
 * several threads at once.
 */
public final class Screen {
    private final PlaneWeather plane;
    private final double noonHour;
    private final int stepsPerHour;
    private final Outage outage;
    private final Outage screened;
    private final NetGains.Starts starts;
    private final KeptBound kept;
    private final List<Load> byTheClock;
    private final Map<ArraySun, Series> suns = new ConcurrentHashMap<>();

    /**
     * @param noonHour clock hour of solar noon at the place
     * @param kept     what the loads that switch themselves need at least
     */
    public Screen(
            PlaneWeather plane,
            int years,
            double noonHour,
            int stepsPerHour,
            Outage outage,
            KeptBound kept,
            List<Load> loads) {
        this.plane = plane;
        this.noonHour = noonHour;
        this.stepsPerHour = stepsPerHour;
        this.outage = outage;
        this.kept = kept;
        this.byTheClock = loads.stream().filter(load -> !load.keeps()).toList();
        Outage first = outage.first(Math.max(1, outage.unhelpedHours()));
        this.screened = kept.isNothing() ? first : first.fullAtStart();
        this.starts = NetGains.Starts.all(screened, years);
    }

    /** Whether {@link #atMost} is the share itself; where nice-to-have loads may draw on the store it is still a bound. */
    public boolean isExact(Rig rig) {
        return rig.store() instanceof PlainStore && !rig.isHelped(outage) && kept.isNothing() && outage.keepBack() == 1;
    }

    /** The share that the rig carries at most, 0..1. */
    public double atMost(Rig rig) {
        if (outage.unhelpedHours() == 0) {
            return 1;
        }
        RigFigures figures = RigFigures.of(rig);
        if (!kept.isNothing()) {
            figures = figures.pooledWith(kept.storeWh());
        }
        double capacityWh = figures.capacityWh();
        CapacityCounts counts = new CapacityCounts(new double[] {capacityWh});
        NetGains.visit(
                suns.computeIfAbsent(ArraySun.of(rig), kind -> kind.wattsPerRatedW(plane)),
                starts,
                figures.withCapacityWh(1).withMaxDischargeW(Double.MAX_VALUE),
                BusDemand.of(rig, rig.served(byTheClock), noonHour, stepsPerHour)
                        .essentialLessEngineW(rig, outage),
                kept.needW(),
                stepsPerHour,
                (sunnyWh, darkDayWh, some) -> counts.add(Drawdown.neededWh(
                        darkDayWh,
                        sunnyWh,
                        some,
                        stepsPerHour,
                        screened.panelsOutAfterHours(),
                        screened.hours(),
                        screened.chargeAtStart())));
        return counts.share(capacityWh);
    }
}
