package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.rig.RigKit.rig;
import static tideover.engine.rig.RigKit.verdict;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.Tracking;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Panel;
import tideover.engine.part.RatedStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.Surge;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Whether what charges a store suits it. */
class ChargeRulesTest {
    private static final Panel PANEL = Invented.panel("P", 100, 100);

    @Test
    void controllerAndChargerKnowTheChemistry() {
        Battery iron = RigKit.iron(RigKit.STRONG);
        Set<Chemistry> lead = Set.of(Chemistry.FLOODED_LEAD, Chemistry.AGM_LEAD);
        assertThat(verdict(rig(iron, controller(RigKit.ALL), PANEL), "chemistry-charge"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(iron, controller(lead), PANEL), "chemistry-charge"))
                .contains(Verdict.FAIL);
        assertThat(verdict(rig(iron, controller(Set.of()), PANEL), "chemistry-charge"))
                .as("not told")
                .contains(Verdict.CAUTION);
        assertThat(verdict(rig(iron, controller(lead)), "chemistry-charge"))
                .as("without panels it charges nothing")
                .isEmpty();
        assertThat(verdict(rig(iron, charger(20, 12, lead)), "chemistry-charge"))
                .contains(Verdict.FAIL);
        assertThat(verdict(rig(iron, charger(20, 12, RigKit.ALL)), "chemistry-charge"))
                .contains(Verdict.PASS);
    }

    @Test
    void aBoxChargesItsOwnBattery() {
        ReadyBox box = new ReadyBox(
                Invented.listing("X", 1, 1),
                RigKit.store(Chemistry.IRON_PHOSPHATE, 0.006, RigKit.STRONG),
                controller(Set.of()).rating(),
                null,
                List.of());
        assertThat(verdict(rig(box, PANEL), "chemistry-charge")).isEmpty();
        assertThat(verdict(rig(box, PANEL), "dead-controller")).isEmpty();
    }

    @Test
    void lithiumIsNotChargedBelowFreezing() {
        for (Stated keepsOut : Stated.values()) {
            Battery iron = RigKit.iron(new RatedStore.Guard(Surge.UNKNOWN, Double.NaN, keepsOut));
            assertThat(verdict(rig(iron), "cold-charge"))
                    .contains(keepsOut == Stated.YES ? Verdict.PASS : Verdict.CAUTION);
        }
        assertThat(verdict(rig(RigKit.agm()), "cold-charge")).isEmpty();
    }

    @Test
    void aControllerThatLivesOnTheBatteryDoesNotWakeADeadOne() {
        Battery iron = RigKit.iron(RigKit.STRONG);
        for (Stated starts : Stated.values()) {
            ChargeController controller =
                    RigKit.controller(Tracking.BEST_POINT, new ControllerRating.PanelInput(4, 40, starts), RigKit.ALL);
            assertThat(verdict(rig(iron, controller, PANEL), "dead-controller"))
                    .contains(starts == Stated.YES ? Verdict.PASS : Verdict.CAUTION);
            assertThat(verdict(rig(RigKit.agm(), controller, PANEL), "dead-controller"))
                    .as("a lead battery without electronics is always there")
                    .isEmpty();
        }
    }

    @Test
    void theChargerIsForTheStoresVolts() {
        assertThat(verdict(rig(RigKit.agm(), charger(20, 12, RigKit.ALL)), "charger-volts"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(RigKit.agm(), charger(20, 24, RigKit.ALL)), "charger-volts"))
                .contains(Verdict.FAIL);
    }

    /** The store takes 50 A. */
    @Test
    void theChargerGivesNoMoreThanTheStoreTakes() {
        assertThat(verdict(rig(RigKit.agm(), charger(50, 12, RigKit.ALL)), "charger-current"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(RigKit.agm(), charger(51, 12, RigKit.ALL)), "charger-current"))
                .contains(Verdict.FAIL);
    }

    /** 600 W on 12 V are 50 A, what the store takes. */
    @Test
    void moreSunThanTheStoreTakesIsACaution() {
        ChargeController large = new ChargeController(
                Invented.listing("C", 100, 1), new ControllerRating(60, 100, 12, 24, 0.95), List.of());
        assertThat(verdict(rig(RigKit.agm(), large, Invented.panel("P", 600, 100)), "charge-current"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(RigKit.agm(), large, Invented.panel("P", 606, 100)), "charge-current"))
                .contains(Verdict.CAUTION);
        assertThat(verdict(rig(RigKit.agm(), controller(RigKit.ALL), Invented.panel("P", 606, 100)), "charge-current"))
                .as("the controller gives 20 A")
                .contains(Verdict.PASS);
    }

    private static ChargeController controller(Set<Chemistry> charges) {
        return RigKit.controller(Tracking.BEST_POINT, new ControllerRating.PanelInput(4, 40, Stated.YES), charges);
    }

    private static Charger charger(double amps, double volts, Set<Chemistry> charges) {
        return new Charger(Invented.listing("M", 100, 2), amps, volts, volts * 1.1, 0.9, charges);
    }
}
