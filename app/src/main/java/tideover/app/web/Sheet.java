package tideover.app.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.app.report.Page;

/**
 * One plan's sheet as its template lays it out.
 *
 * @param page      what the answer shows; null before the first
 * @param chosen    id of the rig that is looked at in the place of the answer's; empty for that
 * @param templates loads that can be added
 * @param picks     rigs that can be looked at
 */
public record Sheet(
        Frame frame,
        long id,
        long revision,
        Form.Lines lines,
        AnswerView answer,
        @Nullable Page page,
        String chosen,
        List<Template> templates,
        List<Pick> picks,
        String partsWords) {
    public Sheet {
        templates = List.copyOf(templates);
        picks = List.copyOf(picks);
    }

    /** A load that can be added. */
    public record Template(String id, String name) {}

    /** A rig that can be looked at. */
    public record Pick(String id, String words) {}

    public String pollAddress() {
        return "/plans/" + id + "/answer";
    }

    public String chosenInAddress() {
        return chosen.isEmpty() ? "" : "?rig=" + Addresses.of(chosen);
    }
}
