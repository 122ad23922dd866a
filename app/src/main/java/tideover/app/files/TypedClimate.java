package tideover.app.files;

import java.util.Collections;
import tideover.engine.quantity.Series;
import tideover.engine.site.MonthlyClimate;
import tideover.engine.site.Place;

final class TypedClimate {
    private TypedClimate() {}

    static MonthlyClimate of(Place place, Series sunKwhM2Day, Series meanDegC, String source) {
        Series unknown = Series.of(new double[12]);
        return new MonthlyClimate(
                sunKwhM2Day,
                unknown,
                unknown,
                0.3,
                Collections.nCopies(12, false),
                meanDegC,
                meanDegC,
                meanDegC,
                unknown,
                0.7,
                Series.of(new double[4]),
                Series.of(new double[4]),
                Double.NaN,
                source);
    }
}
