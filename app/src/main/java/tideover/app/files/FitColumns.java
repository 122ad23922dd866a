package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.BatteryCase;
import tideover.engine.part.Dimensions;
import tideover.engine.part.Housing;

/** How a battery is built, and what an enclosure has room, terminals and air for. Every cell may stay empty. */
final class FitColumns {
    static final List<String> BATTERY = List.of("size_mm", "terminals");
    static final String RAIN = "keeps_rain_out";
    private static final String LEADS = "brings_leads";
    static final List<String> ENCLOSURE = List.of("room_mm", "takes_terminals", "holds_kg", "vent_cm2", RAIN, LEADS);

    static final String RAIN_WORDS = "whether it may stand in the rain";

    private static final String NUMBER = "([0-9]{1,5}(?:\\.[0-9]{1,2})?)";
    private static final Pattern SIZE = Pattern.compile(String.join("\\s*[xX\u00D7]\\s*", NUMBER, NUMBER, NUMBER));
    private static final Range MM = Range.from(5, 5000).likely(30, 1500);
    private static final int LONGEST = 40;
    private static final int MOST_TERMINALS = 20;

    private FitColumns() {}

    static BatteryCase casing(Row row) {
        Dimensions size = size(row, "size_mm", "the battery's length, width and height");
        String terminals = row.has("terminals") ? row.text("terminals", "its terminals, such as M8 stud", LONGEST) : "";
        if (terminals.contains(";")) {
            row.problem("terminals", Reading.quoted(terminals), "the one kind that this battery has", "");
        }
        return new BatteryCase(size, terminals);
    }

    static Housing housing(Row row) {
        Dimensions room = size(row, "room_mm", "length, width and height of the room for batteries");
        List<String> terminals = severalTerminals(row);
        double holdsKg = row.numberIfAny(
                "holds_kg",
                "what its batteries may weigh together",
                "kg",
                Range.above(0, 10_000).likely(1, 500));
        double ventCm2 = row.numberIfAny(
                "vent_cm2",
                "the free area of its air openings",
                "cm2",
                Range.from(0, 10_000).likely(0, 500));
        return new Housing(
                room,
                terminals,
                holdsKg,
                ventCm2,
                row.stated(RAIN, RAIN_WORDS),
                row.stated(LEADS, "whether it comes with leads for the battery and a fuse in them"));
    }

    private static @Nullable Dimensions size(Row row, String column, String what) {
        String text = row.cell(column);
        if (text.isEmpty()) {
            return null;
        }
        String expected = what + ", each " + MM.words("mm") + ", such as 330x172x215";
        Matcher match = SIZE.matcher(text);
        if (!match.matches()) {
            row.problem(
                    column,
                    Reading.quoted(text),
                    expected,
                    text.matches(".*mm\\s*|.*[0-9]\\s*[*,/].*") ? "Put x between them, and no unit." : "");
            return null;
        }
        double[] mm = new double[3];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = Double.parseDouble(match.group(i + 1));
            if (!MM.holds(mm[i])) {
                row.problem(column, Reading.quoted(text), expected, "");
                return null;
            }
            if (!MM.likely(mm[i])) {
                row.caution(column, Range.shown(mm[i], "mm") + " is taken, but is unlikely.");
            }
        }
        return new Dimensions(mm[0], mm[1], mm[2]);
    }

    private static List<String> severalTerminals(Row row) {
        List<String> kinds = new ArrayList<>();
        if (!row.has("takes_terminals")) {
            return kinds;
        }
        String expected = "terminals that its leads take, such as M8 stud; post";
        String text = row.text("takes_terminals", expected, MOST_TERMINALS * LONGEST);
        for (String typed : text.split(";")) {
            String kind = typed.strip();
            if (kind.isEmpty() || kind.length() > LONGEST) {
                row.problem("takes_terminals", Reading.quoted(text), expected, "");
                return kinds;
            }
            kinds.add(kind);
        }
        if (kinds.isEmpty() || kinds.size() > MOST_TERMINALS) {
            row.problem("takes_terminals", Reading.quoted(text), expected, "");
        }
        return kinds;
    }
}
