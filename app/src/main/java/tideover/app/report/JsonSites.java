package tideover.app.report;

/** Placeholder until the station list lands. */
public final class JsonSites {
    private JsonSites() {}
}
