package brightseam.ui.chamber;

import brightseam.session.Item;
import brightseam.session.ListLine;
import brightseam.session.Placed;
import brightseam.session.shell.SessionView;
import brightseam.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Writes the list of what a session needs: what is missing first, then what may stay out, then what is in. */
final class Needs {

    private static final List<String> WHY = List.of("Not needed for this kit", "Comes later through the lock",
            "Is in the chamber for good");

    private final boolean lead;

    /** @param lead whether whoever looks may let something stay out */
    Needs(boolean lead) {
        this.lead = lead;
    }

    List<Need> of(SessionView view) {
        List<Need> needs = new ArrayList<>();
        view.list().stream().sorted(Comparator.comparing(Needs::standing, Comparator.comparing(
                standing -> standing == Need.Standing.MISSING ? 0 : standing == Need.Standing.LEFT_OUT ? 1 : 2)))
                .forEach(line -> needs.add(need(line)));
        view.besidesTheList().forEach(one -> needs.add(beside(one)));
        return needs;
    }

    private Need need(ListLine line) {
        Need.Standing standing = standing(line);
        String detail = switch (standing) {
            case MISSING -> line.need().count() == 1 ? "not scanned yet"
                    : line.there().size() + " of " + line.need().count() + " in";
            case LEFT_OUT -> line.leftOut().map(out -> out.by() + ": " + out.reason()).orElse("");
            case IN -> line.need().kind() == Item.Kind.SUPPLY ? String.join(", ", line.there()) : "";
        };
        String title = line.need().title().contains(line.need().key()) || line.need().kind()
                == Item.Kind.SUPPLY ? line.need().title()
                : line.need().title() + ", " + line.need().key();
        return new Need(title, detail, standing, standing == Need.Standing.MISSING && lead
                ? List.of(leaveOut(line)) : List.of());
    }

    private static Need beside(Placed one) {
        return new Need(one.item().title(), one.item().label() + ", not on the list, permitted", Need.Standing.IN,
                List.of());
    }

    private static Need.Standing standing(ListLine line) {
        return line.missing() == 0 ? Need.Standing.IN
                : line.leftOut().isPresent() ? Need.Standing.LEFT_OUT : Need.Standing.MISSING;
    }

    private static Act leaveOut(ListLine line) {
        return Act.other(Act.Kind.LEAVE_OUT, "Leave out").to(line.need().key()).asking(new Act.Confirm(
                "Leave out: " + line.need().title(), List.of("It can still come through the lock."), List.of(), WHY,
                Optional.empty(), Optional.of("The lead's PIN lets it stay out")));
    }

    /** {@code 5 of 7 lines in}. */
    static String count(SessionView view) {
        long in = view.list().stream().filter(ListLine::isMet).count();
        return in + " of " + Words.count(view.list().size(), "line", "lines") + " in or left out";
    }
}
