package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Cable;
import tideover.engine.part.Cord;
import tideover.engine.part.PanelLead;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.rig.Rig;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Protection;
import tideover.engine.wiring.Run;
import tideover.engine.wiring.WiredRun;

/** The runs of a rig as two tables: what lies there, and what protects it. */
final class WireSchedule {
    static final String WIRES_NOTE =
            "Metres are those of each conductor, without slack. Amps: lasting; and as the code designs for it, a quarter more,"
                    + " of panels a quarter twice, of cords none; and what the conductor may carry as it lies (NFPA 70 210.19, 690.8,"
                    + " 310.16; check the edition in force). Volts are lost out and back at the lasting amps. Milliohm out and back,"
                    + " fuse and joints included.";

    static final String PROTECTIONS_NOTE =
            "A fuse or breaker sits within 18 cm (7 in) of the plus that it guards: boat practice, from memory; check the edition"
                    + " in force. What it must part is the highest volts there and about what flows when the poles touch"
                    + " (NFPA 70 110.9; check the edition in force).";

    private static final int SHORT_FAULT_DIGITS = 2;

    private final Build build;
    private final Rig rig;
    private final List<WiredRun> runs;

    private WireSchedule(Build build) {
        this.build = build;
        this.rig = build.rig();
        this.runs = build.circuit().runs();
    }

    /** A run's number in both tables and in the diagram, from 1. */
    static int number(List<WiredRun> runs, WiredRun wired) {
        return runs.indexOf(wired) + 1;
    }

    static Table wires(Build build) {
        WireSchedule schedule = new WireSchedule(build);
        Table.Builder table = Table.titled("Wires")
                .figures("run")
                .words("from and to")
                .words("conductor")
                .figures("m each")
                .figures("lasting A")
                .figures("design A")
                .figures("may carry A")
                .figures("loses V")
                .figures("loses %")
                .figures("mohm");
        for (WiredRun wired : schedule.runs) {
            Run run = wired.run();
            table.row(
                    String.valueOf(number(schedule.runs, wired)),
                    words(build, run) + (run.count() > 1 ? ", " + run.count() + " alike" : ""),
                    conductor(wired),
                    PlainNumber.of(eachM(wired)),
                    tenths(run.amps().lasting()),
                    tenths(run.amps().design()),
                    tenths(wired.allowedA()),
                    small(wired.dropV()),
                    tenths(100 * wired.dropShare()),
                    small(1000 * wired.ohm()));
        }
        return table.done();
    }

    /** From where to where; what begins at the battery begins at the bars where there are any. */
    static String words(Build build, Run run) {
        boolean atBars =
                hasBars(build) && run.kind().fused() && run.kind() != Run.Kind.LINK && run.kind() != Run.Kind.SERIES;
        return atBars ? "bars to " + run.kind().to() : run.words();
    }

    private static boolean hasBars(Build build) {
        return build.circuit().of(Run.Kind.LINK) != null;
    }

    /** Such as "2 x 6 AWG copper, 90 degC": how many, of what, and how hot its insulation may get. */
    static String conductor(WiredRun wired) {
        String size = wired.size().words();
        if (wired.conductor() instanceof Cable cable) {
            int poles = wired.run().kind() == Run.Kind.SERIES ? 1 : 2;
            return poles * wired.pieces() + " x " + size + " " + cable.metal().words() + ", "
                    + PlainNumber.of(cable.insulationDegC()) + " degC"
                    + (wired.pieces() > 1 ? ", " + wired.pieces() + " for each pole" : "");
        }
        if (wired.conductor() instanceof PanelLead lead) {
            String pairs = wired.pieces() > 1 ? wired.pieces() + " pairs, end to end, of " : "pair of ";
            return pairs + size + " panel leads, " + PlainNumber.of(lead.insulationDegC()) + " degC";
        }
        return "cord, " + size;
    }

    /** Of each conductor; a cable in a row of batteries is one, whose run counts half of it out and half back. */
    static double eachM(WiredRun wired) {
        if (wired.conductor() instanceof PanelLead lead) {
            return wired.pieces() * lead.lengthM();
        }
        if (wired.conductor() instanceof Cord cord) {
            return cord.lengthM();
        }
        return (wired.run().kind() == Run.Kind.SERIES ? 2 : 1) * wired.run().oneWayM();
    }

