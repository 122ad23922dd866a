package tideover.app.web;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.app.report.OtherUnits;
import tideover.app.store.Store;

/** Makes what stands around a page, with the reader's choices out of the store. */
final class Frames {
    private static final String LIGHT = "light";
    private static final String UNITS = "units";
    private static final String RATE = "rate";

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
                light(),
                units(),
                rate());
    }

    /** For troubles: asks nothing of the store, which may be the trouble, and gives the token to nobody who was refused. */
    static Frame bare() {
        return new Frame("That did not work", 0, "trouble", "/", "", Frame.LIGHTS.get(0), Frame.METRIC, "");
    }

    private String light() {
        return store.setting(LIGHT).filter(Frame.LIGHTS::contains).orElse(Frame.LIGHTS.get(0));
    }

    private String units() {
        return store.setting(UNITS).filter(Frame.UNITS::contains).orElse(Frame.METRIC);
    }

    private String rate() {
        return store.setting(RATE).orElse("");
    }

    /**
     * Keeps what was chosen; what is no choice is passed over.
     *
     * @throws BadRequestResponse where a rate cannot be read; nothing is kept then
     */
    void choose(Context request) {
        String rate = request.formParam(RATE);
        if (rate != null && !rate.isBlank()) {
            try {
                OtherUnits.Rate.of(rate);
            } catch (IllegalArgumentException e) {
                throw new BadRequestResponse(String.valueOf(e.getMessage()));
            }
        }
        choose(LIGHT, request.formParam(LIGHT), Frame.LIGHTS);
        choose(UNITS, request.formParam(UNITS), Frame.UNITS);
        if (rate != null) {
            store.set(RATE, rate.strip());
        }
    }

    private void choose(String setting, @Nullable String wanted, List<String> choices) {
        if (wanted != null && choices.contains(wanted)) {
            store.set(setting, wanted);
        }
    }

    /** After every request: figures of a page a second time, in the units and the currency that the reader wants beside. */
    void restate(Context request) {
        String type = request.res().getContentType();
        if (request.statusCode() >= 300 || type == null || !type.startsWith("text/html")) {
            return;
        }
        String rate = rate();
        OtherUnits wanted =
                new OtherUnits(units().equals(Frame.BOTH), rate.isEmpty() ? null : OtherUnits.Rate.of(rate));
        String page = wanted.isNone() ? null : request.result();
        if (page != null) {
            request.result(wanted.inPage(page));
        }
    }
}
