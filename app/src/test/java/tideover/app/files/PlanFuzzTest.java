package tideover.app.files;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.answer.Question;

/** Any bytes for a plan, beside sound files of parts and of weather. */
@Tag("fuzz")
@Timeout(180)
class PlanFuzzTest {
    private static final Beside BESIDE = Beside.texts(Map.of(
            "parts.csv", Sample.PARTS, SmallSample.NAME, SmallSample.FILE, "weather.csv", WeatherFileTest.tmy3()));

    @DictionaryEntries({
        "help: - engine: {hours: [08:00-10:00], gives: 1000 W}",
        "    start: {plug meter: 8 W}",
        "    start: {horsepower: 1/6, code: K, lasts: 0.4 s, power factor: 0.6, alone: by a timer}",
        "    like: ",
        "    need: {between: 2 degC, and: 8 degC}",
        "    meter: {uses: 0.7-0.9 kWh, in a room of: 21 degC}",
        "    duty: {hours: [10:00-14:00]}",
        "shade: [{hours: 07:00-09:00, lost: 60 %}]",
        "rolling: {off: 4 h, on: 2 h}",
        "hourly file: weather.csv",
        "near: {latitude: 46.2 deg, longitude: -123.8 deg}",
        "wiring: {panels: 12 m, links: [30 cm, 45 cm]}",
        "tax: 8.875 %",
        "1,000",
        "1e999",
        "30-60",
        " to ",
        "degF",
        "kWh",
        " USD"
    })
    @MethodSource("sound")
    @FuzzTest(maxDuration = "1m")
    void givesAQuestionOrProblems(byte[] plan) {
        Promise.of(() -> read(plan));
    }

    static Question read(byte[] plan) {
        Reading reading = new Reading();
        String text = FileText.decode(reading, plan, "plan.yaml", "a plan");
        reading.throwIfWrong();
        return PlanFile.read("plan.yaml", String.valueOf(text), BESIDE, ExampleTest.STATIONS);
    }

    static Stream<byte[]> sound() throws IOException {
        String example =
                ExampleParts.planOfOneFile(Files.readString(ExampleTest.folder().resolve("plan.yaml")));
        String kept =
                Kept.plan(Kept.FREEZER + Kept.REFRIGERATOR + Kept.MEDICINE + Kept.COOLER + Kept.PUMP + Kept.BOILER);
        return List.of(
                        Sample.PLAN,
                        SmallSample.PLAN,
                        example,
                        kept,
                        Sample.PLAN.replace("station: Astoria Regional Airport OR", "hourly file: weather.csv"),
                        Sample.PLAN.replace("\n", "\r\n"),
                        "\uFEFF" + Sample.PLAN)
                .stream()
                .map(text -> text.getBytes(StandardCharsets.UTF_8));
    }
}
