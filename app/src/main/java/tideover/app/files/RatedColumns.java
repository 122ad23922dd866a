package tideover.app.files;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.CapacityRating;
import tideover.engine.battery.Chemistry;
import tideover.engine.battery.TwoWells;
import tideover.engine.part.LabelWorth;
import tideover.engine.part.Listing;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Store;
import tideover.engine.part.Surge;
import tideover.engine.why.Stated;

/** What a data sheet says of a battery, and what is known of the one at hand. */
final class RatedColumns {
    static final List<String> ALL = List.of(
            "chemistry",
            "rated_ah",
            "rated_hours",
            "fast_ah",
            "fast_hours",
            "inner_mohm",
            "surge_a",
            "surge_a_s",
            "cut_off_v",
            "cold_lock_out",
            "heater_w",
            "heater_holds_c",
            "depth_pct",
            "measured_pct",
            "maker_standing");

    /** Hours of a rating that states none. Common practice, no source. */
    private static final double USUAL_HOURS = 20;

    private static final double MOST_LEAD_DEPTH = 0.8;

    /** Nominal volts further off a whole number of cells are likely another chemistry's. */
    private static final double OFF_CELLS = 0.05;

    /** Inner resistance so many times the chemistry's usual, or so many times less, is likely a slip. */
    private static final double OFF_OHM = 5;

    /** Two ratings that no kinetics brings closer than this do not belong together. */
    private static final double OFF_RATINGS = 0.02;

    private final Row row;
    private final Listing listing;
    private final @Nullable Chemistry chemistry;
    private final double ratedAh;
    private final double ratedHours;
    private final boolean hasFast;
    private final double fastAh;
    private final double fastHours;
    private final double innerMohm;
    private final boolean hasSurgeSeconds;
    private final double surgeA;
    private final double surgeSeconds;
    private final double cutOffV;
    private final Stated coldLockOut;
    private final boolean hasHeater;
    private final double heaterW;
    private final double heaterHoldsDegC;
    private final double depthPct;
    private final double measuredPct;
    private final boolean makerKnown;

    RatedColumns(Row row, Listing listing) {
        this.row = row;
        this.listing = listing;
        chemistry = ChemistryText.one(row, "chemistry");
        ratedAh = row.number(
                "rated_ah",
                "the charge on its label",
                "Ah",
                Range.above(0, 100_000).likely(1, 2000));
        ratedHours = row.has("rated_hours")
                ? row.number(
                        "rated_hours",
                        "the hours of that rating",
                        "h",
                        Range.above(0, 240).likely(1, 100))
                : USUAL_HOURS;
        hasFast = row.hasAny(List.of("fast_ah", "fast_hours"));
        fastAh = row.numberWith(hasFast, "fast_ah", "the charge when emptied faster", "Ah", Range.above(0, 100_000));
        fastHours = row.numberWith(hasFast, "fast_hours", "the hours of that faster rating", "h", Range.above(0, 240));
        innerMohm = row.numberIfAny("inner_mohm", "its inner resistance", "mohm", Range.above(0, 10_000));
        hasSurgeSeconds = row.has("surge_a_s");
        surgeA =
                row.numberWith(hasSurgeSeconds, "surge_a", "the current it gives for a moment", "A", StoreColumns.AMPS);
        surgeSeconds = row.numberIfAny(
                "surge_a_s", "how long it gives that", "s", Range.above(0, 3600).likely(0.05, 60));
        cutOffV = row.numberIfAny("cut_off_v", "volts at which it lets go", "V", Range.above(0, 1000));
        coldLockOut = row.stated("cold_lock_out", "whether it keeps charge out below freezing");
        hasHeater = row.hasAny(List.of("heater_w", "heater_holds_c"));
        heaterW = row.numberWith(
                hasHeater,
                "heater_w",
                "the watts of its heater",
                "W",
                Range.above(0, 5000).likely(3, 300));
        heaterHoldsDegC = row.numberWith(
                hasHeater,
                "heater_holds_c",
                "the temperature its heater holds",
                "degC",
                Range.from(-20, 30).likely(0, 15));
        depthPct = row.numberIfAny(
                "depth_pct",
                "the share of it you are willing to use",
                "%",
                Range.from(5, 100).likely(20, 100));
        measuredPct = row.numberIfAny(
                "measured_pct",
                "the share of its label found by a full discharge",
                "%",
                Range.from(5, 120).likely(30, 110));
        makerKnown = makerKnown(row);
    }

    private static boolean makerKnown(Row row) {
        String standing = row.has("maker_standing")
                ? row.choice(
                        "maker_standing", "whether its maker's labels are known to hold", List.of("known", "unknown"))
                : null;
        return "known".equals(standing);
    }

    private double depth() {
        return Double.isNaN(depthPct) && chemistry != null ? chemistry.traits().depthUsual() : depthPct / 100;
    }

