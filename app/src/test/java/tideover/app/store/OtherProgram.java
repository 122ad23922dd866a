package tideover.app.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A second JVM. */
final class OtherProgram implements AutoCloseable {
    final Process process;
    private final BufferedReader out;

    private OtherProgram(Process process) {
        this.process = process;
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    static OtherProgram start(Class<?> main, Object... args) throws IOException {
        return start(List.of(), main, args);
    }

    /** @param before what starts it, such as a program that gives it mounts of its own */
    static OtherProgram start(List<String> before, Class<?> main, Object... args) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        Stream.of(args).map(String::valueOf).forEach(command::add);
        return new OtherProgram(new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    /** The next line that it prints; null where it ended. */
    String line() throws IOException {
        return out.readLine();
    }

    /** All that it still prints, to its end. */
    String rest() throws IOException {
        StringBuilder all = new StringBuilder();
        for (int one = out.read(); one >= 0; one = out.read()) {
            all.append((char) one);
        }
        return all.toString();
    }

    /** Kills it without a chance to tidy up (SIGKILL where there are signals). What it has printed can still be read. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    @Override
    public void close() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }
}
