package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Storm;
import tideover.engine.proof.CarriedShare;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Gap;
import tideover.engine.rig.Rig;
import tideover.engine.search.Grammar;
import tideover.engine.site.MonthlyClimate;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/** Where somebody's health hangs on a load, every outage is asked for, whatever share the plan names. */
class MedicalAnswerTest {
    private static final Options OPTIONS = new Options(7, 2, 3, 2, 1);
    private static final Medical GOOD = new Medical(900, "its bell", "Aunt Vela", true, "hand pump");
    private static final Medical NO_PLAN = new Medical(900, "its bell", "Aunt Vela", true, "");
    private static final WeatherSource IMPORTED = new WeatherSource.Imported(new Invented(3).weather(2));

    @Test
    void theCheapestIsSoughtAmongThoseThatFailInNothing() {
        Answer usual = Advisor.size(question(null, 35, 0.5, null, IMPORTED), OPTIONS, Progress.SILENT);
        Answer medical = Advisor.size(question(GOOD, 35, 0.5, null, IMPORTED), OPTIONS, Progress.SILENT);

        ProvenRig cheap = Objects.requireNonNull(usual.rig());
        ProvenRig sure = Objects.requireNonNull(medical.rig());
        assertThat(cheap.proof().share().share()).isBetween(0.5, 0.999);
        assertThat(sure.proof().share().share()).isEqualTo(1);
        assertThat(sure.price().totalCents()).isGreaterThan(cheap.price().totalCents());
        assertThat(usual.medical()).isFalse();
        assertThat(cheap.medical()).isEmpty();
        assertThat(medical.medical()).isTrue();
        assertThat(medical.question().outage().targetShare())
                .as("the plan's own figure stays")
                .isEqualTo(0.5);
        assertThat(sure.medical()).singleElement().satisfies(note -> {
            assertThat(note.worst().nothingEndedIt()).isTrue();
            assertThat(note.worst().shortestHours()).isGreaterThanOrEqualTo(48);
            assertThat(note.verdict())
                    .contains("does not replace the second plan")
                    .doesNotContain(" met");
        });
    }

    @Test
    void aShareThatTheWholePlanWouldTakeIsNotEnough() {
        Rig rig = new Invented(11).rig(1500, 2, 12);
        Answer usual = Advisor.prove(question(null, 0.5, null, IMPORTED), rig, OPTIONS, Progress.SILENT);
        Answer medical = Advisor.prove(question(GOOD, 0.5, null, IMPORTED), rig, OPTIONS, Progress.SILENT);

        assertThat(usual.meets()).isTrue();
        assertThat(medical.meets()).isFalse();
        WorstCase worst = Objects.requireNonNull(medical.rig()).medical().get(0).worst();
        assertThat(worst.shortestHours())
                .isEqualTo(medical.rig().proof().hoursCarried().at(0))
                .isLessThan(48);
        assertThat(medical.rig().medical().get(0).verdict())
                .contains(String.format(Locale.ROOT, "was %.0f h of 48 h asked", Math.floor(worst.worstHours())))
                .contains("second plan must be ready from the first hour");
    }

    /** Any start, and still the days on which storms keep the panels in end it. */
    @Test
    void stormStartsCountToo() {
        Storm storm = new Storm(48, false);
        Rig rig = sunny();
        assertThat(Advisor.prove(question(GOOD, 0.5, null, IMPORTED), rig, OPTIONS, Progress.SILENT)
                        .meets())
                .isTrue();

        Answer stormy = Advisor.prove(question(GOOD, 0.5, storm, IMPORTED), rig, OPTIONS, Progress.SILENT);
        assertThat(stormy.meets()).isFalse();
        WorstCase worst = Objects.requireNonNull(stormy.rig()).medical().get(0).worst();
        assertThat(worst.worstHours()).isGreaterThanOrEqualTo(48);
        assertThat(worst.stormHours()).isLessThan(48);
        assertThat(worst.shortestHours()).isEqualTo(worst.stormHours());
    }

    /** A kind first year; the six others are not. */
    @Test
    void otherYearsMustNotEndItEither() {
        WeatherSource drawn = new WeatherSource.Generated(Invented.PLACE, climate());
        Options kindYear = new Options(7, 1, 6, 2, 1);
        Rig rig = new Invented(11).rig(1675, 2, 12);
        assertThat(Advisor.prove(question(null, 0.95, null, drawn), rig, kindYear, Progress.SILENT)
                        .meets())
                .isTrue();

        Answer medical = Advisor.prove(question(GOOD, 0.95, null, drawn), rig, kindYear, Progress.SILENT);
        assertThat(medical.meets()).isFalse();
        MedicalNote note = Objects.requireNonNull(medical.rig()).medical().get(0);
        assertThat(WorstCase.failed(note.worst().outages())).isZero();
        assertThat(WorstCase.failed(note.worst().confirmed())).isPositive();
        assertThat(note.worst().nothingEndedIt()).isFalse();
        assertThat(note.verdict())
                .contains("On 6 other years it ended sooner than asked in "
                        + WorstCase.failed(note.worst().confirmed()) + " of the outages walked.");
    }

