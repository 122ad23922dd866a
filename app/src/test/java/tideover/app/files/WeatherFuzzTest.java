package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Any bytes for weather. A whole year of rows is too much to be found by trying, so the first byte says where the others go: alone,
 * before a sound year of either form, into the middle of one, or packed.
 */
@Tag("fuzz")
@Timeout(180)
class WeatherFuzzTest {
    private static final byte[] TMY3 = WeatherFileTest.tmy3().getBytes(StandardCharsets.UTF_8);
    private static final byte[] PLAIN = WeatherFileTest.plainYear().getBytes(StandardCharsets.UTF_8);
    private static final byte[] PLAIN_ROWS = after(PLAIN, "dhi_w_m2\n");
    private static final byte[] TMY3_ROWS = after(TMY3, "Dry-bulb (C)\r\n");

    @DictionaryEntries({
        "# latitude_deg: 40",
        "# zone_h: -5",
        "time,ghi_w_m2,air_c,dhi_w_m2",
        "2019-02-29T00:00,0,5.0,0",
        "2020-02-29T00:00,0,5.0,0",
        "02/29/1996,01:00,0,0,0,5",
        ",-9900,",
        "1e999",
        "NaN"
    })
    @MethodSource("sound")
    @FuzzTest(maxDuration = "1m")
    void givesWeatherOrProblems(byte[] tried) {
        byte[] file = file(tried);
        Promise.of(() -> read(file)).ifPresent(content -> {
            assertThat(content.lowestDegC()).isBetween(-80.0, 60.0);
            assertThat(content.place().name().codePoints().noneMatch(Reading::cannotBeShown))
                    .isTrue();
        });
    }

    static WeatherFile.Content read(byte[] file) {
        Reading reading = new Reading();
        WeatherFile.Content content = WeatherFile.read(
                reading, any -> new ByteArrayInputStream(file), "weather.csv", "weather.csv", PlaceFigures.NONE);
        reading.throwIfWrong();
        if (content == null) {
            throw new IllegalStateException("neither weather nor problems");
        }
        return content;
    }

    private static byte[] file(byte[] tried) {
        if (tried.length < 3) {
            return tried;
        }
        byte[] rest = Arrays.copyOfRange(tried, 1, tried.length);
        return switch (tried[0]) {
            case 'p' -> joined(rest, PLAIN_ROWS);
            case 't' -> joined(rest, TMY3_ROWS);
            case 'P' -> into(PLAIN, rest);
            case 'T' -> into(TMY3, rest);
            case 'z' -> packed(rest);
            default -> rest;
        };
    }

    /** Two bytes say where, the others replace what stands there. */
    private static byte[] into(byte[] sound, byte[] rest) {
        byte[] file = sound.clone();
        int at = ((rest[0] & 0xff) << 8 | rest[1] & 0xff) * 5 % sound.length;
        int length = Math.min(rest.length - 2, sound.length - at);
        System.arraycopy(rest, 2, file, at, length);
        return file;
    }

    private static byte[] packed(byte[] rest) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(rest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] after(byte[] whole, String end) {
        String text = new String(whole, StandardCharsets.UTF_8);
        return text.substring(text.indexOf(end) + end.length()).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] joined(byte[] first, byte[] second) {
        byte[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }

    static Stream<byte[]> sound() {
        String head = new String(PLAIN, 0, PLAIN.length - PLAIN_ROWS.length, StandardCharsets.UTF_8);
        String typical = new String(TMY3, 0, TMY3.length - TMY3_ROWS.length, StandardCharsets.UTF_8);
        return Stream.of(
                        "p" + head,
                        "p\uFEFF" + head,
                        "t" + typical,
                        "P\u0000\u0050,,,,\n",
                        "T\u0000\u0050\r\n02/29/1996,01:00,0,0,0,5\r\n",
                        "z" + head,
                        "-" + head + "2019-01-01T00:00,0,5.0,0\n")
                .map(text -> text.getBytes(StandardCharsets.UTF_8));
    }
}
