package brightseam.report;

/** An incident in a sentence. */
public final class IncidentWords {

    private IncidentWords() {}

    /** What happened, without when and by whom. */
    public static String of(Incident incident) {
        return switch (incident) {
            case Incident.Returned e -> "Returned to step " + e.step() + ": " + e.reason() + ". Superseded: "
                    + (e.superseded().isEmpty() ? "nothing" : String.join(", ", e.superseded())) + ".";
            case Incident.Touched e -> "Touched: " + e.what() + ".";
            case Incident.GlovesSpent e -> "Gloves changed, they had touched: " + e.what() + ".";
            case Incident.PiecesLeft e -> capital(Phrases.pieces(e.pieces())) + " set apart as " + e.child() + ": "
                    + e.reason() + ". " + e.mark().name() + " (" + e.mark().badge() + "), "
                    + Phrases.factors(e.mark().factors()) + ".";
            case Incident.Parted e -> capital(Phrases.pieces(e.pieces())) + " set apart from " + e.parent()
                    + ", whose first " + e.parentVersion() + " entries are told here too: " + e.reason() + ". "
                    + e.mark().name() + " (" + e.mark().badge() + "), " + Phrases.factors(e.mark().factors()) + ".";
            case Incident.Scrapped e -> capital(Phrases.pieces(e.pieces())) + " scrapped.";
        };
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
