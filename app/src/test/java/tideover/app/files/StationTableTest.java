package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;
import tideover.engine.site.MonthlyClimate;
import tideover.engine.site.Station;

class StationTableTest {
    private static final List<Station> ROWS = StationTable.rows();

    @Test
    void everyStationIsThereOnce() {
        Set<String> ids = new HashSet<>();
        ROWS.forEach(row -> assertThat(ids.add(row.id())).as(row.id()).isTrue());

        assertThat(ROWS).hasSize(1019);
    }

    /** The row as it stands in the table. */
    @Test
    void astoriaIsReadCellByCell() {
        Station astoria = row("727910");
        MonthlyClimate climate = astoria.climate();

        assertThat(astoria.label()).isEqualTo("Astoria Regional Airport OR");
        assertThat(astoria.place().latDeg()).isEqualTo(46.15);
        assertThat(astoria.place().lonDeg()).isEqualTo(-123.883);
        assertThat(astoria.place().elevM()).isEqualTo(3);
        assertThat(astoria.place().zoneH()).isEqualTo(-8);
        assertThat(climate.ghiKwhM2Day().toArray())
                .containsExactly(1.15, 1.88, 2.78, 3.97, 4.81, 5.45, 5.63, 4.72, 3.85, 2.29, 1.24, 1.07);
        assertThat(climate.clearness().at(0)).isEqualTo(0.354);
        assertThat(climate.clearnessSd().at(11)).isEqualTo(0.127);
        assertThat(climate.lowDegC().at(0)).isEqualTo(3.4);
        assertThat(climate.highDegC().at(0)).isEqualTo(9.6);
        assertThat(climate.meanDegC().at(11)).isEqualTo(6.4);
        assertThat(climate.clearnessLag1()).isEqualTo(0.415);
        assertThat(climate.lowestDegC()).isEqualTo(-4.4);
        assertThat(climate.cloudCoverModelled())
                .containsExactly(true, true, true, true, true, true, true, true, true, false, false, true);
    }

    /** In the far north the sun is too low for a clearness in winter; the cells are empty, not zero. */
    @Test
    void emptyCellsAreUnknown() {
        MonthlyClimate ambler = row("701718").climate();

        assertThat(ambler.clearness().at(0)).isNaN();
        assertThat(ambler.clearness().at(1)).isEqualTo(0.382);
        assertThat(ambler.clearnessSd().at(10)).isNaN();
        assertThat(ambler.anomalyWithSun().at(0)).isNaN();
        assertThat(ambler.anomalyWithSun().at(1)).isEqualTo(0.097);
        assertThat(ambler.ghiKwhM2Day().at(11)).isZero();
    }

    /** The mean annual figures printed beside known long-term values in the table's own description. */
    @Test
    void annualMeansAreTheTables() {
        assertThat(annualKwhM2Day("722780")).isCloseTo(5.74, offset(0.011));
        assertThat(annualKwhM2Day("725280")).isCloseTo(3.72, offset(0.011));
        assertThat(annualKwhM2Day("702650")).isCloseTo(2.33, offset(0.011));
    }

    private static double annualKwhM2Day(String id) {
        double sum = 0;
        for (int month = 0; month < 12; month++) {
            sum += row(id).climate().ghiKwhM2Day().at(month) * ModelYear.daysIn(month);
        }
        return sum / ModelYear.DAYS;
    }

    private static Station row(String id) {
        return ROWS.stream().filter(row -> row.id().equals(id)).findFirst().orElseThrow();
    }
}
