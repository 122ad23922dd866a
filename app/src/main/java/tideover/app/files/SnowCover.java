package tideover.app.files;

import tideover.engine.site.MonthlyClimate;
import tideover.engine.site.Weather;

final class SnowCover {
    private SnowCover() {}

    static boolean freezes(MonthlyClimate climate) {
        for (double degC : climate.lowDegC().toArray()) {
            if (degC < 0) {
                return true;
            }
        }
        return false;
    }

    static boolean freezes(Weather weather) {
        for (int day = 0; day < weather.days(); day++) {
            if (weather.dayMeanDegC(day) < 0) {
                return true;
            }
        }
        return false;
    }
}
