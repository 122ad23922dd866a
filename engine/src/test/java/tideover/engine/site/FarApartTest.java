package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.Series;

class FarApartTest {
    private static Station station(String name, double latDeg, double sun, double degC) {
        Series months = Series.constant(12, sun);
        Series temperatures = Series.constant(12, degC);
        Series seasons = Series.constant(4, 0);
        return new Station(
                name,
                "ZZ",
                new Place(name, latDeg, 0, 0, 0),
                new MonthlyClimate(
                        months,
                        months,
                        months,
                        0,
                        java.util.Collections.nCopies(12, false),
                        temperatures,
                        temperatures,
                        temperatures,
                        temperatures,
                        0,
                        seasons,
                        seasons,
                        degC,
                        "invented"));
    }

    @Test
    void theDarkestComesFirstThenTheFurthest() {
        List<Station> some = new ArrayList<>(List.of(
                station("bright", 20, 5, 20),
                station("brightish", 21, 4.9, 19),
                station("middle", 40, 2.5, 0),
                station("dark", 60, 0.5, -20)));
        assertThat(FarApart.of(new Stations(some), 3))
                .extracting(Station::id)
                .containsExactly("dark", "bright", "middle");
        assertThat(FarApart.of(new Stations(some), 9)).hasSize(4).doesNotHaveDuplicates();
    }
}
