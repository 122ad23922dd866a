package tideover.app.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.NearestStation;
import tideover.engine.site.Station;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Weather stations as one JSON document; field names carry their unit. */
public final class JsonSites {
    private JsonSites() {}

    /** @param nearest how far the one station is from the place asked for; null where none was asked for */
    public static String of(List<Station> stations, @Nullable NearestStation nearest) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode all = root.putArray("stations");
        for (Station station : stations) {
            ObjectNode one = all.addObject();
            one.put("id", station.id());
            one.put("name", station.place().name());
            one.put("state", station.state());
            one.put("latitude_deg", station.place().latDeg());
            one.put("longitude_deg", station.place().lonDeg());
            one.put("height_m", station.place().elevM());
            one.put("zone_h", station.place().zoneH());
            ArrayNode sun = one.putArray("monthly_sun_kwh_m2_day");
            ArrayNode low = one.putArray("monthly_mean_low_degc");
            for (int month = 0; month < 12; month++) {
                sun.add(station.climate().ghiKwhM2Day().at(month));
                low.add(station.climate().lowDegC().at(month));
            }
        }
        if (nearest != null) {
            root.put("distance_km", nearest.distanceKm());
            ArrayNode cautions = root.putArray("cautions");
            nearest.cautions().forEach(cautions::add);
        }
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }
}
