package tideover.engine.outage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.quantity.ModelYear;
import tideover.engine.site.Weather;

class StormDaysTest {
    /** February of five years: 140 days, of which a twentieth is 7. */
    @Test
    void aTwentiethOfTheAskedDaysIsDarkestAndColdest() {
        Weather weather = new Invented(3).weather(5);
        StormDays storms = StormDays.of(weather, List.of(1));
        int[] darkest =
                IntStream.range(0, weather.days()).filter(storms::isDarkest).toArray();
        assertThat(darkest).hasSize(7);
        assertThat(IntStream.range(0, weather.days()).filter(storms::isColdest).count())
                .isEqualTo(7);
        double brightestOfThem =
                IntStream.of(darkest).mapToDouble(weather::dayKwhM2).max().orElseThrow();
        long darker = IntStream.range(0, weather.days())
                .filter(day -> ModelYear.monthOfDay(day % ModelYear.DAYS) == 1)
                .filter(day -> weather.dayKwhM2(day) < brightestOfThem)
                .count();
        assertThat(darker).isEqualTo(6);
    }
}
