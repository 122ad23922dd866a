package tideover.engine.load;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.cold.AgencyHours;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Defrost;
import tideover.engine.quantity.Require;
import tideover.engine.site.RoomKind;

/**
 * A cold box, kept where its contents keep their temperature. Switched by its own thermostat.
 *
 * @param chilledToDegC contents and air are at most so warm as the outage begins, by cooling ahead of a forecast storm; NaN
 *                      where nobody does that
 * @param worthCents    what its contents are worth, whole cents; 0 where nobody tells
 * @param aids          ids of the parts that were put into it, or that it was moved into, for an outage; empty as it is every day
 */
public record ColdLoad(
        String name,
        Supply supply,
        ColdBox box,
        Need need,
        Duty duty,
        double chilledToDegC,
        RoomKind room,
        Nature nature,
        long worthCents,
        List<String> aids)
        implements KeepingLoad {
    /** To tell what it uses on a usual day. */
    private static final double USUAL_ROOM_DEG_C = 22;

    public ColdLoad {
        Require.text("name", name);
        Require.atLeast(0, "worthCents", worthCents, "cents");
        aids = List.copyOf(aids);
        boolean byTemperature =
                need instanceof Need.Below || need instanceof Need.Band || need instanceof Need.HoursAbove;
        if (!byTemperature) {
            throw new IllegalArgumentException(name + ": a cold box owes a temperature, not: " + need.words());
        }
        if (duty.kind() != Duty.Kind.AS_IT_NEEDS && !box.mayWait()) {
            throw new IllegalArgumentException(name + ": only a freezer, or a box with ice in it, may be held back");
        }
    }

    /** As it is every day. */
    public ColdLoad(
            String name,
            Supply supply,
            ColdBox box,
            Need need,
            Duty duty,
            double chilledToDegC,
            RoomKind room,
            Nature nature) {
        this(name, supply, box, need, duty, chilledToDegC, room, nature, 0, List.of());
    }

    /** Whether it is plugged in at all; a cooler lives on its ice. */
    @Override
    public boolean plugged() {
        return box.compressor() != null;
    }

    /** The most that it draws: in the warmest room, or with its defrost heater on. */
    @Override
    public double runningW() {
        return box.mostW();
    }

    @Override
    public boolean heldBack() {
        return duty.kind() != Duty.Kind.AS_IT_NEEDS;
    }

    @Override
    public List<DayWindow> onHours(double noonHour) {
        return duty.hours();
    }

    /** What it uses in a room of 22 degC with its door opened as told. */
    @Override
    public double wantedWhPerDay() {
        if (box.compressor() == null) {
            return 0;
        }
        double defrostW = box.defrost() == null ? 0 : box.defrost().meanW();
        double heatW = box.wallWPerK() * Math.max(0, USUAL_ROOM_DEG_C - box.setDegC())
                + box.doorW(USUAL_ROOM_DEG_C) * ColdBox.AWAKE_HOURS / 24
                + Defrost.INTO_BOX * defrostW;
        return 24 * (defrostW + heatW / box.movedPerW(USUAL_ROOM_DEG_C));
    }

    /** Hours without power that the food-safety agencies allow it; infinite where they say nothing. */
    public double agencyHours() {
        return need instanceof Need.Band ? Double.POSITIVE_INFINITY : AgencyHours.of(box);
    }

    @Override
    public ColdLoad drawing(double times) {
        return with(box.drawing(times));
    }

    public ColdLoad with(ColdBox changed) {
        return new ColdLoad(name, supply, changed, need, duty, chilledToDegC, room, nature, worthCents, aids);
    }

    public ColdLoad with(Duty changed) {
        return new ColdLoad(name, supply, box, need, changed, chilledToDegC, room, nature, worthCents, aids);
    }

    public ColdLoad chilledTo(double degC) {
        return new ColdLoad(name, supply, box, need, duty, degC, room, nature, worthCents, aids);
    }

    public ColdLoad worth(long cents) {
        return new ColdLoad(name, supply, box, need, duty, chilledToDegC, room, nature, cents, aids);
    }

    /** With a part put into it, so that its box has changed. */
    public ColdLoad aided(String id, ColdBox changed) {
        return new ColdLoad(name, supply, changed, need, duty, chilledToDegC, room, nature, worthCents, more(id));
    }

    /** Its contents moved into a box without a plug. */
    public ColdLoad movedInto(String id, ColdBox cooler) {
        return new ColdLoad(
                name,
                Supply.NONE,
                cooler,
                need,
                Duty.AS_IT_NEEDS,
                Double.NaN,
                room,
                Nature.PLAIN,
                worthCents,
                more(id));
    }

    private List<String> more(String id) {
        List<String> ids = new ArrayList<>(aids);
        ids.add(id);
        return ids;
    }
}
