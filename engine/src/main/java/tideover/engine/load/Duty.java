package tideover.engine.load;

import java.util.List;

/**
 * When a cold box may be let run in an outage. Holding one back is only for freezers and for boxes with ice of a stated
 * mass: what keeps fresh food needs its power whenever it asks for it.
 *
 * @param kind  by need, by the clock, or by the sun
 * @param hours of the day, for {@link Kind#IN_HOURS}; all day otherwise
 */
public record Duty(Kind kind, List<DayWindow> hours) {
    /** How its owner plans to run it. */
    public enum Kind {
        AS_IT_NEEDS,
        IN_HOURS,
        /** While the panels give at least half of what it draws. */
        WHILE_SUNNY
    }

    public static final Duty AS_IT_NEEDS = new Duty(Kind.AS_IT_NEEDS, List.of(DayWindow.ALL_DAY));
    public static final Duty WHILE_SUNNY = new Duty(Kind.WHILE_SUNNY, List.of(DayWindow.ALL_DAY));

    public Duty {
        hours = List.copyOf(hours);
    }

    public static Duty inHours(List<DayWindow> hours) {
        return new Duty(Kind.IN_HOURS, hours);
    }

    public String words() {
        return switch (kind) {
            case AS_IT_NEEDS -> "whenever it needs to";
            case IN_HOURS ->
                "only "
                        + String.join(
                                ", ",
                                hours.stream()
                                        .map(window ->
                                                Need.clock(window.fromHour()) + " to " + Need.clock(window.toHour()))
                                        .toList());
            case WHILE_SUNNY -> "only while the panels give half of what it draws";
        };
    }
}
