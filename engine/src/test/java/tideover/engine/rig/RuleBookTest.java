package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** One test a rule: a rig that keeps it, and the smallest change that breaks it. */
class RuleBookTest {
    private static final Supply MAINS = Invented.MAINS;
    private static final Supply SOCKET = Invented.SOCKET;

    @Test
    void everyEssentialLoadNeedsItsOutlet() {
        Rig rig = rig(battery(12.8, 100, 1, 10), inverter(300, 12), panelled(20, 50));
        assertThat(verdict(rig, "no-outlet", load(MAINS, 50, true), load(SOCKET, 10, true)))
                .isEqualTo(Verdict.PASS);
        Supply european = Supply.ac(230, 50, "CEE 7/4");
        assertThat(verdict(rig, "no-outlet", load(european, 50, true))).isEqualTo(Verdict.FAIL);
        assertThat(verdict(rig, "no-outlet", load(Supply.ac(120, 50, "NEMA 5-15"), 50, true)))
                .as("right plug, wrong hertz")
                .isEqualTo(Verdict.FAIL);
        assertThat(verdict(rig, "no-outlet", load(Supply.ac(230, 60, "NEMA 5-15"), 50, true)))
                .as("right plug, wrong volts")
                .isEqualTo(Verdict.FAIL);
        assertThat(verdict(rig, "no-outlet", load(european, 50, false)))
                .as("nice to have")
                .isEqualTo(Verdict.CAUTION);
    }

    /** An outlet of alternating current on a part without an inverter is a slip in the parts file. */
    @Test
    void alternatingCurrentNeedsAnInverter() {
        ChargeController odd = new ChargeController(
                Invented.listing("C", 100, 1),
                new ControllerRating(20, 50, 12, 24, 0.95),
                List.of(new Outlet(MAINS, 1, 300, 1)));
        assertThat(verdict(rig(battery(12.8, 100, 1, 10), odd), "no-inverter", load(MAINS, 50, true)))
                .isEqualTo(Verdict.FAIL);
        assertThat(verdict(
                        rig(battery(12.8, 100, 1, 10), odd, inverter(300, 12)), "no-inverter", load(MAINS, 50, true)))
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void moreLoadsThanSocketsIsACaution() {
        Rig rig = rig(battery(12.8, 100, 1, 10), panelled(20, 50));
        assertThat(verdict(rig, "socket-count", load(SOCKET, 10, true))).isEqualTo(Verdict.PASS);
        assertThat(verdict(rig, "socket-count", load(SOCKET, 10, true), load(SOCKET, 10, true)))
                .isEqualTo(Verdict.CAUTION);
    }

    @Test
    void inverterCarriesWhatCanRunTogether() {
        Rig rig = rig(battery(12.8, 100, 1, 10), inverter(300, 12));
        assertThat(verdict(rig, "inverter-load", load(MAINS, 150, true), load(MAINS, 150, true)))
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(rig, "inverter-load", load(MAINS, 150, true), load(MAINS, 151, true)))
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void niceLoadsThatCouldTripTheInverterAreACaution() {
        Rig rig = rig(battery(12.8, 100, 1, 10), inverter(300, 12));
        assertThat(verdict(rig, "inverter-load", load(MAINS, 150, true), load(MAINS, 150, false)))
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(rig, "inverter-load", load(MAINS, 150, true), load(MAINS, 151, false)))
                .isEqualTo(Verdict.CAUTION);
    }

