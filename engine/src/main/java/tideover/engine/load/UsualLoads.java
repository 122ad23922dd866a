package tideover.engine.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.why.Basis;

/**
 * Usual household loads. Ranges are wide on purpose: they hold what such things are known to draw, not what a good one
 * draws. Of pumps the running volt-amperes are the full-load amperes of NFPA 70 table 430.248 at 115 V (from memory; at
 * 230 V half the amperes, the same volt-amperes), the start is the high end of the code letter that such motors usually carry.
 */
public final class UsualLoads {
    /** Watts of shaft power for each horsepower. */
    private static final double W_PER_HP = 746;

    /** Of a good small motor at full load; real ones reach .5 to .75 (from memory). */
    private static final double GOOD_MOTOR = 0.75;

    /** Real watts per volt-ampere that the worst-loaded pump motor reaches, from memory. */
    private static final double MOST_POWER_FACTOR = 0.9;

    private static final double NEC_VOLTS = 115;
    private static final String WATCHED =
            "The maker of the device and the care team decide what it may run from and what is done when that stops; a"
                    + " second plan that does not use the rig is needed.";
    private static final String PLUG_METER = "A plug meter tells its watts while it runs.";
    private static final List<Usual> ALL = all(new ArrayList<>());

    private UsualLoads() {}

    /** Every usual load, kin beside kin. */
    public static List<Usual> all() {
        return ALL;
    }

    /** The one that a word means; capitals, commas and spaces do not count. */
    public static Optional<Usual> of(String word) {
        String wanted = plain(word);
        return ALL.stream()
                .filter(usual -> plain(usual.word()).equals(wanted)
                        || usual.alsoCalled().stream()
                                .anyMatch(other -> plain(other).equals(wanted)))
                .findFirst();
    }

    /** Those whose words hold every word of a text; all for an empty one. */
    public static List<Usual> search(String text) {
        List<String> wanted = Arrays.stream(plain(text).split(" ")).toList();
        return ALL.stream()
                .filter(usual -> {
                    String words = plain(usual.word() + " " + String.join(" ", usual.alsoCalled()));
                    return wanted.stream().allMatch(words::contains);
                })
                .toList();
    }

    /** Every word that {@link #of} knows, kin beside kin. */
    public static List<String> words() {
        List<String> words = new ArrayList<>();
        for (Usual usual : ALL) {
            words.add(usual.word());
            words.addAll(usual.alsoCalled());
        }
        return words;
    }

    /** Full-load amperes of single-phase motors at 115 V, NFPA 70 table 430.248, from memory; NaN for a size not listed. */
    static double fullLoadA(double horsepower) {
        double[] sizes = {1.0 / 6, 1.0 / 4, 1.0 / 3, 1.0 / 2, 3.0 / 4, 1};
        double[] amperes = {4.4, 5.8, 7.2, 9.8, 13.8, 16};
        for (int i = 0; i < sizes.length; i++) {
            if (sizes[i] == horsepower) {
                return amperes[i];
            }
        }
        return Double.NaN;
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[\\s,_-]+", " ").strip();
    }

    private static List<Usual> all(List<Usual> list) {
        health(list);
        pumps(list);
        heating(list);
        small(list);
        cooking(list);
        return List.copyOf(list);
    }

