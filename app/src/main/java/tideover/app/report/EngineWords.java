package tideover.app.report;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.ProvenRig;
import tideover.engine.part.Engine;
import tideover.engine.quantity.PlainTime;
import tideover.engine.rig.FuelUse;
import tideover.engine.why.Stated;
import tools.jackson.databind.node.ObjectNode;

/** A rig's own engine and what it burns. */
final class EngineWords {
    private EngineWords() {}

    /** Null where the rig has none. */
    static @Nullable String of(ProvenRig proven, String currency) {
        Engine engine = proven.rig().engine();
        FuelUse fuel = proven.build().fuel();
        if (engine == null || fuel == null) {
            return null;
        }
        Engine.Habits habits = engine.habits();
        return String.format(
                Locale.ROOT,
                "%s, outdoors, runs up to %.1f h of an outage into the charger (%.0f W) and burns up to %.1f L of %s, %s;"
                        + " its tank is filled again %s. It %s and bears load after %s; %s. Waiting, it costs %s a year in aging fuel and service.",
                engine.listing().name(),
                fuel.hours(),
                fuel.drawnW(),
                fuel.litres(),
                engine.fuel().kind().words(),
                Words.money(fuel.cents(), currency),
                times(fuel.refills()),
                habits.startsItself() == Stated.YES ? "starts by itself" : "is started by hand",
                PlainTime.words(habits.untilLoadSeconds()),
                Double.isNaN(habits.noiseDbA())
                        ? "how loud it is is not told"
                        : String.format(Locale.ROOT, "%.0f dBA at 7 m", habits.noiseDbA()),
                Words.money(Math.round(proven.engineStandbyCentsPerYear()), currency));
    }

    private static String times(int refills) {
        return refills == 0 ? "at no time" : refills == 1 ? "once" : refills + " times";
    }

    static void put(ObjectNode rig, ProvenRig proven) {
        Engine engine = proven.rig().engine();
        FuelUse fuel = proven.build().fuel();
        if (engine == null || fuel == null) {
            rig.putNull("engine");
            return;
        }
        ObjectNode node = rig.putObject("engine");
        node.put("id", engine.listing().id());
        node.put("kind", engine.kind());
        Json.number(node, "rated_w", engine.ratedW());
        Json.number(node, "charger_draws_w", fuel.drawnW());
        Json.number(node, "runs_h", fuel.hours());
        node.put("fuel", engine.fuel().kind().words());
        Json.number(node, "burnt_l", fuel.litres());
        Json.number(node, "tank_l", engine.fuel().tankL());
        node.put("refills", fuel.refills());
        node.put("fuel_cents", fuel.cents());
        Json.number(node, "standby_cents_per_year", proven.engineStandbyCentsPerYear());
        Json.number(node, "noise_at_7_m_dba", engine.habits().noiseDbA());
        Json.number(node, "bears_load_after_s", engine.habits().untilLoadSeconds());
        node.put("starts_by_itself", engine.habits().startsItself().name().toLowerCase(Locale.ROOT));
    }
}
