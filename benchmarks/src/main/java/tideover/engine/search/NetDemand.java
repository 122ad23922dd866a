package tideover.engine.search;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import tideover.engine.Invented;
import tideover.engine.proof.Drawdown;
import tideover.engine.quantity.ModelYear;
import tideover.engine.site.Weather;

/**
 * The series that the screening is timed on: thirty invented years, hour by hour, a panel and a steady load. The plain
 * loop in C reads the same series from a file, so that all of them do the same work.
 */
public final class NetDemand {
    static final int YEARS = 30;
    static final int STARTS = YEARS * ModelYear.HOURS;
    static final int LENGTH_HOURS = 72;

    /** For starts with the panels out at once. */
    static final double[] NO_GLOOM = {};

    private static final double WATTS_PER_WM2 = 0.3;
    private static final double LOAD_W = 45;

    private NetDemand() {}

    /** Wh into the store in each step, at so many steps an hour; as long as the last start's outage needs. */
    static double[] gainWh(int stepsPerHour) {
        Weather weather = new Invented(1).weather(YEARS);
        double[] gain = new double[(STARTS + LENGTH_HOURS - 1) * stepsPerHour];
        for (int i = 0; i < gain.length; i++) {
            double sunW = WATTS_PER_WM2 * weather.ghiWm2().at(i / stepsPerHour % weather.hours());
            gain[i] = (sunW - LOAD_W) / stepsPerHour;
        }
        return gain;
    }

    /** Plain double loop over starts: the greatest drawdown of each window. */
    static double[] plainLoop(double[] gainWh, int starts, int length) {
        double[] needed = new double[starts];
        for (int start = 0; start < starts; start++) {
            double k = 0;
            double most = 0;
            for (int i = start; i < start + length; i++) {
                k = Math.max(0, k - gainWh[i]);
                most = Math.max(most, k);
            }
            needed[start] = most;
        }
        return needed;
    }

    /** Writes the hourly series as doubles in this machine's byte order and prints starts, length and the sum of needs. */
    public static void main(String[] args) throws IOException {
        double[] gain = gainWh(1);
        ByteBuffer bytes = ByteBuffer.allocate(gain.length * Double.BYTES).order(ByteOrder.nativeOrder());
        bytes.asDoubleBuffer().put(gain);
        Files.write(Path.of(args[0]), bytes.array());
        double[] plain = plainLoop(gain, STARTS, LENGTH_HOURS);
        double[] screened = Drawdown.neededWh(NO_GLOOM, gain, STARTS, 1, 0, LENGTH_HOURS, 1);
        double sum = 0;
        for (int i = 0; i < STARTS; i++) {
            if (!(Math.abs(plain[i] - screened[i]) < 1e-6)) {
                throw new IllegalStateException("start " + i + ": " + plain[i] + " and " + screened[i] + " Wh");
            }
            sum += screened[i];
        }
        System.out.println(STARTS + " " + LENGTH_HOURS + " " + sum);
    }
}