    private static void health(List<Usual> list) {
        list.add(named("sleep-therapy device, no heat", "CPAP without heat", "sleep apnea device without heat")
                .watts(5, 25, 60)
                .powerFactor(0.6)
                .medical()
                .hours("while its user sleeps, about 8 h")
                .from(
                        Basis.COMMON_PRACTICE,
                        "general figures 15 to 60 W; users' meters 25 W on AC, and 3 to 8 Ah a night at 12 V (about 5 to 12 W)")
                .measure(
                        "Ask for a meter reading over a whole night at the user's own pressure: such devices differ tenfold.")
                .ask(
                        WATCHED,
                        "Does the maker sell a cord for direct current? It saves the inverter's losses, and only the maker's"
                                + " own cord is fit for it.")
                .done());
        list.add(named(
                        "sleep-therapy device, heated humidifier and tube",
                        "CPAP with heat",
                        "sleep apnea device with heat")
                .watts(15, 60, 110)
                .powerFactor(0.6)
                .medical()
                .hours("while its user sleeps, about 8 h")
                .from(
                        Basis.COMMON_PRACTICE,
                        "general figures 60 to 110 W; users' meters 34 W as a mean (15 to 90 W by turns), 76 W at the highest"
                                + " setting, up to 30 Ah a night at 12 V")
                .measure(
                        "Ask for a meter reading over a whole night with the user's own heat and pressure: such devices"
                                + " differ tenfold.")
                .ask(
                        WATCHED,
                        "May its user do without the heat in an outage? It takes most of the power; the care team knows.")
                .done());
        list.add(named("oxygen concentrator, stationary", "oxygen concentrator, 5 L/min")
                .watts(200, 350, 600)
                .powerFactor(0.8)
                .motor()
                .sine()
                .medical()
                .hours("as prescribed, often day and night")
                .from(Basis.FROM_MEMORY, "from memory: 5 L/min, newer ones 250 to 350 W, older ones to 600 W")
                .measure("Its plate tells the most; a plug meter tells the watts at the flow that was prescribed.")
                .ask(
                        WATCHED,
                        "Is there oxygen in cylinders that needs no power, for how many hours at the prescribed flow?")
                .done());
        list.add(named("oxygen concentrator, portable")
                .watts(30, 70, 150)
                .powerFactor(0.6)
                .medical()
                .hours("as prescribed; the most while it charges its own battery beside")
                .from(Basis.FROM_MEMORY, "from memory")
                .measure(
                        "A meter tells its watts at the flow that was prescribed, with its own battery full and charging.")
                .ask(WATCHED, "How many hours does its own battery last at the prescribed flow?")
                .done());
        list.add(named("heated blanket", "electric blanket")
                .watts(15, 75, 200)
                .hours("an hour to warm a bed, or all night")
                .from(Basis.FROM_MEMORY, "from memory: labels 60 to 200 W, a low setting a quarter of that as a mean")
                .measure("A plug meter over a night tells its mean; the control switches it on and off.")
                .ask("Some controls do not work, or burn, on a stepped wave: does its maker allow one?")
                .done());
        list.add(named("heated mattress pad")
                .watts(15, 80, 250)
                .hours("an hour to warm a bed, or all night")
                .from(Basis.FROM_MEMORY, "from memory: labels 60 to 250 W by the bed's width")
                .measure("A plug meter over a night tells its mean; the control switches it on and off.")
                .ask("Some controls do not work, or burn, on a stepped wave: does its maker allow one?")
                .done());
    }

    private static void pumps(List<Usual> list) {
        list.add(sump("1/4 hp", 1.0 / 4, "N"));
        list.add(sump("1/3 hp", 1.0 / 3, "M"));
        list.add(sump("1/2 hp", 1.0 / 2, "M"));
        list.add(well("1/2 hp", 1.0 / 2, "R"));
        list.add(well("3/4 hp", 3.0 / 4, "N"));
        list.add(well("1 hp", 1, "M"));
    }

    private static Usual sump(String size, double horsepower, String letter) {
        return named("sump pump, " + size)
                .horsepower(horsepower, 0.65, letter)
                .sine()
                .hours("by its float; in a storm perhaps without a pause")
                .measure("Its plate tells amperes and code letter; a plug meter its watts while it lifts water.")
                .ask(
                        "Is it on a plug? If it is wired in, write hard-wired: yes.",
                        "How often does it run after heavy rain, and how fast does the water rise without it?",
                        "Does it stop by itself when it is blocked or runs dry?")
                .done();
    }

    private static Usual well(String size, double horsepower, String letter) {
        return named("well pump, " + size)
                .horsepower(horsepower, 0.75, letter)
                .sine()
                .hardWired()
                .hours("minutes at a time, when the tank's pressure falls")
                .measure(
                        "The plate of the pump or of its control box tells volts, amperes and code letter; an electrician's"
                                + " clamp meter the rest.")
                .ask(
                        "Is it 115 V or 230 V? Many are 230 V, which an inverter for 115 V cannot feed.",
                        "How much water does the tank hold, and could water be stored instead of pumped?")
                .done();
    }

