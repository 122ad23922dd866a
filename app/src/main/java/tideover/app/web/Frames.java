package tideover.app.web;

import io.javalin.http.Context;
import tideover.app.store.Store;

/** Makes what stands around a page, with the reader's choices out of the store. */
final class Frames {
    private static final String LIGHT = "light";
    private static final String UNITS = "units";

    private final Store store;
    private final String token;

    Frames(Store store, String token) {
        this.store = store;
        this.token = token;
    }

    String token() {
        return token;
    }

    Frame of(Context request, String title, long planId, String here) {
        String query = request.queryString();
        String address = request.path() + (query == null ? "" : "?" + query);
        return new Frame(
                title.isEmpty() ? "Plan without a name" : title,
                planId,
                here,
                address,
                token,
                chosen(LIGHT, Frame.LIGHTS.get(0), Frame.LIGHTS),
                units());
    }

    String units() {
        return chosen(UNITS, Frame.UNITS.get(0), Frame.UNITS);
    }

    private String chosen(String key, String otherwise, java.util.List<String> choices) {
        return store.setting(key).filter(choices::contains).orElse(otherwise);
    }

    /** Keeps what was chosen; anything else is passed over. */
    void choose(Context request) {
        keep(LIGHT, request.formParam(LIGHT), Frame.LIGHTS);
        keep(UNITS, request.formParam(UNITS), Frame.UNITS);
    }

    private void keep(String key, @org.jspecify.annotations.Nullable String value, java.util.List<String> choices) {
        if (value != null && choices.contains(value)) {
            store.set(key, value);
        }
    }
}
