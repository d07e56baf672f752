package brightseam.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Our own labels as text: the field in the symbol, and what people type off the label. */
final class OwnLabelText {

    private static final Pattern FIELD = Pattern.compile("(1B|W|T|1H|1L|Y)BS([BTHPSKG]-[A-Z0-9.-]{1,22})([A-Z0-9*])");
    private static final Pattern ID = Pattern.compile("(?=.{1,24}$)[A-Z0-9]+([-.][A-Z0-9]+)*");
    private static final Pattern LIKE_OURS = Pattern.compile("[BTHPSKG][-0-9].{0,40}");
    private static final Pattern APART = Pattern.compile("(.*\\S)\\s+([A-Z0-9*])");
    private static final Pattern JOINED = Pattern.compile("(.+)([A-Z*])");
    private static final Pattern WORD_NUMBER = Pattern.compile("([A-Z]+)([0-9]+)");
    private static final Pattern NUMBER_WORD = Pattern.compile("([0-9]+)([A-Z]+)");

    private static final int TYPED_LENGTH_MAX = 60;

    private OwnLabelText() {}

    /**
     * The label in a symbol's field, upper or lower case (a keyboard's caps lock turns a wedge scanner's letters).
     *
     * @return empty where the field is not one of ours; refused where it is but its check character does not fit
     */
    static Optional<ScanReading> scanned(String field) {
        Matcher matcher = FIELD.matcher(field.toUpperCase(Locale.ROOT));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String id = matcher.group(2);
        Optional<LabelKind> kind = LabelKind.ofLetter(id.charAt(0))
                .filter(k -> k.dataIdentifier().equals(matcher.group(1)));
        boolean whole = kind.isPresent() && ID.matcher(id).matches()
                && CheckCharacter.fits(id, matcher.group(3).charAt(0));
        return Optional.of(whole
                ? new OwnLabel(kind.get(), id) : new Unreadable(UnreadableReason.CHECK_CHARACTER_WRONG));
    }

    /**
     * The label that somebody typed: {@code B-0142 K}, {@code b-0142k} or {@code b0142k}. A check character that is
     * a digit has to stand apart, so that an identity typed without one is not taken for a shorter identity with one.
     *
     * @return empty where the text does not look like one of ours; refused where it does and does not check out
     */
    static Optional<ScanReading> typed(String text) {
        if (text.length() > TYPED_LENGTH_MAX) {
            return Optional.empty();
        }
        String typed = text.strip().toUpperCase(Locale.ROOT).replaceAll("[\u2010-\u2015\u2212]", "-");
        Matcher matcher = APART.matcher(typed);
        if (!matcher.matches()) {
            matcher = JOINED.matcher(typed);
        }
        boolean likeOurs = LIKE_OURS.matcher(typed).matches();
        if (!matcher.matches()) {
            return likeOurs ? refused(UnreadableReason.CHECK_CHARACTER_MISSING) : Optional.empty();
        }
        char check = matcher.group(2).charAt(0);
        List<OwnLabel> fitting = candidates(matcher.group(1).replaceAll("\\s", "")).stream()
                .filter(id -> CheckCharacter.fits(id, check)).flatMap(id -> label(id).stream()).toList();
        if (fitting.size() == 1) {
            return Optional.of(fitting.getFirst());
        }
        if (fitting.size() > 1) {
            return refused(UnreadableReason.HYPHENS_NEEDED);
        }
        return likeOurs ? refused(UnreadableReason.CHECK_CHARACTER_WRONG) : Optional.empty();
    }

    /** As typed where it has its hyphens; else after the kind's letter, and where letters and digits meet. */
    private static List<String> candidates(String typed) {
        if (typed.length() < 2 || typed.indexOf('-') >= 0) {
            return List.of(typed);
        }
        String rest = typed.substring(1);
        String start = typed.charAt(0) + "-";
        List<String> candidates = new ArrayList<>(List.of(start + rest));
        for (Pattern pattern : List.of(WORD_NUMBER, NUMBER_WORD)) {
            Matcher matcher = pattern.matcher(rest);
            if (matcher.matches()) {
                candidates.add(start + matcher.group(1) + "-" + matcher.group(2));
            }
        }
        return candidates;
    }

    private static Optional<OwnLabel> label(String id) {
        return ID.matcher(id).matches()
                ? LabelKind.ofLetter(id.charAt(0)).filter(kind -> kind.owns(id)).map(kind -> new OwnLabel(kind, id))
                : Optional.empty();
    }

    private static Optional<ScanReading> refused(UnreadableReason reason) {
        return Optional.of(new Unreadable(reason));
    }
}
