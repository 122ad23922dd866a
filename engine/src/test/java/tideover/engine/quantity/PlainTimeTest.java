package tideover.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Spans of time as people say them. */
class PlainTimeTest {
    @Test
    void inTheUnitThatPeopleWouldUse() {
        assertThat(PlainTime.words(0)).isEqualTo("0 s");
        assertThat(PlainTime.words(0.004)).isEqualTo("less than 0.01 s");
        assertThat(PlainTime.words(0.02)).isEqualTo("0.02 s");
        assertThat(PlainTime.words(10)).isEqualTo("10 s");
        assertThat(PlainTime.words(60)).isEqualTo("1 min");
        assertThat(PlainTime.words(90)).isEqualTo("90 s");
        assertThat(PlainTime.words(299)).isEqualTo("5 min");
        assertThat(PlainTime.words(150)).isEqualTo("2.5 min");
        assertThat(PlainTime.words(3600)).isEqualTo("1 h");
        assertThat(PlainTime.words(5400)).isEqualTo("90 min");
        assertThat(PlainTime.words(86_400)).isEqualTo("24 h");
    }
}
