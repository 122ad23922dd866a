package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tideover.engine.answer.Question;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.electronics.Tracking;
import tideover.engine.electronics.Wave;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.Breaker;
import tideover.engine.part.Cable;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.Condition;
import tideover.engine.part.Fitting;
import tideover.engine.part.Fuse;
import tideover.engine.part.Inverter;
import tideover.engine.part.Lug;
import tideover.engine.part.Panel;
import tideover.engine.part.PanelBranch;
import tideover.engine.part.PanelLead;
import tideover.engine.part.Part;
import tideover.engine.part.RatedStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SmallPart;
import tideover.engine.part.Tool;
import tideover.engine.rig.Assembly;
import tideover.engine.site.Stations;
import tideover.engine.why.Stated;

/** The scenario that comes with the program reads without a problem. */
class ExampleTest {
    static final Stations STATIONS = StationTable.load();

    @Test
    void theExamplePlanReads() {
        Question question = PlanFile.read(folder().resolve("plan.yaml"), STATIONS);

        assertThat(question.parts()).hasSizeBetween(170, 220);
        assertThat(question.about()).startsWith("Invented.");
        double whPerDay = question.loads().stream()
                .filter(Load::essential)
                .mapToDouble(Load::wantedWhPerDay)
                .sum();
        assertThat(whPerDay).isBetween(400.0, 900.0);
        assertThat(question.cautions()).isEmpty();
    }

    /** The one in which every way competes: what is owned comes from a list of its own. */
    @Test
    void theOrchardReads() throws IOException {
        Question question = PlanFile.read(folder().resolve("orchard.yaml"), STATIONS);

        assertThat(question.about()).startsWith("Invented.");
        assertThat(question.parts()).hasSizeLessThanOrEqualTo(25);
        assertThat(question.parts())
                .extracting(part -> part.listing().condition())
                .contains(Condition.NEW, Condition.USED, Condition.OWNED);
        assertThat(question.parts().stream().map(Object::getClass).distinct()).hasSize(11);
        assertThat(question.cautions()).hasSize(1).first().asString().contains("Wellpost cooler of 60 L");
        for (String name : List.of("orchard-shop.csv", "orchard-shelf.yaml")) {
            assertThat(Files.readAllLines(folder().resolve(name)).get(0))
                    .startsWith("# Every part, maker's name, price and figure in this file is invented.");
        }
    }

    @Test
    void everyFileOfPartsIsNamedAndSaysThatItIsInvented() throws IOException {
        List<String> named = ExampleParts.names(Files.readString(folder().resolve("plan.yaml")));
        try (Stream<Path> files = Files.list(folder().resolve("parts"))) {
            assertThat(files.map(file -> "parts/" + file.getFileName())).containsExactlyInAnyOrderElementsOf(named);
        }
        for (String name : named) {
            assertThat(Files.readAllLines(folder().resolve(name)).get(0))
                    .isEqualTo("# Every part, maker's name, price and figure in this file is invented."
                            + " Columns: docs/parts-file.md");
        }
    }

    /** Each form that a row may have is there to be copied from. */
    @Test
    void theExamplePartsShowEveryForm() {
        List<Part> parts =
                PlanFile.read(folder().resolve("plan.yaml"), STATIONS).parts();
        List<RatedStore> rated = new ArrayList<>();
        EnumSet<Tracking> tracking = EnumSet.noneOf(Tracking.class);
        for (Part part : parts) {
            if (part instanceof Battery battery && battery.store() instanceof RatedStore store) {
                rated.add(store);
            }
            if (part instanceof ChargeController controller) {
                tracking.add(controller.rating().tracking());
            }
        }

        assertThat(rated)
                .extracting(RatedStore::chemistry)
                .contains(Chemistry.FLOODED_LEAD, Chemistry.AGM_LEAD, Chemistry.IRON_PHOSPHATE);
        assertThat(rated).extracting(store -> store.guard().coldLockOut()).contains(Stated.YES, Stated.NO);
        assertThat(rated)
                .anyMatch(store -> store.heater().watts() > 0)
                .anyMatch(store -> store.worth().equals(RatedStore.Worth.measured(0.68)));
        assertThat(tracking).containsExactlyInAnyOrder(Tracking.values());
        assertThat(parts)
                .hasAtLeastOneElementOfType(Charger.class)
                .anyMatch(part -> part instanceof Inverter inverter
                        && inverter.rating().loss().perW() > 0
                        && inverter.rating().surge().known()
                        && inverter.rating().wave() == Wave.SINE);
    }

    /** Every kind, use and job can be had, and of each kind that fails quietly there is one to fall for. */
    @Test
    void theExampleSmallPartsShowEveryForm() throws IOException {
        List<SmallPart> parts =
                PlanFile.read(folder().resolve("plan.yaml"), STATIONS).smallParts();

        assertThat(Files.readAllLines(folder().resolve("small-parts.csv")).get(0))
                .contains("Every small part, maker's name, price and figure in this file is invented.");
        assertThat(parts).extracting(SmallPart::kind).containsAll(SmallPartsFile.KINDS);
        assertThat(of(parts, Fitting.class)).extracting(Fitting::use).containsExactlyInAnyOrder(Fitting.Use.values());
        assertThat(of(parts, Tool.class)).extracting(Tool::job).containsExactlyInAnyOrder(Tool.Job.values());
        assertThat(of(parts, Cable.class)).extracting(Cable::metal).contains(Cable.Metal.values());
        Set<ConductorSize> lugSizes =
                of(parts, Lug.class).stream().map(Lug::size).collect(Collectors.toSet());
        assertThat(of(parts, Cable.class)).allMatch(cable -> lugSizes.contains(cable.size()));
        assertThat(of(parts, Fuse.class))
                .anyMatch(fuse -> Double.isNaN(fuse.interruptingA()))
                .anyMatch(fuse -> fuse.interruptingA() >= 20_000);
        assertThat(of(parts, Breaker.class))
                .anyMatch(breaker -> Double.isNaN(breaker.mostDcV()))
                .extracting(Breaker::polarised)
                .contains(Stated.YES, Stated.NO);
        Set<String> panelPlugs = parts(Panel.class)
                .map(panel -> panel.tail().connector())
                .filter(make -> !make.isEmpty())
                .collect(Collectors.toSet());
        assertThat(panelPlugs).hasSize(2);
        assertThat(parts(ReadyBox.class)
                        .map(ReadyBox::controller)
                        .filter(Objects::nonNull)
                        .map(rating -> rating.input().plug()))
                .isNotEmpty()
                .allMatch(panelPlugs::contains);
        assertThat(of(parts, PanelLead.class)).extracting(PanelLead::connector).containsAll(panelPlugs);
        assertThat(of(parts, PanelBranch.class))
                .extracting(PanelBranch::connector)
                .containsAll(panelPlugs);
    }

    private static <P extends Part> Stream<P> parts(Class<P> kind) {
        return PlanFile.read(folder().resolve("plan.yaml"), STATIONS).parts().stream()
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    private static <P> List<P> of(List<SmallPart> parts, Class<P> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    @Test
    void theExampleRigIsMadeOfItsParts() {
        List<Part> parts =
                PlanFile.read(folder().resolve("plan.yaml"), STATIONS).parts();
        RigFile.RigRequest rig = RigFile.read(folder().resolve("rig.yaml"), parts);

        assertThat(Assembly.of(rig.chosen()).faults()).isEmpty();
    }

    /** Tests run in the module's folder, the examples lie beside it. */
    static Path folder() {
        Path beside = Path.of("..", "examples");
        return Files.isDirectory(beside) ? beside : Path.of("examples");
    }
}
