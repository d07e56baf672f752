package brightseam.session;

import java.time.Duration;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What the kit needs now.
 *
 * @param needs the lines of the list, travellers first
 * @param grades the grades of the kit's parts, which its filler has to match
 * @param purgeAndWork how long a clean window has to last from now: the purge by forecast, and the work behind it
 */
public record ListFact(List<Need> needs, SortedSet<String> grades, Duration purgeAndWork) {

    /** Copies the collections and refuses two lines of one key. */
    public ListFact {
        needs = List.copyOf(needs);
        grades = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(grades));
        if (needs.stream().map(Need::key).distinct().count() != needs.size()) {
            throw new IllegalArgumentException("two lines of one key");
        }
    }
}
