package tideover.app.web;

import java.util.List;

/**
 * What stands around every page.
 *
 * @param planId  0 where the page belongs to no plan
 * @param here    which of the pages it is
 * @param address of the page, to come back to
 * @param token   for whatever changes something; empty where nothing can be changed
 * @param units   of {@link #UNITS}
 * @param rate    of another currency, as typed; empty for none
 */
public record Frame(
        String title, long planId, String here, String address, String token, String light, String units, String rate) {
    /** Light or dark, or as the machine is set. */
    public static final List<String> LIGHTS = List.of("auto", "light", "dark");

    public static final String METRIC = "metric";
    public static final String BOTH = "metric, then lb, ft, \u00b0F";

    /** What figures are shown in. */
    public static final List<String> UNITS = List.of(METRIC, BOTH);
}
