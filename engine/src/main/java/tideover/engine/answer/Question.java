package tideover.engine.answer;

import java.util.List;
import java.util.OptionalLong;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.Part;
import tideover.engine.part.SmallPart;
import tideover.engine.proof.Doubt;
import tideover.engine.proof.Prover;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Chosen;
import tideover.engine.search.Grammar;
import tideover.engine.site.Place;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.sun.PanelMount;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;
import tideover.engine.wiring.Terms;

/**
 * One household's question, read and checked.
 *
 * @param title       the plan's name
 * @param about       the plan's own remark, such as that it is invented; may be empty
 * @param lowestDegC  lowest outdoor temperature to design for; NaN where unknown
 * @param snow        whether snow may lie on the panels
 * @param batteryRoom where the store stands
 * @param sleptIn     whether somebody sleeps in that room
 * @param currency    of every price, three letters
 * @param terms       tax and shipping beside those prices
 * @param parts       all that may be bought, ids unique
 * @param smallParts what joins them and the tools for it, ids unique and none of {@code parts}; empty where the plan names no file
 *                    of them, and then {@code allowances} stand for them
 * @param laying      how far apart things stand
 * @param doubts      how far the loads' figures may be off
 * @param notes       where each figure of the plan comes from, in the plan's order
 * @param cautions    what the reading found unlikely but possible
 */
public record Question(
        String title,
        String about,
        Place place,
        WeatherSource weather,
        double lowestDegC,
        PanelMount mount,
        boolean snow,
        RoomKind batteryRoom,
        boolean sleptIn,
        List<Load> loads,
        Outage outage,
        OptionalLong budgetCents,
        String currency,
        Allowances allowances,
        Terms terms,
        Grammar grammar,
        List<Part> parts,
        List<SmallPart> smallParts,
        Laying laying,
        List<Doubt> doubts,
        List<MarginNote> notes,
        List<String> cautions) {
    /** Name of the note on snow. */
    public static final String SNOW = "Snow on the panels";

    public Question {
        loads = List.copyOf(loads);
        parts = List.copyOf(parts);
        smallParts = List.copyOf(smallParts);
        doubts = List.copyOf(doubts);
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
    }

    /** Where the prices are final. */
    public Question(
            String title,
            String about,
            Place place,
            WeatherSource weather,
            double lowestDegC,
            PanelMount mount,
            boolean snow,
            RoomKind batteryRoom,
            boolean sleptIn,
            List<Load> loads,
            Outage outage,
            OptionalLong budgetCents,
            String currency,
            Allowances allowances,
            Grammar grammar,
            List<Part> parts,
            List<SmallPart> smallParts,
            Laying laying,
            List<Doubt> doubts,
            List<MarginNote> notes,
            List<String> cautions) {
        this(
                title,
                about,
                place,
                weather,
                lowestDegC,
                mount,
                snow,
                batteryRoom,
                sleptIn,
                loads,
                outage,
                budgetCents,
                currency,
                allowances,
                Terms.NONE,
                grammar,
                parts,
                smallParts,
                laying,
                doubts,
                notes,
                cautions);
    }

    /** The same question asked elsewhere. */
    Question at(Place there, WeatherSource weatherThere, double lowestThereDegC, boolean snowThere) {
        return new Question(
                title,
                about,
                there,
                weatherThere,
                lowestThereDegC,
                mount,
                snowThere,
                batteryRoom,
                sleptIn,
                loads,
                outage,
                budgetCents,
                currency,
                allowances,
                terms,
                grammar,
                parts,
                smallParts,
                laying,
                doubts,
                notes,
                cautions);
    }

    /** Whether snow was the asker's own word and not guessed from the climate. */
    boolean saysSnow() {
        return notes.stream().anyMatch(note -> note.name().equals(SNOW) && note.basis() == Basis.YOURS);
    }

    /** The same over another list of parts. */
    public Question with(List<Part> changed) {
        return new Question(
                title,
                about,
                place,
                weather,
                lowestDegC,
                mount,
                snow,
                batteryRoom,
                sleptIn,
                loads,
                outage,
                budgetCents,
                currency,
                allowances,
                terms,
                grammar,
                changed,
                smallParts,
                laying,
                doubts,
                notes,
                cautions);
    }

    /** Whether somebody's health hangs on a load. */
    public boolean medical() {
        return loads.stream().anyMatch(load -> load.nature().medical() != null);
    }

    /** Which rigs are looked at for it, with the aids that may stand beside them. */
    public Grammar rigs() {
        List<List<Chosen>> sets = Aids.sets(parts, loads, grammar.mostJugs(), outage.hours()).stream()
                .filter(set -> Aids.served(set, loads).stream().anyMatch(load -> load.essential() && load.plugged()))
                .toList();
        Grammar all = grammar.withAids(sets);
        return outage.isHelped() ? all.withChargers() : all;
    }

    /**
     * The outage as it is asked of rigs: every one must be carried where somebody's health hangs on a load, whatever share the
     * plan names.
     */
    public Outage asked() {
        return medical() ? outage.withTarget(1) : outage;
    }

    /** Whether storms do more than take the grid, so that their starts are walked with that. */
    public boolean isStormy() {
        return Prover.isStormy(loads, outage);
    }
}
