package tideover.engine.outage;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;

/**
 * The question asked of a rig.
 *
 * @param months              months whose hours an outage may start in, counted from 0, in rising order
 * @param hours               how long it lasts
 * @param targetShare         share of outages that must be carried, 0..1
 * @param chargeAtStart       how full the store is when the grid fails, 0..1
 * @param panelsOutAfterHours how long after the start the panels are out in the sun
 * @param keepBack            nice-to-have loads draw on the store only above this state of charge, 0..1; at 1 they live on
 *                            sun that the store has no room for
 * @param rolling             null where the grid stays away to the end
 * @param help                what comes to the rig's help meanwhile
 * @param storm               what storms do beside taking the grid; null where the plan says nothing of them
 * @param tending             when an engine that belongs to a rig may run, and what fuel there may be for it
 */
public record Outage(
        List<Integer> months,
        int hours,
        double targetShare,
        double chargeAtStart,
        int panelsOutAfterHours,
        double keepBack,
        @Nullable Rolling rolling,
        List<Help> help,
        @Nullable Storm storm,
        Tending tending) {
    public Outage {
        help = List.copyOf(help);
        months = List.copyOf(months);
        Require.within(1, 12, "number of months", months.size());
        int before = -1;
        for (int month : months) {
            Require.within(before + 1, 11, "month", month);
            before = month;
        }
        Require.within(1, 60 * 24, "hours", hours);
        Require.within(0, 1, "targetShare", targetShare, "");
        Require.within(0, 1, "chargeAtStart", chargeAtStart, "");
        Require.above(0, "chargeAtStart", chargeAtStart, "");
        Require.within(0, 60 * 24, "panelsOutAfterHours", panelsOutAfterHours);
        Require.within(0, 1, "keepBack", keepBack, "");
    }

    /** In which an engine of the rig's own is tended as is usual. */
    public Outage(
            List<Integer> months,
            int hours,
            double targetShare,
            double chargeAtStart,
            int panelsOutAfterHours,
            double keepBack,
            @Nullable Rolling rolling,
            List<Help> help,
            @Nullable Storm storm) {
        this(
                months,
                hours,
                targetShare,
                chargeAtStart,
                panelsOutAfterHours,
                keepBack,
                rolling,
                help,
                storm,
                Tending.USUAL);
    }

    /** Of which nothing is said of storms. */
    public Outage(
            List<Integer> months,
            int hours,
            double targetShare,
            double chargeAtStart,
            int panelsOutAfterHours,
            double keepBack,
            @Nullable Rolling rolling,
            List<Help> help) {
        this(months, hours, targetShare, chargeAtStart, panelsOutAfterHours, keepBack, rolling, help, null);
    }

    /** In one piece and without help. */
    public Outage(
            List<Integer> months,
            int hours,
            double targetShare,
            double chargeAtStart,
            int panelsOutAfterHours,
            double keepBack) {
        this(months, hours, targetShare, chargeAtStart, panelsOutAfterHours, keepBack, null, List.of());
    }

    public Outage fullAtStart() {
        return new Outage(months, hours, targetShare, 1, panelsOutAfterHours, keepBack, rolling, help, storm, tending);
    }

    public Outage panelsOutAtOnce() {
        return new Outage(months, hours, targetShare, chargeAtStart, 0, keepBack, rolling, help, storm, tending);
    }

    /** The same in a storm: the panels come out when storm and snow let them. */
    public Outage inStorm() {
        int outAfter = storm == null ? panelsOutAfterHours : Math.max(panelsOutAfterHours, storm.panelsStowedHours());
        return new Outage(months, hours, targetShare, chargeAtStart, outAfter, keepBack, rolling, help, storm, tending);
    }

    public Outage with(Tending changed) {
        return new Outage(
                months,
                hours,
                targetShare,
                chargeAtStart,
                panelsOutAfterHours,
                keepBack,
                rolling,
                help,
                storm,
                changed);
    }

    public Outage withTarget(double share) {
        return new Outage(
                months, hours, share, chargeAtStart, panelsOutAfterHours, keepBack, rolling, help, storm, tending);
    }

    /**
     * Hours from the start in which nothing helps that comes at an hour of the outage; an engine keeps the hours of the day
     * and is left out here.
     */
    public int unhelpedHours() {
        int least = rolling == null ? hours : Math.min(hours, rolling.offHours());
        for (Help one : help) {
            least = one instanceof Help.Handover handover ? Math.min(least, handover.afterHours()) : least;
        }
        return least;
    }

    /** Its first hours alone, in one piece and without help. */
    public Outage first(int someHours) {
        return new Outage(
                months,
                someHours,
                targetShare,
                chargeAtStart,
                panelsOutAfterHours,
                keepBack,
                null,
                List.of(),
                null,
                tending);
    }

    /** Whether anything but the sun and what a rig brings itself feeds it; a rig with an engine of its own is asked itself. */
    public boolean isHelped() {
        return rolling != null || !help.isEmpty();
    }
}