    static Table protections(Build build) {
        WireSchedule schedule = new WireSchedule(build);
        Table.Builder table = Table.titled("Fuses, breakers and switches")
                .figures("run")
                .words("protection")
                .figures("must part, V\u00a0DC")
                .figures("fault, about")
                .words("can part")
                .words("parted by hand with");
        for (WiredRun wired : schedule.runs) {
            if (wired.protection() != null || wired.run().kind() == Run.Kind.PANELS) {
                double faultA = wired.run().amps().fault();
                table.row(
                        String.valueOf(number(schedule.runs, wired)),
                        schedule.protection(wired),
                        tenths(wired.run().mostV()),
                        faultA > 0 ? about(faultA) + "\u00a0A" : "limits itself",
                        schedule.canPart(wired.protection()),
                        schedule.byHand(wired));
            }
        }
        return table.done();
    }

    private String protection(WiredRun wired) {
        Protection protection = wired.protection();
        if (protection == null) {
            return "none: the leads bear all that the panels give";
        }
        String words = protection.words();
        if (wired.run().kind() == Run.Kind.PANELS) {
            return rig.panelStrings() + " x " + words + ", in the plus of each string";
        }
        if (wired.run().kind() == Run.Kind.LINK) {
            return wired.run().count() + " x " + words + ", within 18 cm of each battery's plus";
        }
        return words + ", within 18 cm of the " + (hasBars(build) ? "plus bar" : "battery's plus");
    }

    /** Of standard sizes nothing is known but what they must do. */
    private String canPart(@Nullable Protection protection) {
        if (protection == null) {
            return "";
        }
        if (!build.counted()) {
            return "buy one that can";
        }
        return PlainNumber.of(protection.mostDcV()) + "\u00a0V, "
                + String.format(Locale.ROOT, "%,.0f\u00a0A", protection.interruptingA());
    }

    private String byHand(WiredRun wired) {
        Run run = wired.run();
        if (wired.parting() != null) {
            return wired.parting().listing().name();
        }
        if (run.kind() == Run.Kind.PANELS) {
            return "the plugs, once the panels are covered";
        }
        if (wired.protection() != null && wired.protection().isBreaker()) {
            return "the breaker";
        }
        if (run.kind() == Run.Kind.INVERTER) {
            return String.format(
                    Locale.ROOT,
                    "none chosen: a switch for %.0f A and %.0f V DC",
                    Math.ceil(run.amps().design()),
                    Math.ceil(run.mostV()));
        }
        return "the fuse, with all off";
    }

    /** Which runs have nothing of their own, and why; empty where there is none. */
    static String unprotected(Build build) {
        List<WiredRun> runs = build.circuit().runs();
        List<String> words = new ArrayList<>();
        for (WiredRun wired : runs) {
            String why = switch (wired.run().kind()) {
                case SERIES -> "the fuse of its row guards it";
                case ENGINE -> "its cord is chosen for the charger, so nothing else goes on it";
                case CORD -> "its cord is chosen for this load, so nothing else goes on it";
                default -> "";
            };
            if (!why.isEmpty()) {
                words.add("Run " + number(runs, wired) + " has none of its own: " + why + ".");
            }
        }
        return String.join(" ", words);
    }

    private static String tenths(double figure) {
        return String.format(Locale.ROOT, "%,.1f", figure);
    }

    /** More digits where there are few before the point. */
    static String small(double figure) {
        return String.format(Locale.ROOT, figure < .1 ? "%.3f" : figure < 10 ? "%.2f" : "%.1f", figure);
    }

    /** Taken up to two digits that count: it is an estimate, and what parts it must part more. */
    static String about(double amps) {
        double step = 1;
        double most = StrictMath.pow(10, SHORT_FAULT_DIGITS);
        while (amps / step >= most) {
            step *= 10;
        }
        return String.format(Locale.ROOT, "%,.0f", Math.ceil(amps / step) * step);
    }
}
