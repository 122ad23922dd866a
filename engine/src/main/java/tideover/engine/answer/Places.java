package tideover.engine.answer;

import java.util.List;
import tideover.engine.proof.Proof;
import tideover.engine.rig.Rig;
import tideover.engine.site.Station;

/**
 * One rig in several places: the same loads, outages, panels' tilt and facing, shade and room; the weather, the sun, the hours of the
 * clock, the coldest to design for and, unless the plan says it itself, snow are the place's own.
 */
public record Places(Question question, Options options, Rig rig, List<At> rows) {
    /** A question about more is refused. */
    public static final int MOST = 12;

    public Places {
        rows = List.copyOf(rows);
    }

    /**
     * @param lowestDegC outdoors, designed for: the coldest hour of the station's data less {@link #COLDER_K}; NaN where unknown
     * @param broken     ids of rules that the rig breaks there
     */
    public record At(Station station, double lowestDegC, boolean snow, Proof proof, List<String> broken) {
        public At {
            broken = List.copyOf(broken);
        }
    }

    /** Typical-year data do not hold the cold that a panel's volts must survive; the same allowance as a plan without a figure. */
    public static final double COLDER_K = 12;
}
