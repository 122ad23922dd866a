package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * What an engine burns.
 *
 * @param tankL       litres that its own tank holds; of a vehicle, those that may be burnt while it stands
 * @param centsPerL   price of a litre, in cents of the parts file's currency
 * @param keepsMonths how long it can be stored; infinite where it does not age
 */
public record Fuel(Kind kind, double tankL, double centsPerL, double keepsMonths) {
    /**
     * What is sold to burn. Months are common practice, no source; heating values are the lower ones, from memory, and only serve
     * to refuse what no engine can do.
     */
    public enum Kind {
        /** With stabiliser, in a tight can, full and cool. */
        PETROL("petrol", 6, 8.9),
        DIESEL("diesel", 12, 10.0),
        /** Liquid litres. It does not age in its cylinder. */
        PROPANE("propane", Double.POSITIVE_INFINITY, 7.1);

        private final String words;
        private final double usuallyKeepsMonths;
        private final double kwhPerL;

        Kind(String words, double usuallyKeepsMonths, double kwhPerL) {
            this.words = words;
            this.usuallyKeepsMonths = usuallyKeepsMonths;
            this.kwhPerL = kwhPerL;
        }

        public String words() {
            return words;
        }

        public double usuallyKeepsMonths() {
            return usuallyKeepsMonths;
        }

        /** Heat in a litre, kWh. */
        public double kwhPerL() {
            return kwhPerL;
        }
    }

    public Fuel {
        Require.above(0, "tankL", tankL, "L");
        Require.atLeast(0, "centsPerL", centsPerL, "cents");
        Require.above(0, "keepsMonths", keepsMonths, "months");
    }

    /** So many litres, in whole cents, rounded up. */
    public long cents(double litres) {
        return (long) Math.ceil(litres * centsPerL - 1e-9);
    }
}
