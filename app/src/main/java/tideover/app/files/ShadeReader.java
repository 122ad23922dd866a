package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.load.DayWindow;
import tideover.engine.load.TimedLoad;
import tideover.engine.quantity.Series;
import tideover.engine.sun.PanelMount;
import tideover.engine.why.Basis;

/** Reads the hours of the day in which trees, roofs and hills take light from the panels. */
final class ShadeReader {
    private static final int MOST_STRETCHES = 24;

    private ShadeReader() {}

    /** 24 shares of light lost, local standard time; an hour shaded in part loses that part. No shade where the list is absent. */
    static Series read(Reading reading, Field list) {
        if (!list.isPresent()) {
            return PanelMount.NO_SHADE;
        }
        List<Field> items = list.items("a list of shaded stretches, such as - {hours: 07:00-09:00, lost: 60 %}");
        if (items.size() > MOST_STRETCHES) {
            list.problem(items.size() + " stretches", "at most " + MOST_STRETCHES, "");
            return PanelMount.NO_SHADE;
        }
        double[] lostByHour = new double[24];
        List<DayWindow> earlier = new ArrayList<>();
        List<String> shown = new ArrayList<>();
        for (Field item : items) {
            int before = reading.flaws();
            item.keys("hours", "lost");
            Field hours = item.child("hours");
            DayWindow window = LoadReader.window(hours);
            double lost = item.child("lost").share(Range.above(0, 100).likely(5, 100));
            if (window == null || reading.flaws() > before) {
                continue;
            }
            for (DayWindow other : earlier) {
                if (window.overlapHours(other.fromHour(), other.lengthHours()) > TimedLoad.TOUCHING_H) {
                    hours.problem(
                            Reading.quoted(hours.shown()),
                            "stretches that do not overlap",
                            "It overlaps " + LoadReader.words(List.of(other)) + ".");
                }
            }
            earlier.add(window);
            for (int hour = 0; hour < 24; hour++) {
                lostByHour[hour] = Math.min(1, lostByHour[hour] + lost * window.overlapHours(hour, 1));
            }
            shown.add(
                    LoadReader.words(List.of(window)) + " " + item.child("lost").shown());
        }
        reading.note("Light lost to shade", String.join(", ", shown), Basis.YOURS, list.source());
        return Series.of(lostByHour);
    }
}
