package tideover.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Speaks to the pages over plain sockets, so that nothing is put right on the way. */
record Spoken(Served served) {
    /** What came back. */
    record Said(int status, String head, String body) {}

    String own() {
        return "127.0.0.1:" + served.pages.port();
    }

    Said say(String method, String path, Map<String, String> headers, byte[] body) {
        StringBuilder head = new StringBuilder(method + " " + path + " HTTP/1.1\r\nConnection: close\r\n");
        Map<String, String> all = new LinkedHashMap<>();
        all.put("Host", own());
        all.put("Content-Length", String.valueOf(body.length));
        all.putAll(headers);
        all.forEach((name, value) -> {
            if (!value.isEmpty()) {
                head.append(name).append(": ").append(value).append("\r\n");
            }
        });
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes((head + "\r\n").getBytes(StandardCharsets.ISO_8859_1));
        whole.writeBytes(body);
        return raw(whole.toByteArray());
    }

    /** Whatever bytes; status 0 where nothing came back. */
    Said raw(byte[] bytes) {
        try (Socket socket = new Socket("127.0.0.1", served.pages.port())) {
            socket.setSoTimeout(60_000);
            OutputStream out = socket.getOutputStream();
            try {
                out.write(bytes);
                out.flush();
            } catch (IOException e) {
                // Cut off while still speaking; what was said back may be there all the same.
            }
            ByteArrayOutputStream back = new ByteArrayOutputStream();
            try {
                socket.getInputStream().transferTo(back);
            } catch (IOException e) {
                // Reset after the answer.
            }
            String whole = back.toString(StandardCharsets.UTF_8);
            Matcher status = Pattern.compile("^HTTP/1\\.1 (\\d+)").matcher(whole);
            int cut = whole.indexOf("\r\n\r\n");
            return new Said(
                    status.find() ? Integer.parseInt(status.group(1)) : 0,
                    cut < 0 ? whole : whole.substring(0, cut),
                    cut < 0 ? "" : whole.substring(cut + 4));
        } catch (IOException e) {
            return new Said(0, "", "");
        }
    }

    /** A whole invented year in the plain form. */
    static byte[] weather() {
        StringBuilder text = new StringBuilder("# place: Invented hill\n# latitude_deg: 42.9\n# longitude_deg: -78.7\n"
                + "# elevation_m: 200\n# zone_h: -5\ntime,ghi_w_m2,air_c\n");
        LocalDateTime at = LocalDateTime.of(2019, 1, 1, 0, 0);
        for (int hour = 0; hour < 8760; hour++, at = at.plusHours(1)) {
            double sun = Math.max(0, Math.sin((at.getHour() - 6) / 12.0 * Math.PI));
            text.append(at).append(',').append(Math.round(300 * sun)).append(",5\n");
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    Said get(String path) {
        return say("GET", path, Map.of(), new byte[0]);
    }

    String token() {
        Matcher token = Pattern.compile("name=\"token\" value=\"([^\"]+)\"").matcher(get("/").body());
        assertThat(token.find()).isTrue();
        return token.group(1);
    }

    Said post(String path, Map<String, String> headers, String... namesAndValues) {
        StringBuilder form = new StringBuilder();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            form.append(i == 0 ? "" : "&")
                    .append(namesAndValues[i])
                    .append('=')
                    .append(Addresses.of(namesAndValues[i + 1]));
        }
        Map<String, String> all = new LinkedHashMap<>(headers);
        all.put("Content-Type", "application/x-www-form-urlencoded");
        return say("POST", path, all, form.toString().getBytes(StandardCharsets.UTF_8));
    }

    Said upload(String path, String token, String name, byte[] bytes) {
        String edge = "edge-of-this-form";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(
                ("--" + edge + "\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n" + token + "\r\n--" + edge
                                + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n")
                        .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(bytes);
        body.writeBytes(("\r\n--" + edge + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return say("POST", path, Map.of("Content-Type", "multipart/form-data; boundary=" + edge), body.toByteArray());
    }
}
