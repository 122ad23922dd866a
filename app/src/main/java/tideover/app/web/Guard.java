package tideover.app.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets in only what comes from this machine's own pages: by the name that the request asks for (a foreign page may have a name
 * that leads here), by its origin, and for whatever changes something by a token that is drawn at every start.
 */
final class Guard {
    static final String TOKEN = "token";
    static final String TOKEN_HEADER = "X-Tideover-Token";

    private static final int TOKEN_BYTES = 32;

    /** Nothing from elsewhere, nothing inline. */
    private static final String CONTENT_POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** On every answer, whoever gives it. */
    static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            CONTENT_POLICY,
            "X-Content-Type-Options",
            "nosniff",
            "X-Frame-Options",
            "DENY",
            // With no referrer at all a form of our own would name no origin either.
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Cache-Control",
            "no-store");

    private final String token;

    Guard() {
        byte[] drawn = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(drawn);
        token = Base64.getUrlEncoder().withoutPadding().encodeToString(drawn);
    }

    String token() {
        return token;
    }

    /** Before every request. */
    void check(Context request) {
        HEADERS.forEach(request::header);
        Set<String> own = hosts(request.req().getLocalPort());
        String host = request.header("Host");
        if (host == null || !own.contains(host)) {
            throw new ForbiddenResponse("These pages are served to this machine under its own name only.");
        }
        String origin = request.header("Origin");
        if (origin != null && own.stream().noneMatch(name -> origin.equals("http://" + name))) {
            throw new ForbiddenResponse("Another site asked for this; it was refused.");
        }
        if (changes(request)) {
            String site = request.header("Sec-Fetch-Site");
            if (site != null && !site.equals("same-origin") && !site.equals("none")) {
                throw new ForbiddenResponse("Another site asked for this; it was refused.");
            }
        }
    }

    /** Where something is changed. */
    void checkToken(Context request) {
        if (changes(request) && !isToken(given(request))) {
            throw new ForbiddenResponse(
                    "This page is from before Tideover was started again. Load it anew; what was kept is still there.");
        }
    }

    private static @Nullable String given(Context request) {
        String inHeader = request.header(TOKEN_HEADER);
        return inHeader != null ? inHeader : request.formParam(TOKEN);
    }

    private boolean isToken(@Nullable String given) {
        return given != null
                && MessageDigest.isEqual(
                        given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }

    private static boolean changes(Context request) {
        return request.method() != HandlerType.GET && request.method() != HandlerType.HEAD;
    }

    private static Set<String> hosts(int port) {
        return Set.of("127.0.0.1:" + port, "localhost:" + port);
    }
}