    private static void heating(List<Usual> list) {
        list.add(named("boiler circulator", "circulator pump", "heating pump")
                .watts(10, 85, 250)
                .powerFactor(0.7)
                .motor()
                .sine()
                .hardWired()
                .hours("while the home asks for heat")
                .from(
                        Basis.FROM_MEMORY,
                        "from memory: new ones with their own control 5 to 45 W, older ones 60 to 250 W")
                .measure("Its plate tells the watts; with several, add them up.")
                .ask(
                        "Does a burner, a fan or a control hang on the same circuit? An oil burner takes 150 to 300 W more (from"
                                + " memory).",
                        "Does the boiler prove its flame by a current to ground, as gas burners with electronic ignition do? Then"
                                + " write senses flame: yes.")
                .done());
        list.add(named("furnace blower", "furnace", "furnace fan")
                .watts(75, 450, 900)
                .powerFactor(0.75)
                .motor()
                .sine()
                .hardWired()
                .sensesFlame()
                .hours("while the home asks for heat")
                .from(
                        Basis.FROM_MEMORY,
                        "from memory: variable speed 75 to 400 W, one speed 350 to 800 W, with controls and draft fan")
                .measure("An electrician's clamp meter tells it; the plate tells the most.")
                .ask(
                        "Does it light again by itself on this inverter? Flame sensing may lock out where the neutral floats: test"
                                + " it on the rig before relying on it.",
                        "Is it a furnace that burns fuel? Heat from electricity takes ten to thirty times as much.")
                .done());
        list.add(named("pellet stove")
                .watts(50, 100, 500)
                .powerFactor(0.8)
                .motor()
                .sine()
                .hours("while the home asks for heat")
                .from(
                        Basis.FROM_MEMORY,
                        "from memory: 50 to 150 W while it burns, 300 to 500 W for minutes while it lights")
                .measure("A plug meter tells both: the watts while it lights, and while it burns.")
                .ask(
                        "What does its igniter take, and for how long? The usual figure is without it; an inverter must bear it.",
                        "What does it do when the power fails while it burns? Smoke may come into the room: ask its maker.")
                .done());
    }

    private static void small(List<Usual> list) {
        list.add(named("router", "modem", "wireless router")
                .watts(4, 10, 25)
                .powerFactor(0.6)
                .hours("day and night")
                .from(Basis.FROM_MEMORY, "from memory; a modem beside it takes as much again")
                .measure(PLUG_METER)
                .ask("Does the line itself live through an outage? Many fail within hours.")
                .done());
        list.add(named("lamp", "LED lamp", "light")
                .watts(3, 9, 20)
                .powerFactor(0.6)
                .hours("after dark")
                .from(
                        Basis.FROM_MEMORY,
                        "from memory; of light-emitting diodes, and the figure that is printed on them")
                .measure("The lamp itself tells its watts.")
                .ask("Is it a lamp of the older kind? It takes five to ten times as much.")
                .done());
        list.add(named("phone", "telephone charger", "phone charger")
                .watts(3, 10, 30)
                .powerFactor(0.5)
                .hours("1 to 3 h a day")
                .from(Basis.FROM_MEMORY, "from memory; a full charge is about 10 to 20 Wh")
                .measure(PLUG_METER)
                .ask("Is it needed to call for help? Then charge it first, before the store is low.")
                .done());
        list.add(named("laptop", "notebook computer")
                .watts(10, 45, 120)
                .powerFactor(0.6)
                .hours("some hours a day; it has a battery of its own")
                .from(Basis.FROM_MEMORY, "from memory; the label of its power supply tells the most")
                .measure(PLUG_METER)
                .ask("Can it be charged while the sun shines? Then write its hours so.")
                .done());
        list.add(named("radio", "scanner", "weather radio")
                .watts(1, 5, 25)
                .powerFactor(0.6)
                .hours("some hours a day, or always")
                .from(Basis.FROM_MEMORY, "from memory; receiving only")
                .measure(PLUG_METER)
                .ask("Does it send too? Sending takes five to twenty times as much for as long as it lasts.")
                .done());
        list.add(named("fan", "table fan", "box fan")
                .watts(15, 45, 110)
                .powerFactor(0.7)
                .motor()
                .hours("on hot days and nights")
                .from(Basis.FROM_MEMORY, "from memory; those with a motor for direct current 3 to 30 W")
                .measure(PLUG_METER)
                .ask("On a stepped wave such motors hum and grow warm: does its maker allow one?")
                .done());
        list.add(named("television", "tv")
                .watts(20, 80, 250)
                .powerFactor(0.8)
                .hours("some hours a day")
                .from(Basis.FROM_MEMORY, "from memory; it grows with the screen and its brightness")
                .measure(PLUG_METER)
                .ask("Does it need a box beside it? That takes 10 to 30 W more (from memory).")
                .done());
        list.add(named("power tool charger", "tool charger", "battery charger")
                .watts(30, 90, 350)
                .powerFactor(0.6)
                .hours("about an hour for a battery")
                .from(Basis.FROM_MEMORY, "from memory; quick ones take the most")
                .measure(PLUG_METER)
                .ask("Some chargers fail on a stepped wave: does its maker allow one?")
                .done());
    }

