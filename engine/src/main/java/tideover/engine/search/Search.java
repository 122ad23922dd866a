package tideover.engine.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.proof.BusDemand;
import tideover.engine.proof.NetGains;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.RigFigures;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.wiring.Allowances;

/**
 * Screens every candidate by drawdown. Rigs that differ only in the size of their store share one series of net gains;
 * one pass over it gives the capacity that each outage needs, and so the carried share of every size. For a plain store
 * and loads whose hours do not depend on it this is not an estimate: it is what the full walk finds. Nice-to-have loads
 * that may draw on the store make it a bound from above.
 */
public final class Search {
    /** Room for rounding between the sums of the screening and those of the walk, Wh. */
    private static final double BREATH_WH = 1e-7;

    private final PlaneWeather plane;
    private final int years;
    private final int stepsPerHour;
    private final Workers workers;

    public Search(PlaneWeather plane, int years, int stepsPerHour, Workers workers) {
        this.plane = plane;
        this.years = years;
        this.stepsPerHour = stepsPerHour;
        this.workers = workers;
    }

    /** Told how far the screening is, from 0 to 1. */
    public interface Progress {
        void at(double share);
    }

    /** All rigs of the grammar over the parts, judged. */
    public Shortlist shortlist(
            List<Part> parts,
            Grammar grammar,
            List<Load> loads,
            double lowestDegC,
            Outage outage,
            Allowances allowances,
            OptionalLong budgetCents,
            Progress progress) {
        Candidates candidates = Candidates.of(parts, grammar, loads, lowestDegC, allowances, budgetCents);
        Map<Key, List<Candidates.Priced>> bySeries = new LinkedHashMap<>();
        for (Candidates.Priced one : candidates.kept()) {
            bySeries.computeIfAbsent(Key.of(one.rig()), key -> new ArrayList<>())
                    .add(one);
        }
        Map<PanelKind, Series> suns = new LinkedHashMap<>();
        List<Rated> rated = new ArrayList<>();
        int done = 0;
        for (List<Candidates.Priced> group : bySeries.values()) {
            Rig any = group.get(0).rig();
            Series sun = suns.computeIfAbsent(PanelKind.of(any.panel()), this::sunPerRatedW);
            double[] needed = neededWh(any, sun, loads, outage);
            for (Candidates.Priced one : group) {
                double share = Drawdown.shareMet(needed, one.rig().store().usableWh(), BREATH_WH);
                rated.add(new Rated(one.rig(), one.price(), share));
            }
            done++;
            progress.at((double) done / bySeries.size());
        }
        List<Rated> ranked = new ArrayList<>();
        rated.stream()
                .filter(r -> r.share() >= outage.targetShare())
                .sorted(Rated.BY_PRICE)
                .forEach(ranked::add);
        int meetCount = ranked.size();
        rated.stream()
                .filter(r -> r.share() < outage.targetShare())
                .sorted(Rated.BY_SHARE)
                .forEach(ranked::add);
        return new Shortlist(
                ranked,
                meetCount,
                candidates.looked(),
                bySeries.size(),
                candidates.rejected(),
                candidates.overBudget());
    }

    /** Capacity that each outage of the asked months needs, Wh inside the store, in rising order. */
    double[] neededWh(Rig rig, Series sunPerRatedW, List<Load> loads, Outage outage) {
        double[][] byStretch = new double[NetGains.stretches(outage, years)][];
        NetGains.visit(
                sunPerRatedW,
                years,
                RigFigures.of(rig),
                BusDemand.of(rig, loads, stepsPerHour),
                outage,
                workers,
                (stretch, sunnyWh, darkWh, firstStep, starts) -> byStretch[stretch] = Drawdown.neededWh(
                        darkWh,
                        sunnyWh,
                        firstStep,
                        starts,
                        stepsPerHour,
                        outage.panelsOutAfterHours(),
                        outage.hours(),
                        outage.chargeAtStart()));
        int count = 0;
        for (double[] stretch : byStretch) {
            count += stretch.length;
        }
        double[] all = new double[count];
        int at = 0;
        for (double[] stretch : byStretch) {
            System.arraycopy(stretch, 0, all, at, stretch.length);
            at += stretch.length;
        }
        return Drawdown.sorted(all);
    }

    private Series sunPerRatedW(PanelKind kind) {
        return kind.noctDegC() == 0
                ? Series.owning(new double[plane.planeWm2().length()])
                : plane.wattsPerRatedWatt(kind.noctDegC(), kind.powerPerK());
    }

    /** What of a panel shapes its sun; zeros stand for no panel. */
    private record PanelKind(double noctDegC, double powerPerK) {
        static PanelKind of(@Nullable Panel panel) {
            return panel == null ? new PanelKind(0, 0) : new PanelKind(panel.noctDegC(), panel.powerPerK());
        }
    }

    /** Everything but the capacity that shapes a net-gain series: two rigs with equal keys share it. */
    private record Key(
            RigFigures withoutCapacity,
            PanelKind panel,
            @Nullable InverterRating inverter,
            List<Outlet> outlets) {
        static Key of(Rig rig) {
            RigFigures figures = RigFigures.of(rig).withCapacityWh(1);
            // The walk never reaches these where they cannot bind, so that stores of any size share one series.
            if (rig.controller() == null || figures.maxChargeW() >= figures.controllerMaxW()) {
                figures = figures.withMaxChargeW(Double.MAX_VALUE);
            }
            return new Key(
                    figures.withMaxDischargeW(Double.MAX_VALUE),
                    PanelKind.of(rig.panel()),
                    rig.inverter(),
                    rig.outlets());
        }
    }
}
