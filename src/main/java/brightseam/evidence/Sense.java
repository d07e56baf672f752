package brightseam.evidence;

import brightseam.ledger.Chain;
import brightseam.ledger.StreamName;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether entries that are proven one by one say the same of one another. */
final class Sense {

    private static final String RELEASED = "released";
    private static final String SET_APART = "set-apart";
    private static final String APPROVED = "procedure-approved";

    private final Map<StreamName, List<ReadEntry>> entries;
    private final List<ReadEntry> own;

    private Sense(Map<StreamName, List<ReadEntry>> entries) {
        this.entries = entries;
        this.own = entries.values().iterator().next();
    }

    /** The first thing that contradicts; empty where nothing does. */
    static Optional<Misfit> misfit(Map<StreamName, List<ReadEntry>> entries) {
        Sense sense = new Sense(entries);
        return sense.beginning().or(sense::histories).or(sense::procedureTexts).or(sense::approval);
    }

    private Optional<Misfit> beginning() {
        ReadEntry first = own.getFirst();
        boolean begins = is(first, RELEASED) || is(first, SET_APART);
        boolean named = first.content().text("traveller").equals(Optional.of(first.entry().stream().identity()));
        return begins && named ? Optional.empty() : Optional.of(new Misfit.BeginningWrong(Place.of(first)));
    }

    /** A lot that was parted carries its parent's record inside its first entry. */
    private Optional<Misfit> histories() {
        for (List<ReadEntry> stream : entries.values()) {
            ReadEntry first = stream.getFirst();
            if (is(first, SET_APART)) {
                Optional<Misfit> misfit = parent(first).flatMap(parent -> history(first, parent));
                if (misfit.isPresent()) {
                    return misfit;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<StreamName> parent(ReadEntry first) {
        return first.content().text("parent").flatMap(label -> Leanings.stream("traveller", label))
                .filter(entries::containsKey);
    }

    private Optional<Misfit> history(ReadEntry first, StreamName parent) {
        List<ReadEntry> lived = entries.get(parent);
        List<Json> told = first.content().values("history");
        boolean whole = first.content().at("parent_version").flatMap(Json::plain)
                .equals(Optional.of(String.valueOf(told.size())));
        if (!whole || told.size() > lived.size()) {
            return Optional.of(new Misfit.HistoryDiffers(Place.of(first), parent, lived.size()));
        }
        for (int i = 0; i < told.size(); i++) {
            ReadEntry real = lived.get(i);
            boolean same = told.get(i).text("type").map(ReadEntry::kind).equals(Optional.of(real.kind()))
                    && told.get(i).at("event").equals(Optional.of(real.content()));
            if (!same) {
                return Optional.of(new Misfit.HistoryDiffers(Place.of(first), parent, i + 1L));
            }
        }
        return Optional.empty();
    }

    private static boolean is(ReadEntry read, String kind) {
        return read.kind().equals(kind);
    }

    private List<ReadEntry> approvals() {
        List<ReadEntry> approvals = new ArrayList<>();
        entries.forEach((stream, all) -> all.stream()
                .filter(read -> stream.family().equals("procedure") && is(read, APPROVED))
                .forEach(approvals::add));
        return approvals;
    }

    private Optional<Misfit> procedureTexts() {
        return approvals().stream().filter(read -> !read.content().text("content")
                        .map(text -> Chain.sha256(text.getBytes(StandardCharsets.UTF_8)))
                        .equals(read.content().text("sha256")))
                .findFirst().map(read -> new Misfit.ProcedureTextWrong(Place.of(read)));
    }

    private Optional<Misfit> approval() {
        Optional<Json> followed = begun(own.getFirst().content()).at("procedure");
        Optional<String> id = followed.flatMap(ref -> ref.text("id"));
        boolean here = id.flatMap(name -> Leanings.stream("procedure", name)).filter(entries::containsKey).isPresent();
        boolean approved = approvals().stream().anyMatch(read -> read.content().text("id").equals(id)
                && List.of("revision", "sha256").stream().allMatch(name ->
                        read.content().text(name).equals(followed.flatMap(ref -> ref.text(name)))));
        return !here || approved
                ? Optional.empty()
                : Optional.of(new Misfit.ProcedureNotApproved(id.get(),
                        followed.flatMap(ref -> ref.text("revision")).orElse("none")));
    }

    /** What began the lot, in its own record or in the record that it was set apart from. */
    static Json begun(Json first) {
        List<Json> history = first.values("history");
        return history.isEmpty() ? first : history.getFirst().at("event").map(Sense::begun).orElse(first);
    }
}
