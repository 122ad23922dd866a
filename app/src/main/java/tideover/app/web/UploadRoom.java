package tideover.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.ServiceUnavailableResponse;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** Room for what comes in as files: one at a time is held and read, since each may take much of the memory. */
final class UploadRoom {
    private static final int AT_ONCE = 1;
    private static final int WAIT_S = 10;
    private static final String HELD = UploadRoom.class.getName();

    private final Semaphore places = new Semaphore(AT_ONCE, true);

    /** Before anything of a form in several parts is read; waits a while for the one before. */
    void enter(Context request) {
        String type = request.contentType();
        if (type == null || !type.startsWith("multipart/")) {
            return;
        }
        try {
            if (!places.tryAcquire(WAIT_S, TimeUnit.SECONDS)) {
                throw new ServiceUnavailableResponse(
                        "Another file is still coming in; nothing was changed. Try again in a moment.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new ServiceUnavailableResponse(HttpStatus.SERVICE_UNAVAILABLE.getMessage());
        }
        request.attribute(HELD, true);
    }

    /** After every request, however it ended. */
    void leave(Context request) {
        if (request.attribute(HELD) != null) {
            request.attribute(HELD, null);
            places.release();
        }
    }
}