    /** Holds its figures against each other and against the shared ones; any may be NaN. */
    void check(double nominalV, double maxDischargeA) {
        checkRatings();
        if (surgeA < maxDischargeA) {
            row.problem(
                    "surge_a",
                    Range.shown(surgeA, "A"),
                    "at least the " + Range.shown(maxDischargeA, "A") + " of max_discharge_a",
                    "");
        }
        if (cutOffV >= nominalV) {
            row.problem(
                    "cut_off_v",
                    Range.shown(cutOffV, "V"),
                    "less than the " + Range.shown(nominalV, "V") + " of nominal_v",
                    "");
        } else if (cutOffV < 0.6 * nominalV) {
            row.caution(
                    "cut_off_v",
                    Range.shown(cutOffV, "V") + " is taken, but is unlikely to spare a battery of "
                            + Range.shown(nominalV, "V") + ".");
        }
        if (listing.massKg() == 0) {
            row.problem(
                    "mass_kg",
                    "0 kg",
                    "the mass of a rated battery, which decides how fast it takes the room's temperature",
                    "");
        }
        if (chemistry != null) {
            checkChemistry(chemistry, nominalV);
        }
    }

    private void checkRatings() {
        boolean slower = fastHours >= ratedHours;
        if (slower) {
            row.problem(
                    "fast_hours",
                    Range.shown(fastHours, "h"),
                    "fewer than the " + Range.shown(ratedHours, "h") + " of the other rating",
                    "");
        }
        if (fastAh > ratedAh) {
            row.problem(
                    "fast_ah",
                    Range.shown(fastAh, "Ah"),
                    "at most the " + Range.shown(ratedAh, "Ah") + " of rated_ah",
                    "");
        } else if (!slower && fastAh / fastHours <= ratedAh / ratedHours) {
            row.problem(
                    "fast_ah",
                    Range.shown(fastAh, "Ah") + " in " + Range.shown(fastHours, "h"),
                    "more current than " + Range.shown(ratedAh, "Ah") + " in " + Range.shown(ratedHours, "h"),
                    "");
        }
    }

    private void checkChemistry(Chemistry chemistry, double nominalV) {
        double cellV = chemistry.traits().cellV();
        if (nominalV < cellV / 2) {
            row.problem(
                    "nominal_v",
                    Range.shown(nominalV, "V"),
                    "at least about the " + Range.shown(cellV, "V") + " of one cell, " + chemistry.words(),
                    "");
            return;
        }
        if (nominalV > 0) {
            int cells = chemistry.traits().cells(nominalV);
            if (Math.abs(cells * cellV - nominalV) > OFF_CELLS * nominalV) {
                row.caution(
                        "nominal_v",
                        Range.shown(nominalV, "V") + " is taken as " + cells + " cells, "
                                + Range.shown(cells * cellV, "V") + " for " + chemistry.words() + ".");
            }
            double usualMohm = ratedAh > 0 ? 1000 * chemistry.traits().innerOhm(nominalV, ratedAh) : Double.NaN;
            if (innerMohm > OFF_OHM * usualMohm || innerMohm < usualMohm / OFF_OHM) {
                row.caution(
                        "inner_mohm",
                        String.format(
                                Locale.ROOT,
                                "%s is taken, but is unlikely for %s of that size (most are near %.3g mohm).",
                                Range.shown(innerMohm, "mohm"),
                                chemistry.words(),
                                usualMohm));
            }
        }
        if (chemistry.isLead() && depth() > MOST_LEAD_DEPTH) {
            row.caution(
                    "depth_pct",
                    Range.shown(depthPct, "%")
                            + " is taken, but lead drawn so deep does not live long (most plan with half).");
        }
        if (ratedAh > 0 && fastAh <= ratedAh && fastHours < ratedHours) {
            double worstMiss = TwoWells.fit(
                            List.of(new CapacityRating(ratedHours, ratedAh), new CapacityRating(fastHours, fastAh)),
                            chemistry.traits().fallback())
                    .worstMiss();
            if (worstMiss > OFF_RATINGS) {
                row.caution(
                        "fast_ah",
                        Range.shown(fastAh, "Ah") + " in " + Range.shown(fastHours, "h")
                                + " is taken, but hardly goes with " + Range.shown(ratedAh, "Ah") + " in "
                                + Range.shown(ratedHours, "h") + ".");
            }
        }
    }

    /** To be called only where all was right. */
    Store store(double nominalV, double maxChargeA, double maxDischargeA) {
        if (chemistry == null) {
            throw new IllegalStateException("a rated store without a chemistry");
        }
        return new RatedStore(
                chemistry,
                new RatedStore.Capacity(ratedAh, ratedHours, fastAh, fastHours),
                nominalV,
                innerMohm / 1000,
                maxChargeA,
                maxDischargeA,
                new RatedStore.Guard(new Surge(surgeA, surgeSeconds), cutOffV, coldLockOut),
                hasHeater ? new RatedStore.Heater(heaterW, heaterHoldsDegC) : RatedStore.Heater.NONE,
                depth(),
                Double.isNaN(measuredPct)
                        ? LabelWorth.unmeasured(chemistry, listing.condition(), makerKnown)
                        : RatedStore.Worth.measured(measuredPct / 100),
                listing.massKg());
    }
}
