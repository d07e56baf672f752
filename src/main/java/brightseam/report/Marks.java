package brightseam.report;

import brightseam.kernel.Origin;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.procedure.SignedBy;
import brightseam.traveller.Disposition;
import brightseam.traveller.Meaning;
import brightseam.traveller.Signature;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns signatures into marks and remembers each, for the list of who signed on what authority. */
final class Marks {

    private final List<Mark> all = new ArrayList<>();

    Mark of(Signature signature, Origin origin, String covers, Collection<Role> entitled) {
        Signer signer = signature.signer();
        Mark mark = new Mark(signer.name(), signer.badge(), signature.meaning(), origin.at(), origin.tablet(), covers,
                entitled.stream().filter(signer::has).sorted().toList(), signer.roles(), signer.stamp(),
                signer.factors(), signature.content());
        all.add(mark);
        return mark;
    }

    static List<Role> entitled(SignedBy signedBy) {
        return switch (signedBy) {
            case FABRICATOR -> List.of(Role.FABRICATOR);
            case LEAD -> List.of(Role.LEAD);
            case INSPECTOR -> List.of(Role.INSPECTOR);
        };
    }

    static Collection<Role> entitled(Disposition disposition) {
        return disposition.roles();
    }

    /** One line for each person and set of roles, by badge: roles and stamps change in the course of years. */
    List<Authority> authority() {
        Map<List<Object>, List<Mark>> byPerson = new LinkedHashMap<>();
        all.forEach(mark -> byPerson.computeIfAbsent(List.of(mark.badge(), mark.name(), mark.roles(), mark.stamp()),
                key -> new ArrayList<>()).add(mark));
        return byPerson.values().stream().map(Marks::authority).sorted(Comparator.comparing(Authority::badge)).toList();
    }

    private static Authority authority(List<Mark> marks) {
        Mark first = marks.getFirst();
        List<Meaning> meanings = marks.stream().map(Mark::meaning).distinct().sorted().toList();
        return new Authority(first.badge(), first.name(), first.roles(), first.stamp(), meanings, marks.size());
    }
}
