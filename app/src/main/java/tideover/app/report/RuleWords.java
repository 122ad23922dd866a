package tideover.app.report;

/** What a rule of wiring asks, in a few plain words. */
final class RuleWords {
    private RuleWords() {}

    /** The id itself where there are no words for it. */
    static String ofWiring(String id) {
        return switch (id) {
            case "no-cable" -> "no cable of the list suits a run";
            case "no-protection" -> "no fuse or breaker of the list suits a run";
            case "no-panel-lead" -> "no leads of the list suit the panels";
            case "no-string-fuse" -> "strings of panels need fuses and none of the list suits";
            case "no-panel-branch" -> "strings of panels meet and no fork of the list suits";
            case "no-cord" -> "no cord of the list suits a load that stands away";
            case "wire-metal" -> "a cable is not of copper, or nobody tells";
            case "wire-ampacity" -> "a conductor may carry less than what protects it lets pass";
            case "wire-drop" -> "a conductor loses too many volts";
            case "wire-sag" -> "a conductor loses too many volts while a motor starts";
            case "protection-rating" -> "a fuse or breaker is too small for what flows";
            case "fuse-volts" -> "a fuse does not part the direct volts, or nobody tells";
            case "breaker-dc" -> "a breaker does not part the direct volts, or nobody tells";
            case "interrupting" -> "a fuse or breaker cannot part what the battery gives when shorted";
            case "breaker-polarity" -> "a breaker parts one direction only where a fault may come from both";
            case "mated-connectors" -> "plugs of panels that are not made for each other";
            case "plug-amps" -> "the panels give more than the plugs carry";
            case "string-fuse" -> "strings of panels side by side without the fuses that they need";
            case "panel-switch" -> "nothing parts the panels' volts by hand";
            case "battery-switch" -> "nothing parts the inverter by hand";
            case "cord-amps" -> "a load takes more than its cord carries";
            case "links-alike" -> "links between batteries are not alike";
            case "not-priced" -> "small parts are needed that the list does not have";
            case "grounding" -> "whether neutral and ground are joined is for the maker and a licensed electrician";
            default -> id;
        };
    }
}
