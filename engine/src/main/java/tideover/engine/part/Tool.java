package tideover.engine.part;

/** Bought once, or borrowed, and left over when the rig is built. */
public record Tool(Listing listing, Job job) implements SmallPart {
    /** What it is for. */
    public enum Job {
        LIGHT_CRIMPER("light crimper"),
        HEAVY_CRIMPER("heavy crimper"),
        CABLE_CUTTER("cable cutter"),
        WIRE_STRIPPER("wire stripper"),
        HEAT_GUN("heat gun"),
        INSULATED_SPANNER("insulated spanner"),
        TORQUE_WRENCH("torque wrench"),
        MULTIMETER("multimeter"),
        EYE_PROTECTION("eye protection");

        private final String words;

        Job(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    @Override
    public String kind() {
        return "tool";
    }
}
