package tideover.app.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.app.report.Reasons.Reason;

/**
 * All that the page of an answer shows, in its order, as words, tables and drawings. The template adds headings and
 * nothing else.
 *
 * @param place    name and position
 * @param verdict  whether the target is met, in a few words
 * @param failings what keeps it from being met; empty where it is
 * @param medical  one for each load that somebody's health hangs on
 * @param mind     what stands beside those; empty where there is none
 * @param beside   what stands beside the rig; empty where nothing does
 * @param proof    null where no rig was proven
 * @param search   null where one given rig was proven
 * @param inputsOf how many inputs are known how well
 * @param foot     seed, years, step, version
 */
public record Page(
        String title,
        String about,
        String place,
        String verdict,
        boolean meets,
        List<String> failings,
        String sentence,
        List<Health> medical,
        String mind,
        String weather,
        List<String> cautions,
        List<Fact> beside,
        @Nullable Proven proof,
        @Nullable Searched search,
        Table loads,
        String asked,
        Table inputs,
        String inputsOf,
        String foot) {
    public Page {
        failings = List.copyOf(failings);
        medical = List.copyOf(medical);
        cautions = List.copyOf(cautions);
        beside = List.copyOf(beside);
    }

    /**
     * A name and what is to be said of it.
     *
     * @param why where its numbers come from; null where the words say so themselves
     */
    public record Fact(String name, String words, @Nullable Reason why) {
        Fact(String name, String words) {
            this(name, words, null);
        }
    }

    /** What is to be said of a load that somebody's health hangs on. */
    public record Health(String heading, List<Fact> facts) {
        public Health {
            facts = List.copyOf(facts);
        }
    }

    /**
     * What full simulation of one rig gave.
     *
     * @param facts    hours carried, why some failed, what binds, the hardest start, the battery and its cost
     * @param outages  the median and the worst, what they keep, the worst of storms
     * @param wanting  what the mean outage wanted and did not get
     * @param without  months without a failure
     * @param needs    loads that keep a temperature or a level and how they fared; null where there is none
     * @param habits   what costs nothing; null where there is none
     * @param doubts   what to measure first; null where nothing moves anything
     * @param still    what moves nothing; empty where everything does
     * @param rig      way of building and mass
     * @param split    what the price is made of
     */
    public record Proven(
            Table shares,
            String interval,
            List<Fact> facts,
            Figure tideLine,
            List<Figure> outages,
            Table energy,
            String wanting,
            String without,
            Table starts,
            Table allStarts,
            @Nullable Table needs,
            @Nullable Table habits,
            @Nullable Table doubts,
            String still,
            String binds,
            Table lifts,
            String rig,
            Table parts,
            String split,
            Wired wired,
            Table rules) {
        public Proven {
            facts = List.copyOf(facts);
            outages = List.copyOf(outages);
        }
    }

    /**
     * What stands somewhere and what hangs on it.
     *
     * @param by the run that joins it to what it hangs on; empty at the root
     */
    public record Branch(String words, String by, List<Branch> branches) {
        public Branch {
            branches = List.copyOf(branches);
        }
    }

    /**
     * How a rig is wired.
     *
     * @param inside          what is its maker's; empty where nothing is
     * @param wires           null where nothing is wired by hand; so for protections
     * @param protectionsNote empty where there is nothing to say; so for the other notes
     * @param oneLine         the one-line diagram
     * @param mind            cautions of wiring
     * @param smallParts      small parts and tools; null where none is needed
     */
    public record Wired(
            String inside,
            @Nullable Table wires,
            String wiresNote,
            @Nullable Table protections,
            String protectionsNote,
            List<Branch> oneLine,
            List<String> mind,
            @Nullable Table smallParts,
            String smallPartsNote) {
        public Wired {
            oneLine = List.copyOf(oneLine);
            mind = List.copyOf(mind);
        }
    }

    /**
     * What the search found beside the rig.
     *
     * @param byRoute     the cheapest of each way of building; null where there is none
     * @param ways        every kind of way side by side; null where it was not asked
     * @param waysInWords what each is, and who must act; null likewise
     * @param nearTies    null where there are none; so for each list
     * @param littleMore  a near tie that carries more, and what it costs more; empty where there is none
     * @param front       null where no rig kept the rules and the budget
     * @param massFront   mass against share; null where it was not asked for
     * @param looked      how many rigs were looked at, and how many were left
     */
    public record Searched(
            @Nullable Table byRoute,
            @Nullable Table ways,
            @Nullable Table waysInWords,
            @Nullable Table nearTies,
            String littleMore,
            @Nullable Figure front,
            @Nullable Table massFront,
            @Nullable Table unconfirmed,
            @Nullable Table misses,
            String looked,
            @Nullable Table rejected) {}
}
