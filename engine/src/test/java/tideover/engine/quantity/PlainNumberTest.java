package tideover.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainNumberTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "2.0, 2",
        "1.5, 1.5",
        "12.8, 12.8",
        "0.12344, 0.1234",
        "1500, 1500",
        "123456.7, 123457",
        "-40, -40",
        "NaN, NaN"
    })
    void isWrittenAsPeopleDo(double value, String shown) {
        assertThat(PlainNumber.of(value)).isEqualTo(shown);
    }
}
