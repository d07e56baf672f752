package brightseam.ui.trace;

import brightseam.report.Phrases;
import brightseam.trace.Reach;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.trace.TraceQuestion;
import brightseam.trace.Whereabouts;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Contacts, things and whereabouts in the shop's words. */
final class TraceWords {

    private TraceWords() {}

    /** What a kind of thing is called: {@code bath}, {@code gloves}. */
    static String kind(ThingKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /** {@code bath S-ACID-1, fill 3}; {@code gloves G-0031, lot 77/A}; {@code bin B-0142}. */
    static String thing(Thing thing) {
        return thing(thing.kind(), Optional.of(thing.label()), Optional.of(thing.lot()));
    }

    /** The same of what a question is about. */
    static String thing(TraceQuestion question) {
        return thing(question.kind(), question.label(), question.lot());
    }

    private static String thing(ThingKind kind, Optional<String> label, Optional<String> lot) {
        String lots = lot.filter(text -> !text.equals(Thing.NO_LOT))
                .map(text -> (label.isPresent() ? ", " : "") + (kind == ThingKind.BATH ? text : "lot " + text))
                .orElse("");
        return kind(kind) + " " + label.orElse("") + lots;
    }

    /** With a capital. */
    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** {@code 4 Mar 2031 08:10:02 to 08:14:30}; one time where contact had no length. */
    static String when(Instant from, Optional<Instant> until, ZoneId zone) {
        String begun = Words.stamp(from, zone);
        return until.map(end -> end.equals(from) ? begun : begun + " to " + end(from, end, zone))
                .orElse("since " + begun);
    }

    /** The day is said once. */
    private static String end(Instant from, Instant until, ZoneId zone) {
        String end = Words.stamp(until, zone);
        int time = end.lastIndexOf(' ') + 1;
        return Words.stamp(from, zone).startsWith(end.substring(0, time)) ? end.substring(time) : end;
    }

    /** {@code step acid pickle, pass 2}; {@code step weld, joint K-0047.J03}; {@code at no step}. */
    static String step(Touch touch) {
        return touch.step().map(step -> "step " + Wording.words(step.value())
                + (touch.pass() > 1 ? ", pass " + touch.pass() : "")
                + touch.joint().map(joint -> ", joint " + joint).orElse("")).orElse("at no step");
    }

    /** Whether it is stopped, where in its life, where it lies: {@code suspect, in quarantine; closed}. */
    static String where(Whereabouts now) {
        List<String> words = new ArrayList<>();
        if (now.quarantine()) {
            words.add(now.suspect() ? "suspect, in quarantine" : "in quarantine");
        }
        words.add(Phrases.phase(now.phase()));
        now.step().filter(step -> words.size() < 3).ifPresent(step -> words.add("step " + Wording.words(step.value())));
        now.bin().ifPresent(where -> words.add("in " + Wording.words(where.binClass().name()) + " " + where.bin()
                + (where.binClass().isClean() ? where.closed() ? ", closed" : ", open" : "")));
        return String.join("; ", words);
    }

    /** Everything counted, in one sentence. */
    static String counts(Reach reach) {
        Reach.Counts counts = reach.counts();
        if (counts.travellers() == 0) {
            return "Nothing.";
        }
        List<String> where = new ArrayList<>();
        add(where, counts.quarantine(), "in quarantine" + (counts.suspect() > 0
                ? " (" + counts.suspect() + " of them suspect)" : ""));
        add(where, counts.onTheirWay(), "on the way");
        add(where, counts.passedIn(), "in the chamber");
        add(where, counts.closed(), "closed");
        add(where, counts.scrapped(), "scrapped");
        return Words.count(counts.pieces(), "piece", "pieces") + " of "
                + Words.count(counts.travellers(), "traveller", "travellers") + ", "
                + Words.count(counts.kits(), "kit", "kits") + ", "
                + Words.count(counts.contacts(), "contact", "contacts") + ". Travellers now: "
                + String.join(", ", where) + ".";
    }

    private static void add(List<String> words, int count, String what) {
        if (count > 0) {
            words.add(count + " " + what);
        }
    }
}
