package tideover.app.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** The process's output. A reader that has read enough and gone, such as {@code head}, is no failure; a full disk is. */
final class StandardOutput extends OutputStream {
    private final OutputStream out = new FileOutputStream(FileDescriptor.out);
    private boolean readerGone;

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        if (readerGone) {
            return;
        }
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            if (!"Broken pipe".equals(e.getMessage())) {
                throw e;
            }
            readerGone = true;
        }
    }
}
