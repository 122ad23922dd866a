package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LayingTest {
    @Test
    void keepsTheOrderOfTheCordsAndACopyOfItsOwn() {
        Map<String, Double> cords = new LinkedHashMap<>();
        cords.put("Pump", 9.0);
        cords.put("Lamp", 2.0);
        Laying laying = laying(8, 0.3, 0.3, 40, 2, cords);
        cords.clear();

        assertThat(laying.cordM().keySet()).containsExactly("Pump", "Lamp");
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> laying(-1, 0.3, 0.3, 40, 2, Map.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> laying(Double.NaN, 0.3, 0.3, 40, 2, Map.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> laying(201, 0.3, 0.3, 40, 2, Map.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> laying(8, 0.3, 0.2, 40, 2, Map.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> laying(8, 0.3, 0.3, 71, 2, Map.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> laying(8, 0.3, 0.3, 40, 1, Map.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> laying(8, 0.3, 0.3, 40, 2, Map.of("Lamp", 201.0)));
    }

    @Test
    void anEngineStandsSixPointOneMetresAway() {
        assertThat(Laying.LEAST_ENGINE_M).isCloseTo(6.1, offset(0.05));
        assertThat(Laying.ASSUMED.engineM()).isGreaterThan(Laying.LEAST_ENGINE_M);
    }

    private static Laying laying(
            double panelsM,
            double linkM,
            double linkOtherM,
            double hottestDegC,
            int sideBySide,
            Map<String, Double> cordM) {
        return new Laying(panelsM, 0.5, 0.5, 0.5, 1, 8, linkM, linkOtherM, hottestDegC, sideBySide, cordM);
    }
}