    @Test
    void whatIsNotArrangedNoRigMakesGood() {
        Rig rig = new Invented(11).rig(9000, 2, 12);
        assertThat(Advisor.prove(question(GOOD, 0.5, null, IMPORTED), rig, OPTIONS, Progress.SILENT)
                        .meets())
                .isTrue();
        assertThat(Advisor.prove(question(NO_PLAN, 0.5, null, IMPORTED), rig, OPTIONS, Progress.SILENT)
                        .meets())
                .isFalse();
        assertThat(Advisor.size(question(NO_PLAN, 0.5, null, IMPORTED), OPTIONS, Progress.SILENT)
                        .rig())
                .isNull();
    }

    /** What has no outlet is in no walk: its hours say nothing, and are not told. */
    @Test
    void whatTheRigDoesNotFeedIsOffFromTheFirstMoment() {
        Invented invented = new Invented(12);
        Rig direct = Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(invented.battery("B", 4000, 1), 1), new Chosen(invented.controller("C", 20, 1), 1)))
                .rig());
        Answer answer = Advisor.prove(question(GOOD, 0.5, null, IMPORTED), direct, OPTIONS, Progress.SILENT);

        assertThat(answer.meets()).isFalse();
        MedicalNote note = Objects.requireNonNull(answer.rig()).medical().get(0);
        assertThat(note.fed()).isFalse();
        assertThat(note.gap().way()).isEqualTo(Gap.Way.BY_HAND);
        assertThat(note.verdict())
                .isEqualTo("No: this rig has no outlet that feeds breather. It is off from the first moment on.");
    }

    /** What was only just carried is said to be so. */
    @Test
    void whatIsLeftToSpareIsSaid() {
        CarriedShare all = Objects.requireNonNull(
                        Advisor.prove(question(GOOD, 0.5, null, IMPORTED), sunny(), OPTIONS, Progress.SILENT)
                                .rig())
                .proof()
                .share();
        assertThat(lasting(48.4, all)).contains("was 48 h, with 48 h asked. That leaves less than an hour to spare.");
        assertThat(lasting(53.9, all)).contains("was 53 h, with 48 h asked. That leaves 5 h to spare.");
        assertThat(lasting(96, all)).contains("was 96 h or more, with 48 h asked. Nothing walked");
    }

    private static String lasting(double hours, CarriedShare all) {
        WorstCase worst = new WorstCase(2, 48, 96, hours, Double.NaN, all, all, all, null, null, 3);
        return new MedicalNote("breather", GOOD, new Gap(300, Gap.Way.BY_HAND), true, worst).verdict();
    }

    private static Rig sunny() {
        return new Invented(11).rig(1500, 8, 60);
    }

    private static Question question(
            @Nullable Medical medical, double target, @Nullable Storm storm, WeatherSource weather) {
        return question(medical, 15, target, storm, weather);
    }

    private static Question question(
            @Nullable Medical medical, double watts, double target, @Nullable Storm storm, WeatherSource weather) {
        List<Load> loads = List.of(
                steady("breather", Invented.MAINS, watts, Nature.PLAIN.with(medical)),
                steady("lamp", Invented.SOCKET, 4, Nature.PLAIN));
        return new Question(
                "test",
                "",
                Invented.PLACE,
                weather,
                -12,
                Invented.MOUNT,
                false,
                RoomKind.INDOORS,
                false,
                loads,
                new Outage(List.of(0, 11), 48, target, 1, 0, 1, null, List.of(), storm),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 3_500, 9_000),
                new Grammar(3, 3),
                new Invented(5).parts(),
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
    }

    private static Load steady(String name, Supply supply, double watts, Nature nature) {
        return new SteadyLoad(name, supply, watts, true, new Need.AlwaysOn(), RoomKind.INDOORS, nature);
    }

    /** Invented, with dull winters. */
    private static MonthlyClimate climate() {
        double[] clearness = new double[12];
        double[] spread = new double[12];
        double[] ghi = new double[12];
        double[] degC = new double[12];
        double[] anomaly = new double[12];
        for (int month = 0; month < 12; month++) {
            double summer = Math.sin(Math.PI * month / 11);
            clearness[month] = 0.32 + 0.25 * summer;
            spread[month] = 0.15;
            ghi[month] = 1 + 5 * summer;
            degC[month] = 3 + 15 * summer;
            anomaly[month] = 3;
        }
        return new MonthlyClimate(
                Series.of(ghi),
                Series.of(clearness),
                Series.of(spread),
                0.4,
                Collections.nCopies(12, false),
                Series.of(degC),
                Series.of(degC),
                Series.of(degC),
                Series.of(anomaly),
                0.7,
                Series.of(0, 0, 0, 0),
                Series.of(0, 0, 0, 0),
                -20,
                "invented");
    }
}
