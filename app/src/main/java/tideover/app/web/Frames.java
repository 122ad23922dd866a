package tideover.app.web;

import io.javalin.http.Context;
import tideover.app.store.Store;

/** Makes what stands around a page, with the reader's choices out of the store. */
final class Frames {
    private static final String LIGHT = "light";

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
        return new Frame(title.isEmpty() ? "Plan without a name" : title, planId, here, address, token, light());
    }

    /** For troubles: asks nothing of the store, which may be the trouble, and gives the token to nobody who was refused. */
    static Frame bare() {
        return new Frame("That did not work", 0, "trouble", "/", "", Frame.LIGHTS.get(0));
    }

    private String light() {
        return store.setting(LIGHT).filter(Frame.LIGHTS::contains).orElse(Frame.LIGHTS.get(0));
    }

    /** Keeps what was chosen; anything else is passed over. */
    void choose(Context request) {
        String light = request.formParam(LIGHT);
        if (light != null && Frame.LIGHTS.contains(light)) {
            store.set(LIGHT, light);
        }
    }
}
