package tideover.engine.load;

import tideover.engine.site.RoomKind;

/** Something that must, or would be nice to, stay on. Watts are at the load's own plug. */
public sealed interface Load permits SteadyLoad, TimedLoad {
    String name();

    Supply supply();

    /** Draw while it runs. */
    double runningW();

    /** Essential, or nice to have: a nice-to-have never takes what an essential needs. */
    boolean essential();

    Need need();

    /** Where it stands: decides the temperature it and its people live in. */
    RoomKind room();

    /** Mean draw it wants over a stretch of the day if nothing but the clock decides, in W. */
    double wantedW(double startHour, double lengthHours);

    /** Energy it wants on a whole day, in Wh. */
    double wantedWhPerDay();
}
