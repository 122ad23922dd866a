package tideover.app.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Text as part of an address. */
final class Addresses {
    private Addresses() {}

    static String of(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
