package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.RandomStream;
import tideover.engine.quantity.Units;

class SunPositionTest {
    private static final Instant START = Instant.parse("2025-01-01T00:00:00Z");

    @Test
    void theQuickPathKeepsWithinAHundredthOfADegreeOfTheFullOne() {
        RandomStream random = RandomStream.of(1, 0, RandomStream.Purpose.TEST);
        double worst = 0;
        for (int i = 0; i < 5000; i++) {
            Instant time = START.plusSeconds((long) (random.nextUniform() * 365 * 86_400));
            double latDeg = -90 + 180 * random.nextUniform();
            double lonDeg = -180 + 360 * random.nextUniform();
            SunPosition quick = SunPosition.quick(time, latDeg, lonDeg);
            SunPosition full = SunPosition.airless(time, latDeg, lonDeg, 0, SunPosition.REFERENCE_DELTA_T_S);
            worst = Math.max(worst, apartDeg(quick, full));
        }
        assertThat(worst).isLessThan(0.01);
    }

    /** Angle between two directions, by the chord, which keeps its digits where the angle is small. */
    private static double apartDeg(SunPosition a, SunPosition b) {
        double[] u = vector(a);
        double[] v = vector(b);
        double chord = StrictMath.sqrt(
                (u[0] - v[0]) * (u[0] - v[0]) + (u[1] - v[1]) * (u[1] - v[1]) + (u[2] - v[2]) * (u[2] - v[2]));
        return Units.degrees(2 * StrictMath.asin(chord / 2));
    }

    private static double[] vector(SunPosition sun) {
        double z = Units.radians(sun.zenithDeg());
        double a = Units.radians(sun.azimuthDeg());
        return new double[] {
            StrictMath.sin(z) * StrictMath.sin(a), StrictMath.sin(z) * StrictMath.cos(a), StrictMath.cos(z)
        };
    }
}
