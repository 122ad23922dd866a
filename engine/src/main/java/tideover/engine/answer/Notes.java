package tideover.engine.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Listing;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.rig.Chosen;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

/** The margin notes of an answer: the plan's own, then what the program adds. */
final class Notes {
    private Notes() {}

    static List<MarginNote> of(
            Question question, Options options, Weather weather, PlaneWeather plane, @Nullable ProvenRig rig) {
        List<MarginNote> notes = new ArrayList<>(question.notes());
        notes.add(new MarginNote(
                "weather",
                weather.years() + " years, " + weather.origin(),
                question.weather().canDrawAgain() ? Basis.GUESS : Basis.YOURS,
                question.weather().words()));
        notes.add(new MarginNote(
                "seed",
                options.seed() + (question.weather().canDrawAgain() ? ", confirmed on " + options.confirmSeed() : ""),
                Basis.GUESS,
                "program option"));
        notes.add(new MarginNote(
                "simulation step",
                PlainNumber.of(60.0 / options.stepsPerHour()) + " min",
                Basis.GUESS,
                "program option; the store's events fall at their instant inside a step"));
        notes.add(new MarginNote(
                "hours with snow on the panels",
                String.format(Locale.ROOT, "%.1f %%", 100.0 * plane.coveredHours() / weather.hours()),
                Basis.COMMON_PRACTICE,
                question.snow() ? "snow rule of the models page" : "snow is taken to be swept or absent"));
        rooms(question, weather, notes);
        notes.addAll(prices(rig, question.currency()));
        return notes;
    }

    /** Where the prices of a rig's main parts were read, as far as that is told; none without a rig. */
    private static List<MarginNote> prices(@Nullable ProvenRig rig, String currency) {
        List<MarginNote> notes = new ArrayList<>();
        for (Chosen chosen : rig == null ? List.<Chosen>of() : rig.rig().chosen()) {
            Listing listing = chosen.part().listing();
            String readAt = listing.selling().readAt();
            if (!readAt.isEmpty()) {
                String seller = listing.selling().seller();
                notes.add(new MarginNote(
                        "price of " + listing.name(),
                        String.format(
                                Locale.ROOT,
                                "%d.%02d %s on %s",
                                listing.priceCents() / 100,
                                listing.priceCents() % 100,
                                currency,
                                listing.pricedOn()),
                        Basis.YOURS,
                        readAt + (seller.isEmpty() ? "" : ", sold by " + seller) + " (" + listing.source() + ")"));
            }
        }
        return notes;
    }

    /** What each room that something lives in goes through in the asked months. */
    private static void rooms(Question question, Weather weather, List<MarginNote> notes) {
        Set<RoomKind> used = new TreeSet<>(Set.of(question.batteryRoom()));
        question.loads().forEach(load -> used.add(load.room()));
        for (RoomKind room : used) {
            Room.Extremes extremes =
                    Room.extremes(Room.degC(room, weather), question.outage().months());
            notes.add(new MarginNote(
                    "temperature " + (room == RoomKind.INDOORS || room == RoomKind.OUTDOORS ? "" : "in the ")
                            + room.words() + ", asked months",
                    String.format(Locale.ROOT, "%.0f to %.0f degC", extremes.lowestDegC(), extremes.highestDegC()),
                    Basis.COMMON_PRACTICE,
                    "room rule of the models page; a thermometer is better"));
        }
    }
}
