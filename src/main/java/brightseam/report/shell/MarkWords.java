package brightseam.report.shell;

import brightseam.report.Mark;
import brightseam.report.Phrases;
import java.time.ZoneId;

/** A signature in one line: printed name, meaning, time, what it covers, authority, factors. */
record MarkWords(Mark mark, ZoneId zone) {

    String name() {
        return mark.name() + mark.stamp().map(stamp -> " · stamp " + stamp).orElse("");
    }

    String rest() {
        String authority = mark.actedAs().isEmpty() ? "" : " as " + Phrases.roles(mark.actedAs());
        return "(" + mark.badge() + ") " + Phrases.meaning(mark.meaning()) + authority + ", "
                + Phrases.when(mark.at(), zone) + ". Covers " + mark.covers() + ". Recognised: "
                + Phrases.factors(mark.factors()) + ", tablet " + mark.tablet() + "."
                + mark.contentMark().map(words -> " Signed content " + words + " …").orElse("");
    }
}
