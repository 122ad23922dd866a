package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.Units;

/** Sun position and distance against printed figures. */
class SunPublishedTest {
    /** Worked example of Reda &amp; Andreas, NREL/TP-560-34302, appendix A.5: 2003-10-17, 12:30:30 at seven hours behind. */
    private static final Instant NREL = Instant.parse("2003-10-17T19:30:30Z");

    private static final double NREL_LAT = 39.742476;
    private static final double NREL_LON = -105.1786;

    @Test
    void zenithAndAzimuthMatchTheNrelExample() {
        SunPosition sun = SunPosition.apparent(NREL, NREL_LAT, NREL_LON, 1830.14, 820, 11, 67);
        assertThat(sun.zenithDeg()).isCloseTo(50.11162, within(1e-5));
        assertThat(sun.azimuthDeg()).isCloseTo(194.34024, within(1e-5));
    }

    @Test
    void incidenceMatchesTheNrelExample() {
        // Surface 30 deg from the horizontal, turned 10 deg eastward of south; azimuth there counts from south.
        SunPosition sun = SunPosition.apparent(NREL, NREL_LAT, NREL_LON, 1830.14, 820, 11, 67);
        double zenith = Units.radians(sun.zenithDeg());
        double tilt = Units.radians(30);
        double cosine = StrictMath.cos(zenith) * StrictMath.cos(tilt)
                + StrictMath.sin(zenith)
                        * StrictMath.sin(tilt)
                        * StrictMath.cos(Units.radians(sun.azimuthDeg() - (180 - 10)));
        assertThat(Units.degrees(StrictMath.acos(cosine))).isCloseTo(25.18700, within(1e-5));
    }
}
