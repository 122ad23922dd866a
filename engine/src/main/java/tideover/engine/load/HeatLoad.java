package tideover.engine.load;

import java.util.List;
import tideover.engine.quantity.Require;
import tideover.engine.site.RoomKind;

/**
 * A boiler's circulator or a furnace's blower, and the home that it keeps warm: fuel gives the heat, electricity lets it
 * out. Switched by the home's thermostat.
 *
 * @param runningW  of circulator or blower with the controls, while heat is let out
 * @param standbyW  of the controls all the time
 * @param home      that is heated
 * @param limit     temperature that it must not fall below
 */
public record HeatLoad(
        String name,
        Supply supply,
        double runningW,
        double standbyW,
        Home home,
        Need.Above limit,
        RoomKind room,
        Nature nature)
        implements KeepingLoad {
    /**
     * One temperature: {@code dT/dt = (outdoors + gain + lift while heated - T) / tau}.
     *
     * @param liftK    how much warmer than outdoors, {@link #GAIN_K} apart, the heat keeps it when it never stops: the
     *                 temperature inside less that of the coldest day on which it just holds, less that gain
     * @param tauHours how slowly it cools: hours until 63 % of the way to the outdoor temperature
     * @param setDegC  mean temperature that the thermostat keeps
     * @param bandK    from its switching off to its switching on
     */
    public record Home(double liftK, double tauHours, double setDegC, double bandK) {
        /** Warmth of people, sun and cooking, K; common practice, no source. */
        public static final double GAIN_K = 3;

        public Home {
            Require.within(5, 100, "liftK", liftK, "K");
            Require.within(1, 500, "tauHours", tauHours, "h");
            Require.within(0, 30, "setDegC", setDegC, "degC");
            Require.within(0.1, 5, "bandK", bandK, "K");
        }

        /** With walls that let so many times the heat through: it is held less warm and cools sooner. */
        public Home leakier(double times) {
            return new Home(liftK / times, tauHours / times, setDegC, bandK);
        }
    }

    public HeatLoad {
        Require.text("name", name);
        Require.above(0, "runningW", runningW, "W");
        Require.within(0, runningW, "standbyW", standbyW, "W");
        Require.within(-50, home.setDegC(), "limit", limit.limitDegC(), "degC");
    }

    @Override
    public Need need() {
        return limit;
    }

    @Override
    public List<DayWindow> onHours(double noonHour) {
        return List.of(DayWindow.ALL_DAY);
    }

    /** On a day at 0 degC. */
    @Override
    public double wantedWhPerDay() {
        double share = Math.max(0, Math.min(1, (home.setDegC() - Home.GAIN_K) / home.liftK()));
        return 24 * (standbyW + (runningW - standbyW) * share);
    }

    @Override
    public HeatLoad drawing(double times) {
        return new HeatLoad(name, supply, runningW * times, standbyW * times, home, limit, room, nature);
    }

    public HeatLoad with(Home changed) {
        return new HeatLoad(name, supply, runningW, standbyW, changed, limit, room, nature);
    }
}