    private static void cooking(List<Usual> list) {
        list.add(named("kettle", "electric kettle")
                .watts(600, 1500, 3000)
                .hours("3 to 8 minutes for a litre")
                .from(
                        Basis.FROM_MEMORY,
                        "from memory; to 1500 W on 120 V, to 3000 W on 230 V; about 0.11 kWh boil a litre")
                .measure("Its plate tells the watts, which it draws in full.")
                .ask("Could a camping stove outdoors, or a vacuum flask filled before, do the same?")
                .done());
        list.add(named("rice cooker")
                .watts(200, 400, 1000)
                .hours("half an hour, then keeping warm at a tenth of it")
                .from(Basis.FROM_MEMORY, "from memory")
                .measure("Its plate tells the watts, which it draws in full while it cooks.")
                .ask("Does it stay on to keep warm? Unplug it then.")
                .done());
        list.add(named("microwave oven", "microwave")
                .watts(900, 1250, 1800)
                .powerFactor(0.9)
                .sine()
                .hours("minutes at a time")
                .from(
                        Basis.FROM_MEMORY,
                        "from memory; it draws about half as much again as the cooking power it is sold by")
                .measure(
                        "Its plate tells two figures: reckon with the power it draws, not with the power it cooks with.")
                .ask("On a stepped wave it heats less, or not at all: does its maker allow one?")
                .done());
    }

    private static Sketch named(String word, String... alsoCalled) {
        return new Sketch(word, List.of(alsoCalled));
    }

    /** Gathers one entry; what is not told is the plain case. */
    private static final class Sketch {
        private final String word;
        private final List<String> alsoCalled;
        private double leastW = Double.NaN;
        private double usualW = Double.NaN;
        private double mostW = Double.NaN;
        private double powerFactor = 1;
        private @Nullable Start start;
        private boolean needsSine;
        private boolean hardWired;
        private boolean sensesFlame;
        private boolean medical;
        private String hours = "";
        private Basis basis = Basis.FROM_MEMORY;
        private String source = "";
        private String measure = "";
        private List<String> ask = List.of();

        Sketch(String word, List<String> alsoCalled) {
            this.word = word;
            this.alsoCalled = alsoCalled;
        }

        Sketch watts(double least, double usual, double most) {
            leastW = least;
            usualW = usual;
            mostW = most;
            return this;
        }

        Sketch powerFactor(double factor) {
            powerFactor = factor;
            return this;
        }

        /** Known to be too small, so that it is lifted to the usual multiple of the running volt-amperes. */
        Sketch motor() {
            start = new Start(usualW / powerFactor, Start.USUAL_POWER_FACTOR, Start.USUAL_SECONDS, true, "");
            return this;
        }

        Sketch horsepower(double horsepower, double factor, String letter) {
            double fullVa = NEC_VOLTS * fullLoadA(horsepower);
            watts(
                    Math.rint(W_PER_HP * horsepower / GOOD_MOTOR),
                    Math.rint(factor * fullVa),
                    Math.rint(MOST_POWER_FACTOR * fullVa));
            powerFactor(factor);
            start = new Start(
                    LockedRotor.mostVa(letter, horsepower), Start.USUAL_POWER_FACTOR, Start.USUAL_SECONDS, false, "");
            return from(
                    Basis.FROM_MEMORY,
                    "full-load amperes of NFPA 70 table 430.248, from memory; start at the high end of code letter "
                            + letter + ", table 430.7(B), which such motors usually carry (from memory)");
        }

        Sketch sine() {
            needsSine = true;
            return this;
        }

        Sketch hardWired() {
            hardWired = true;
            return this;
        }

        Sketch sensesFlame() {
            sensesFlame = true;
            return this;
        }

        Sketch medical() {
            medical = true;
            return this;
        }

        Sketch hours(String words) {
            hours = words;
            return this;
        }

        Sketch from(Basis known, String words) {
            basis = known;
            source = words;
            return this;
        }

        Sketch measure(String words) {
            measure = words;
            return this;
        }

        Sketch ask(String... sentences) {
            ask = List.of(sentences);
            return this;
        }

        Usual done() {
            return new Usual(
                    word,
                    alsoCalled,
                    leastW,
                    usualW,
                    mostW,
                    true,
                    powerFactor,
                    start,
                    needsSine,
                    hardWired,
                    sensesFlame,
                    medical,
                    hours,
                    basis,
                    source,
                    measure,
                    ask);
        }
    }
}
