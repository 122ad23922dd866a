package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tideover.engine.load.Supply;
import tideover.engine.part.Outlet;

/**
 * The outlets of a part in one cell: {@code 2x 120 V AC 60 Hz NEMA 5-15 600 W; 1x 5 V DC USB-A 30 W 90 %}. The watts are
 * what all of one kind give together; the percentage is what a converter in the outlet lets through.
 */
final class OutletsText {
    static final String EXPECTED = "outlets, such as 2x 120 V AC 60 Hz NEMA 5-15 600 W; 1x 5 V DC USB-A 30 W 90 %";
    private static final String NUMBER = "([0-9]{1,6}(?:\\.[0-9]{1,3})?)";
    private static final Pattern OUTLET =
            Pattern.compile("([0-9]{1,4})\\s*[x\u00D7]\\s*(.*\\S)\\s+" + NUMBER + "\\s*W(?:\\s+" + NUMBER + "\\s*%)?");
    private static final int MOST_KINDS = 20;

    /** Volts this far off the battery's need a converter between. */
    private static final double DIFFERENT_VOLTS = 0.25;

    private OutletsText() {}

    /**
     * The outlets of a row, held against the part that carries them.
     *
     * @param ac        whether it has an inverter
     * @param needed    whether it is nothing without outlets
     * @param leastBusV lowest volts of a battery that may be behind them; NaN where not known
     */
    static List<Outlet> of(Row row, String kind, boolean ac, boolean needed, double leastBusV, double mostBusV) {
        String text = row.cell("outlets");
        if (text.isEmpty()) {
            if (needed) {
                row.tellEmpty("outlets", OutletsText.EXPECTED);
            }
            return List.of();
        }
        List<Outlet> outlets = read(row.reading(), row.where("outlets"), text);
        for (Outlet outlet : outlets) {
            Supply supply = outlet.supply();
            if (supply.isAc() && !ac) {
                row.problem(
                        "outlets",
                        "the outlet " + supply.words(),
                        kind.equals("sockets")
                                ? "direct current only, for a board of sockets has no inverter"
                                : "direct current only, for this " + kind + " has no inverter",
                        kind.equals("box") || kind.equals("enclosure") ? "Fill the inverter's columns." : "");
            }
            if (!supply.isAc() && kind.equals("inverter")) {
                row.problem("outlets", "the outlet " + supply.words(), "alternating current only from an inverter", "");
            }
            boolean converts = supply.volts() < leastBusV * (1 - DIFFERENT_VOLTS)
                    || supply.volts() > mostBusV * (1 + DIFFERENT_VOLTS);
            if (!supply.isAc() && converts && outlet.efficiency() == 1) {
                row.problem(
                        "outlets",
                        "the outlet " + supply.words() + " with no efficiency",
                        "the efficiency of its converter, for its volts are not the battery's",
                        "Write it after the watts, such as 90 %.");
            }
        }
        return outlets;
    }

    /** The outlets that can be read; what cannot is told. */
    static List<Outlet> read(Reading reading, String where, String text) {
        List<Outlet> outlets = new ArrayList<>();
        String[] typed = text.replaceAll("\\s+", " ").split(";", -1);
        if (typed.length > MOST_KINDS) {
            reading.problem(where, typed.length + " kinds of outlet", "at most " + MOST_KINDS, "");
            return outlets;
        }
        for (int i = 0; i < typed.length; i++) {
            String one = typed[i].strip();
            if (one.isEmpty() && i == typed.length - 1 && i > 0) {
                continue; // a semicolon at the end does no harm
            }
            Matcher match = OUTLET.matcher(one);
            if (!match.matches()) {
                reading.problem(where, Reading.quoted(one), EXPECTED, suggestion(one));
                continue;
            }
            Supply supply = SupplyText.read(match.group(2));
            if (supply == null) {
                reading.problem(where, Reading.quoted(one), EXPECTED, SupplyText.suggestion(match.group(2)));
                continue;
            }
            int count = Integer.parseInt(match.group(1));
            double maxW = Double.parseDouble(match.group(3));
            boolean stated = match.group(4) != null;
            double percent = stated ? Double.parseDouble(match.group(4)) : 100;
            if (count < 1 || count > 100) {
                reading.problem(where, Reading.quoted(one), "1 to 100 of one kind", "");
            } else if (!(maxW > 0 && maxW <= 100_000)) {
                reading.problem(where, Reading.quoted(one), "watts above 0 and at most 100000", "");
            } else if (stated && supply.isAc()) {
                reading.problem(
                        where, Reading.quoted(one), "no percentage for AC: the inverter's own efficiency counts", "");
            } else if (!(percent >= 10 && percent <= 100)) {
                reading.problem(where, Reading.quoted(one), "an efficiency from 10 % to 100 %", "");
            } else {
                outlets.add(new Outlet(supply, count, maxW, percent / 100));
            }
        }
        return outlets;
    }

    private static String suggestion(String one) {
        if (!one.matches("[0-9]+\\s*[x\u00D7].*")) {
            return "Begin with how many there are, such as 2x.";
        }
        return one.matches(".*[0-9]\\s*W.*") ? "" : "End with the watts they give together.";
    }
}
