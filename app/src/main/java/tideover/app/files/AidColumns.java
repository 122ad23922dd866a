package tideover.app.files;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.cold.ColdBox;
import tideover.engine.part.Cooler;
import tideover.engine.part.Jug;
import tideover.engine.part.Listing;
import tideover.engine.part.Part;
import tideover.engine.part.StandIn;

/** What helps without power: jugs of ice, coolers, things that stand in for loads. */
final class AidColumns {
    static final List<String> ALL = List.of("for_load", "ice_kg", "holds_l", "walls_w_per_k", "ice_days", "lasts_h");

    /** In which makers try how long ice lasts: 90 degF, as the energy label's room; common practice, no source. */
    private static final double ICE_TEST_DEG_C = ColdBox.LABEL_ROOM_DEG_C;

    private static final Range ICE_KG = Range.above(0, 500).likely(0.3, 40);

    private AidColumns() {}

    static @Nullable Part jug(Row row, Listing listing) {
        int before = row.flaws();
        String load = load(row, "the cold box that it lies in: its name in the plan, or a kind of box");
        double iceKg = row.number("ice_kg", "water frozen in one", "kg", ICE_KG);
        return row.flaws() > before ? null : new Jug(listing, load, iceKg);
    }

    static @Nullable Part cooler(Row row, Listing listing) {
        int before = row.flaws();
        String load = load(row, "the refrigerator whose food it takes: its name in the plan, or \"refrigerator\"");
        double litres =
                row.number("holds_l", "what it holds", "L", Range.from(1, 2000).likely(8, 200));
        double iceKg = row.number("ice_kg", "ice that goes in with the food", "kg", ICE_KG);
        double walls = row.numberIfAny(
                "walls_w_per_k",
                "heat through walls and lid",
                "W/K",
                Range.above(0, 100).likely(0.1, 3));
        double days = row.numberIfAny(
                "ice_days",
                "days that so much ice lasts",
                "d",
                Range.above(0, 60).likely(0.5, 12));
        if (row.has("walls_w_per_k") && row.has("ice_days")) {
            row.problem(
                    "ice_days", Reading.quoted(row.cell("ice_days")) + " beside walls_w_per_k", "one of the two", "");
        }
        if (row.flaws() > before) {
            return null;
        }
        if (row.has("ice_days")) {
            walls = Cooler.wallWPerK(iceKg, days, ICE_TEST_DEG_C);
        } else if (!row.has("walls_w_per_k")) {
            walls = Cooler.usualWallWPerK(litres);
        }
        return new Cooler(listing, load, litres, walls, iceKg);
    }

    static @Nullable Part standIn(Row row, Listing listing) {
        int before = row.flaws();
        String load = load(row, "the load that it stands in for, by its name in the plan");
        double hours = row.number(
                "lasts_h",
                "hours of an outage through which one of it keeps the need",
                "h",
                Range.above(0, 10_000).likely(4, 1000));
        return row.flaws() > before ? null : new StandIn(listing, load, hours);
    }

    private static String load(Row row, String what) {
        return row.text("for_load", what, PlanFile.LONGEST_NAME);
    }
}
