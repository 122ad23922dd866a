package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class StationsTest {
    private static final Stations TWENTY = new Stations(TwentyStations.all());

    private static Station at(String name, double latDeg, double lonDeg, double elevM) {
        return new Station(
                name,
                "XX",
                new Place(name, latDeg, lonDeg, elevM, 0),
                TwentyStations.named("Honolulu").climate());
    }

    @Test
    void searchWantsEveryWordAnywhereInAnyCase() {
        assertThat(TWENTY.search("AIRPORT  ak")).extracting(Station::state).containsOnly("AK");
        assertThat(TWENTY.search("buff")).extracting(Station::label).containsExactly("Buffalo Niagara Intl Airport NY");
        assertThat(TWENTY.search("725280")).hasSize(1);
        assertThat(TWENTY.search("sault, ste. marie")).hasSize(1);
        assertThat(TWENTY.search("buffalo tx")).isEmpty();
        assertThat(TWENTY.search(" ")).hasSize(20);
    }

    @Test
    void orderDoesNotDependOnTheTables() {
        List<Station> shuffled = new ArrayList<>(TwentyStations.all());
        Collections.reverse(shuffled);
        assertThat(new Stations(shuffled).search("intl")).isEqualTo(TWENTY.search("intl"));
        assertThat(TWENTY.search("intl")).extracting(Station::label).isSorted();
    }

    @Test
    void labelAndIdAreExact() {
        assertThat(TWENTY.byLabel("miami intl airport fl")).isPresent();
        assertThat(TWENTY.byLabel("722020")).contains(TwentyStations.named("Miami"));
        assertThat(TWENTY.byLabel("Miami")).isEmpty();
        assertThat(TWENTY.byLabel("Miami Intl Airport TX")).isEmpty();
    }

    @Test
    void slipsOfTheKeyboardAreGuessed() {
        assertThat(TWENTY.closestNames("Bufalo NY", 3)).first().isEqualTo("Buffalo Niagara Intl Airport NY");
        assertThat(TWENTY.closestNames("pheonix", 1)).containsExactly("Phoenix Sky Harbor Intl Airport AZ");
        assertThat(TWENTY.closestNames("Houston Bush Intercontinental", 1))
                .containsExactly("Houston Bush Intercontinental TX");
        assertThat(TWENTY.closestNames("x", 100)).hasSize(20);
    }

    @Test
    void nearestAcrossTheDateLine() {
        Stations stations = new Stations(List.of(at("East", 10, -179.9, 0), at("West", 10, 178.5, 0)));
        NearestStation found = stations.nearest(10, 179.8, 0);
        assertThat(found.station().id()).isEqualTo("East");
        // 0.3 deg of longitude at 10 deg of latitude, on a sphere of 6371 km.
        assertThat(found.distanceKm())
                .isCloseTo(Math.toRadians(0.3) * 6371 * Math.cos(Math.toRadians(10)), within(0.1));
        assertThat(found.cautions()).isEmpty();
    }

    @Test
    void distancesOnTheSphere() {
        Place pole = new Place("Pole", 90, 0, 0, 0);
        assertThat(Stations.distanceKm(pole, 0, 77)).isCloseTo(10_007.6, within(0.1)); // a quarter of 2 pi 6371.0088
        assertThat(Stations.distanceKm(pole, -90, 0)).isCloseTo(20_015.1, within(0.1));
        assertThat(Stations.distanceKm(pole, 90, 180)).isCloseTo(0, within(1e-6));
    }

    @Test
    void farAwayAndHighAboveAreSaid() {
        NearestStation near = TWENTY.nearest(42.93, -78.73, Double.NaN);
        assertThat(near.station().id()).isEqualTo("725280");
        assertThat(near.heightDifferenceM()).isNaN();
        assertThat(near.cautions()).isEmpty();
        NearestStation far = TWENTY.nearest(44.5, -78, 700);
        assertThat(far.station().id()).isEqualTo("725280");
        assertThat(far.heightDifferenceM()).isEqualTo(700 - 215);
        assertThat(far.cautions()).hasSize(2);
        assertThat(far.cautions().get(0)).contains("184 km");
        assertThat(far.cautions().get(1)).contains("485 m above").contains("3 K colder");
        assertThat(TWENTY.nearest(42.93, -78.73, 215 + 300).cautions()).isEmpty();
        assertThat(TWENTY.nearest(42.93, -78.73, 215 - 301).cautions()).hasSize(1);
    }

    @Test
    void emptyTableIsRefused() {
        Stations none = new Stations(List.of());
        assertThat(none.search("x")).isEmpty();
        assertThatThrownBy(() -> none.nearest(0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
