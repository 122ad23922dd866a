package tideover.app.files;

import java.util.List;
import tideover.app.files.Quantities.Measure;
import tideover.engine.load.DayWindow;
import tideover.engine.outage.Tending;
import tideover.engine.part.Engine;
import tideover.engine.part.Part;
import tideover.engine.why.Basis;

/** Reads when an engine of the parts file could run, and how much fuel there may be for it. */
final class TendingReader {
    static final String HOURS = "engine hours";
    static final String STORED = "fuel stored";

    private static final String HOURS_NOTE = "Hours in which somebody could run an engine";
    private static final String STORED_NOTE = "Fuel stored in cans, at most";

    private final Reading reading;

    TendingReader(Reading reading) {
        this.reading = reading;
    }

    /** As is usual where anything is wrong. What is not told is noted only where the parts hold an engine. */
    Tending read(Field block, List<Part> parts) {
        boolean engines = parts.stream().anyMatch(Engine.class::isInstance);
        int before = reading.flaws();
        Field hours = block.child(HOURS);
        List<DayWindow> windows = Tending.USUAL.engineHours();
        if (hours.isPresent()) {
            windows = LoadReader.windows(hours);
            reading.note(HOURS_NOTE, LoadReader.words(windows), Basis.YOURS, hours.source());
        } else if (engines) {
            reading.note(HOURS_NOTE, LoadReader.words(windows), Basis.GUESS, PlanFile.DEFAULT);
        }
        Field stored = block.child(STORED);
        double storedL = Tending.USUAL.storedL();
        if (stored.isPresent()) {
            storedL = stored.quantity(Measure.VOLUME, Range.from(0, 10_000).likely(0, 100));
            stored.note(STORED_NOTE, Basis.YOURS);
        } else if (engines) {
            reading.note(
                    STORED_NOTE,
                    Range.shown(storedL, "L"),
                    Basis.GUESS,
                    PlanFile.DEFAULT + ": one can; local codes and insurers limit what may be stored");
        }
        return reading.flaws() > before ? Tending.USUAL : new Tending(windows, storedL);
    }
}
