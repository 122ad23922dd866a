package tideover.app.report;

import java.util.List;
import tideover.engine.proof.CarriedShare;

/** Shares and their intervals as marks on one scale, each beside its figures, with the target as a rule through all. */
final class ShareStrip {
    private static final double WIDTH = 190;
    private static final double HEIGHT = 16;

    private final Axis axis;
    private final double target;

    /** A scale from a round figure below everything shown up to all. */
    ShareStrip(List<CarriedShare> shares, double target) {
        double least = target;
        for (CarriedShare share : shares) {
            least = Math.min(least, Math.min(share.low(), share.share()));
        }
        double from = Math.max(0, Math.min(0.9, Math.floor(least * 10 - 1e-9) / 10));
        this.axis = new Axis(from, 1, 6, WIDTH - 6);
        this.target = target;
    }

    /** Such as "70 to 100, rule at the 95 asked". */
    String scale() {
        return Words.percent(axis.from()) + " to 100, rule: " + Words.percent(target) + " asked";
    }

    String of(CarriedShare share) {
        double middle = HEIGHT / 2;
        return Svg.silent(WIDTH, HEIGHT)
                .line("grid", axis.at(), middle, axis.until(), middle)
                .line("asked", axis.of(target), 0, axis.of(target), HEIGHT)
                .line("interval", axis.of(share.low()), middle, axis.of(share.high()), middle)
                .dot("mark", axis.of(share.share()), middle, 3.6)
                .done();
    }
}
