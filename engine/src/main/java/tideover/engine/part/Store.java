package tideover.engine.part;

/** What holds the energy: a plain tank of a label, or a battery known by its data sheet. */
public sealed interface Store permits PlainStore, RatedStore {
    /** Nominal volts at its terminals. */
    double nominalV();

    double maxChargeA();

    double maxDischargeA();

    /** What its label lets one count on, kept to the depth it may be used, Wh inside it. */
    double usableWh();

    /** Alike ones: volts grow with those in a row, currents with the rows side by side. */
    Store bank(int series, int parallel);

    default double maxChargeW() {
        return maxChargeA() * nominalV();
    }

    default double maxDischargeW() {
        return maxDischargeA() * nominalV();
    }
}
