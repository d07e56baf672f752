package brightseam.words;

/**
 * What a person reads about a refusal.
 *
 * @param word what the band says first, two or three words
 * @param reason why, in a sentence with the evidence
 * @param wayOut what to do now, in a sentence
 */
public record Explanation(String word, String reason, String wayOut) {

    /** Reason and way out in one line, for lists and prints. */
    public String sentence() {
        return reason + " " + wayOut;
    }
}
