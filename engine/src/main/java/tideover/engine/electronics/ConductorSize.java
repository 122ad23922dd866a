package tideover.engine.electronics;

import java.util.List;
import java.util.Optional;

/** STUB, replaced by helper. */
public record ConductorSize(String words, double areaMm2, boolean isMetric) {
    public static Optional<ConductorSize> named(String words) {
        return gauges().stream().filter(s -> s.words().equals(words)).findFirst();
    }

    public static List<ConductorSize> gauges() {
        return List.of(new ConductorSize("10 AWG", 5.26, false));
    }

    public static List<ConductorSize> metrics() {
        return List.of();
    }

    public double ohmPerM(double conductorDegC) {
        return 0.0172 / areaMm2;
    }
}