    @Test
    void outletsCarryWhatIsPluggedIn() {
        Rig rig = rig(battery(12.8, 100, 1, 10), panelled(20, 50));
        assertThat(verdict(rig, "outlet-load", load(SOCKET, 120, true))).isEqualTo(Verdict.PASS);
        assertThat(verdict(rig, "outlet-load", load(SOCKET, 121, true))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void storeGivesTheCurrent() {
        Rig rig = rig(battery(12, 20, 1, 10), inverter(300, 12));
        // 190 W at 0.9 and 6 W standing are 217.1 W, 18.1 A; 215 W are 20.4 A.
        assertThat(verdict(rig, "store-current", load(MAINS, 190, true))).isEqualTo(Verdict.PASS);
        assertThat(verdict(rig, "store-current", load(MAINS, 215, true))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void voltsOfStoreControllerInverterAndEnclosureAgree() {
        assertThat(verdict(rig(battery(24, 100, 1, 10), inverter(300, 24)), "bus-voltage"))
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(rig(battery(24, 100, 1, 10), inverter(300, 12)), "bus-voltage"))
                .isEqualTo(Verdict.FAIL);
        assertThat(verdict(rig(battery(48, 100, 1, 10), panelled(20, 50)), "bus-voltage"))
                .isEqualTo(Verdict.FAIL);
        Enclosure enclosure = new Enclosure(Invented.listing("E", 1, 1), 12, null, null, List.of());
        assertThat(verdict(rig(enclosure, battery(12.8, 100, 1, 10)), "bus-voltage"))
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(rig(enclosure, battery(24, 100, 1, 10)), "bus-voltage"))
                .isEqualTo(Verdict.FAIL);
    }

    /** 22 V open at 25 degC and -0.3 %/K is 24.97 V at -20 degC. */
    @Test
    void coldPanelStaysBelowTheControllersInput() {
        Panel panel = Invented.panel("P", 100, 100);
        Rig low = rig(battery(12, 100, 1, 10), panelled(20, 25), panel);
        assertThat(finding(low, -20, "panel-voltage").verdict()).isEqualTo(Verdict.PASS);
        assertThat(finding(low, -21, "panel-voltage").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(finding(low, Double.NaN, "panel-voltage").verdict())
                .as("unknown cold counts as the coldest")
                .isEqualTo(Verdict.FAIL);
    }

    /** 22 V open against 1.4 times 15.7 V and 15.8 V, 21.98 V and 22.12 V. */
    @Test
    void panelOfTooFewVoltsChargesNothing() {
        Panel panel = Invented.panel("P", 100, 100);
        assertThat(verdict(rig(battery(15.7, 100, 1, 10), panelled(20, 50), panel), "panel-voltage-low"))
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(rig(battery(15.8, 100, 1, 10), panelled(20, 50), panel), "panel-voltage-low"))
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void arrayMuchAboveTheControllersCurrentIsACaution() {
        Panel panel = Invented.panel("P", 180, 100);
        assertThat(verdict(rig(battery(12, 100, 1, 10), panelled(10, 50), panel), "controller-current"))
                .isEqualTo(Verdict.PASS);
        Panel larger = Invented.panel("P", 181, 100);
        assertThat(verdict(rig(battery(12, 100, 1, 10), panelled(10, 50), larger), "controller-current"))
                .isEqualTo(Verdict.CAUTION);
    }

    @Test
    void batteriesSideBySideStayWithinTheMakersNumber() {
        Battery battery = battery(12, 100, 2, 10);
        assertThat(verdict(assembled(new Chosen(battery, 2)), "parallel-limit")).isEqualTo(Verdict.PASS);
        assertThat(verdict(assembled(new Chosen(battery, 3)), "parallel-limit")).isEqualTo(Verdict.FAIL);
    }

    @Test
    void noMoreIsTakenThanThereIs() {
        Listing one =
                new Listing("B", "the only one", 0, "USD", LocalDate.of(2026, 1, 1), Condition.OWNED, 1, 10, "test");
        Battery battery = new Battery(one, new PlainStore(1000, 0.95, 0.95, 12, 50, 100), 4);
        assertThat(verdict(assembled(new Chosen(battery, 1)), "at-hand")).isEqualTo(Verdict.PASS);
        assertThat(verdict(assembled(new Chosen(battery, 2)), "at-hand")).isEqualTo(Verdict.FAIL);
    }

    @Test
    void partsThatAreNoRigAreSaidSo() {
        ReadyBox box = new ReadyBox(
                Invented.listing("X", 1, 1), new PlainStore(500, 0.95, 0.95, 12, 20, 50), null, null, List.of());
        assertThat(Assembly.of(List.of(new Chosen(Invented.panel("P", 100, 1), 1)))
                        .faults())
                .containsExactly(
                        "There is no store: neither a box nor a battery.", "P has no charge controller to feed.");
        assertThat(Assembly.of(List.of(new Chosen(box, 2), new Chosen(battery(12, 100, 1, 1), 1)))
                        .faults())
                .containsExactly(
                        "X is taken 2 times; only panels and batteries may be.",
                        "B has no place: X has its battery inside.");
        assertThat(Assembly.of(List.of(
                                new Chosen(battery(12, 100, 1, 1), 1),
                                new Chosen(inverter(300, 12), 1),
                                new Chosen(inverter(500, 12), 1)))
                        .faults())
                .containsExactly("I brings a second inverter; a rig has one.");
    }

    private static Verdict verdict(Rig rig, String rule, Load... loads) {
        return RuleBook.findings(rig, List.of(loads), new Site(-10, false)).stream()
                .filter(f -> f.rule().equals(rule))
                .map(Finding::verdict)
                .max(Verdict::compareTo)
                .orElse(Verdict.PASS);
    }

    private static Finding finding(Rig rig, double lowestDegC, String rule) {
        return RuleBook.findings(rig, List.of(), new Site(lowestDegC, false)).stream()
                .filter(f -> f.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private static Rig rig(Part... parts) {
        return assembled(Arrays.stream(parts).map(p -> new Chosen(p, 1)).toArray(Chosen[]::new));
    }

    private static Rig assembled(Chosen... chosen) {
        return Objects.requireNonNull(Assembly.of(List.of(chosen)).rig());
    }

    private static Load load(Supply supply, double watts, boolean essential) {
        return new SteadyLoad("load", supply, watts, essential, new Need.AlwaysOn(), RoomKind.INDOORS);
    }

    private static Battery battery(double volts, double amps, int parallel, double kg) {
        return new Battery(Invented.listing("B", 100, kg), new PlainStore(1000, 0.95, 0.95, volts, 50, amps), parallel);
    }

    private static Inverter inverter(double watts, double volts) {
        return new Inverter(
                Invented.listing("I", 100, 1),
                new InverterRating(watts, 0.9, 6, volts),
                List.of(new Outlet(MAINS, 2, watts, 1)));
    }

    private static ChargeController panelled(double amps, double mostV) {
        return new ChargeController(
                Invented.listing("C", 100, 1),
                new ControllerRating(amps, mostV, 12, 24, 0.95),
                List.of(new Outlet(SOCKET, 1, 120, 1)));
    }
}
