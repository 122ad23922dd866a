package tideover.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.why.Basis;

/** Usual loads: ranges that are ranges, sources that are told, words that mean one thing. */
class UsualLoadsTest {
    private static Usual usual(String word) {
        return UsualLoads.of(word).orElseThrow();
    }

    private static List<Usual> like(String text) {
        List<Usual> found = UsualLoads.search(text);
        assertThat(found).as(text).isNotEmpty();
        return found;
    }

    @Test
    void everyEntryIsARangeWithASourceAndAQuestion() {
        assertThat(UsualLoads.all()).hasSizeGreaterThan(20).allSatisfy(usual -> {
            assertThat(usual.leastW()).isPositive().isLessThan(usual.usualW());
            assertThat(usual.mostW()).isGreaterThan(usual.usualW());
            assertThat(usual.source()).isNotBlank();
            assertThat(usual.measure()).endsWith(".");
            assertThat(usual.ask()).isNotEmpty().allMatch(ask -> ask.endsWith(".") || ask.endsWith("?"));
            assertThat(usual.basis()).isNotIn(Basis.MEASURED, Basis.YOURS, Basis.MAKER);
            if (usual.basis() == Basis.FROM_MEMORY) {
                assertThat(usual.source()).contains("from memory");
            }
        });
    }

    @Test
    void everyWordMeansOneThing() {
        Set<String> seen = new HashSet<>();
        for (Usual usual : UsualLoads.all()) {
            assertThat(seen.add(usual.word())).as(usual.word()).isTrue();
            assertThat(usual(usual.word())).isEqualTo(usual);
            for (String other : usual.alsoCalled()) {
                assertThat(seen.add(other)).as(other).isTrue();
                assertThat(usual(other)).isEqualTo(usual);
            }
        }
        assertThat(usual("  Sump PUMP 1/3   hp")).isEqualTo(usual("sump pump, 1/3 hp"));
        assertThat(UsualLoads.of("sump pump")).isEmpty();
        assertThat(UsualLoads.search("pump sump"))
                .extracting(Usual::word)
                .containsExactly("sump pump, 1/4 hp", "sump pump, 1/3 hp", "sump pump, 1/2 hp");
        assertThat(UsualLoads.search("")).isEqualTo(UsualLoads.all());
    }

    /** Through the whole range, not only for the usual one. */
    @Test
    void startsAreNeverBelowWhatRuns() {
        List<Usual> motors =
                UsualLoads.all().stream().filter(usual -> usual.start() != null).toList();
        assertThat(motors).hasSizeGreaterThan(8).allSatisfy(usual -> {
            for (double watts : new double[] {usual.leastW(), usual.usualW(), usual.mostW(), 3 * usual.mostW()}) {
                double runningVa = watts / usual.powerFactor();
                Start start = Objects.requireNonNull(usual.start(runningVa));
                assertThat(start.va(runningVa))
                        .as("%s at %.0f W", usual.word(), watts)
                        .isGreaterThan(2 * runningVa);
            }
        });
    }

    @Test
    void theStartGrowsWithTheDrawAndNeverShrinks() {
        Usual pump = usual("sump pump, 1/3 hp");
        double usualVa = pump.usualVa();
        double typedVa = Objects.requireNonNull(pump.start()).typedVa();
        assertThat(Objects.requireNonNull(pump.start(2 * usualVa)).typedVa()).isCloseTo(2 * typedVa, within(1e-9));
        assertThat(Objects.requireNonNull(pump.start(usualVa / 2)).typedVa()).isEqualTo(typedVa);
        assertThat(usual("lamp").start(100)).isNull();
    }

    @Test
    void whereHealthHangsOnItTheMostIsReckonedWith() {
        assertThat(like("oxygen")).allSatisfy(usual -> {
            assertThat(usual.reckonedW()).isEqualTo(usual.mostW());
            assertThat(usual.ask()).anyMatch(ask -> ask.contains("maker of the device and the care team decide"));
        });
        assertThat(like("sleep")).hasSize(2).allMatch(Usual::medical);
        assertThat(usual("router").reckonedW()).isEqualTo(usual("router").usualW());
        assertThat(UsualLoads.all())
                .filteredOn(Usual::medical)
                .allSatisfy(usual -> assertThat(usual.ask()).anyMatch(ask -> ask.contains("care team")));
    }

    @Test
    void whatHangsOnTheWiresOfTheHouse() {
        assertThat(like("well pump")).allMatch(Usual::hardWired);
        assertThat(usual("boiler circulator").hardWired()).isTrue();
        assertThat(usual("furnace blower")).matches(Usual::hardWired).matches(Usual::sensesFlame);
        assertThat(like("sump")).noneMatch(Usual::hardWired);
        assertThat(like("sump"))
                .allSatisfy(usual -> assertThat(usual.ask()).anyMatch(ask -> ask.contains("hard-wired: yes")));
        assertThat(UsualLoads.all())
                .filteredOn(Usual::sensesFlame)
                .allSatisfy(usual -> assertThat(usual.ask()).anyMatch(ask -> ask.contains("test it on the rig")));
    }
}
