package brightseam.session;

import brightseam.kernel.Refusal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What has to hold of a thing before it goes into a session, through the open chamber or through the lock. */
final class ItemRules {

    private final ChamberSession session;
    private final ListFact list;

    ItemRules(ChamberSession session, ListFact list) {
        this.session = session;
        this.list = list;
    }

    /** Everything that stands against {@code fact}. */
    List<Refusal> against(ItemFact fact) {
        List<Refusal> all = new ArrayList<>();
        Item item = fact.item();
        session.placed(item.label()).filter(one -> one.where() != Placed.Where.PASSED_OUT).ifPresent(one ->
                all.add(new SessionRefusal.ItemCheckedInAlready(item.label(), one.since())));
        fact.otherSession().filter(other -> !other.equals(session.id())).ifPresent(other ->
                all.add(new SessionRefusal.ItemInAnotherSession(item.label(), other)));
        switch (item.kind()) {
            case PARTS -> ofAnotherKit(fact).ifPresent(all::add);
            case FILLER -> filler(fact, all);
            case SUPPLY -> supply(fact).ifPresent(all::add);
        }
        window(fact).ifPresent(all::add);
        all.addAll(fact.objections());
        return all.stream().distinct().toList();
    }

    private Optional<Refusal> ofAnotherKit(ItemFact fact) {
        return fact.kit().filter(kit -> !kit.equals(session.kit())).map(kit ->
                new SessionRefusal.ItemOfAnotherKit(fact.item().label(), kit, session.kit()));
    }

    /** The lots of filler are those that the kit names; matching grade: AWS G2.4, from memory. */
    private void filler(ItemFact fact, List<Refusal> all) {
        if (fact.kit().filter(kit -> !kit.equals(session.kit())).isPresent()) {
            all.add(new SessionRefusal.FillerNotOfKit(fact.item().label(), session.kit(), list.needs().stream()
                    .filter(need -> need.kind() == Item.Kind.FILLER).map(Need::key).toList()));
        }
        fact.grade().filter(grade -> !list.grades().isEmpty() && !list.grades().contains(grade)).ifPresent(grade ->
                all.add(new SessionRefusal.FillerOfWrongGrade(
                        fact.item().label(), grade, List.copyOf(list.grades()))));
    }

    private Optional<Refusal> supply(ItemFact fact) {
        boolean listed = list.needs().stream().anyMatch(need -> need.isMetBy(fact.item()));
        return listed || fact.permitted() ? Optional.empty() : Optional.of(new SessionRefusal.ItemNotOnList(
                fact.item().label(), fact.item().type(), session.kit()));
    }

    private Optional<Refusal> window(ItemFact fact) {
        Duration needed = list.purgeAndWork();
        return fact.windowLeft().filter(left -> left.compareTo(needed) < 0).map(left ->
                new SessionRefusal.ItemWindowTooShort(fact.item().label(), left, needed));
    }
}
