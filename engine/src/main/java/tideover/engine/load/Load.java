package tideover.engine.load;

import java.util.List;
import tideover.engine.site.RoomKind;

/** Something that must, or would be nice to, stay on. Watts are at the load's own plug. */
public sealed interface Load permits SteadyLoad, TimedLoad, KeepingLoad {
    String name();

    Supply supply();

    /** Whether it takes power at all; its supply means nothing where it does not. */
    default boolean plugged() {
        return true;
    }

    /** Draw while it runs. */
    double runningW();

    /** Essential, or nice to have: a nice-to-have never takes what an essential needs. */
    boolean essential();

    Need need();

    /** What it is owed, in words, such as "always on" or "17:00 to 23:00". */
    default String owed() {
        return need().words();
    }

    /** Whether it switches itself by what it keeps: see {@link KeepingLoad}. */
    default boolean keeps() {
        return false;
    }

    /** Whether its owner may hold it back for hours, so that nothing waits for its power meanwhile. */
    default boolean heldBack() {
        return false;
    }

    /** How it behaves beside its watts. */
    Nature nature();

    /** Where it stands: decides the temperature it and its people live in. */
    RoomKind room();

    /**
     * The hours of the day in which it runs. A load that may choose its hours inside a window takes those nearest to noon,
     * when the sun is most likely to carry it.
     *
     * @param noonHour clock hour of solar noon, local standard time
     */
    List<DayWindow> onHours(double noonHour);

    /** The same with so many times its draw; of what switches itself, of what it draws while it runs. */
    Load drawing(double times);

    /** Mean draw over a stretch of the day, in W. */
    default double wantedW(double startHour, double lengthHours, double noonHour) {
        double hours = 0;
        for (DayWindow window : onHours(noonHour)) {
            hours += window.overlapHours(startHour, lengthHours);
        }
        return runningW() * hours / lengthHours;
    }

    /** Volt-amperes while it runs. */
    default double runningVa() {
        return runningW() / nature().powerFactor();
    }

    /** Energy it wants on a whole day, in Wh; of what switches itself an estimate. */
    default double wantedWhPerDay() {
        double hours = 0;
        for (DayWindow window : onHours(12)) {
            hours += window.lengthHours();
        }
        return runningW() * hours;
    }
}
