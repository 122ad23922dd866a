package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PanelSheetTest {
    private static final double UNKNOWN = Double.NaN;

    @Test
    void aFullSheetAssumesNothing() {
        PanelSheet sheet = PanelSheet.of(100, 22.5, 5.9, 18.6, 36, .0005, -.003, -.004);
        assertThat(sheet.assumed()).isEmpty();
        assertThat(sheet.bestA()).isCloseTo(100 / 18.6, within(1e-12));
    }

    @Test
    void aShortSheetIsFilledAndSaysSo() {
        PanelSheet sheet = PanelSheet.of(100, 22.5, UNKNOWN, UNKNOWN, 0, UNKNOWN, -.003, -.004);
        assertThat(sheet.assumed()).containsExactly("bestV", "shortCircuitA", "cells", "currentPerK");
        assertThat(sheet.bestV() / sheet.openCircuitV()).isCloseTo(.815, within(1e-12));
        assertThat(sheet.shortCircuitA() / sheet.bestA()).isCloseTo(1.065, within(1e-12));
        assertThat(sheet.bestV() * sheet.bestA()).isCloseTo(100, within(1e-9));
        assertThat(sheet.cells()).isEqualTo(36);
        assertThat(sheet.currentPerK()).isEqualTo(.0005);
    }

    /** Whatever the fill factor, both best figures stay inside; at the usual one they are the usual shares. */
    @Test
    void knownShortCircuitSharesTheFillFactor() {
        for (double amps = 4.6; amps < 8; amps += 0.2) {
            PanelSheet sheet = PanelSheet.of(100, 22.5, amps, 0, 0, UNKNOWN, -.003, -.004);
            assertThat(sheet.assumed()).containsExactly("bestV", "cells", "currentPerK");
            assertThat(sheet.bestV()).isLessThan(22.5);
            assertThat(sheet.bestA()).isLessThan(amps);
        }
    }

    @Test
    void countsCells() {
        assertThat(PanelSheet.of(5, 11, 0, 0, 0, .0005, -.003, -.004).cells()).isEqualTo(18);
        assertThat(PanelSheet.of(300, 45, 0, 0, 0, .0005, -.003, -.004).cells()).isEqualTo(72);
        assertThat(PanelSheet.of(3, 6, 0, 0, 0, .0005, -.003, -.004).cells()).isEqualTo(10);
    }

    @Test
    void refusesWhatNoPanelHas() {
        assertThatThrownBy(() -> PanelSheet.of(100, 22.5, 5.9, 23, 36, .0005, -.003, -.004))
                .hasMessageContaining("bestV");
        assertThatThrownBy(() -> PanelSheet.of(100, 22.5, 5.9, 11, 36, .0005, -.003, -.004))
                .hasMessageContaining("bestV");
        assertThatThrownBy(() -> PanelSheet.of(100, 22.5, 5.3, 18.6, 36, .0005, -.003, -.004))
                .hasMessageContaining("bestA");
        assertThatThrownBy(() -> PanelSheet.of(140, 22.5, 6, 0, 36, .0005, -.003, -.004))
                .hasMessageContaining("best");
        assertThatThrownBy(() -> PanelSheet.of(100, 22.5, -5, 0, 36, .0005, -.003, -.004))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
