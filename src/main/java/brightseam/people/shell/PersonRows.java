package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import brightseam.people.PersonEvent;
import brightseam.people.PersonEvent.FirstPinSet;
import brightseam.people.PersonEvent.OfStamp;
import brightseam.people.PersonEvent.PersonDeactivated;
import brightseam.people.PersonEvent.PersonRegistered;
import brightseam.people.PersonEvent.PinLocked;
import brightseam.people.PersonEvent.PinRefused;
import brightseam.people.PersonEvent.PinSet;
import brightseam.people.PersonEvent.PinUnlocked;
import brightseam.people.PersonEvent.QualificationGranted;
import brightseam.people.PersonEvent.RolesChanged;
import brightseam.people.PersonEvent.SignedIn;
import brightseam.people.PersonEvent.StampIssued;
import brightseam.people.Qualification;
import brightseam.people.Role;
import brightseam.people.Stamp;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Writes the rows of people and of stamp numbers. */
@Component
class PersonRows implements Projection {

    private final JdbcClient jdbc;

    PersonRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("person_row", "person_role_row", "person_qualification_row", "stamp_row");
    }

    @Override
    public void apply(Entry entry) {
        if (PersonCodec.isOfPerson(entry)) {
            apply(PersonCodec.EVENTS.read(entry));
        }
    }

    private void apply(PersonEvent event) {
        switch (event) {
            case PersonRegistered registered -> registered(registered);
            case RolesChanged change -> roles(change.badge(), change.roles());
            case StampIssued issued -> issued(issued);
            case OfStamp ended -> ended(ended);
            case QualificationGranted granted -> qualified(granted.badge(), granted.qualification());
            case PersonDeactivated left -> flag("update person_row set active = false where badge = ?", left);
            case PinSet set -> flag("update person_row set pin_set = true where badge = ?", set);
            case FirstPinSet set -> flag("update person_row set pin_set = true where badge = ?", set);
            case PinLocked locked -> flag("update person_row set pin_locked = true where badge = ?", locked);
            case PinUnlocked open -> flag("update person_row set pin_locked = false where badge = ?", open);
            case PinRefused refused -> { }
            case SignedIn signedIn -> { }
        }
    }

    private void registered(PersonRegistered event) {
        jdbc.sql("""
                insert into person_row (badge, name, active, stamp, pin_set, pin_locked)
                values (?, ?, true, null, false, false)""")
                .params(event.badge().value(), event.name())
                .update();
        roles(event.badge(), event.roles());
    }

    private void roles(BadgeId badge, List<Role> roles) {
        jdbc.sql("delete from person_role_row where badge = ?").params(badge.value()).update();
        roles.forEach(role -> jdbc.sql("insert into person_role_row (badge, role) values (?, ?)")
                .params(badge.value(), role.name())
                .update());
    }

    private void issued(StampIssued event) {
        jdbc.sql("insert into stamp_row (stamp, badge, issued_at_millis) values (?, ?, ?)")
                .params(event.stamp(), event.badge().value(), event.origin().at().wall().toEpochMilli())
                .update();
        jdbc.sql("update person_row set stamp = ? where badge = ?")
                .params(event.stamp(), event.badge().value())
                .update();
    }

    /** The row keeps when the holder first could not sign with it any more; what came later is in its story. */
    private void ended(OfStamp event) {
        jdbc.sql("""
                update stamp_row set withdrawn_at_millis = ?, withdrawn_for = ?
                where stamp = ? and withdrawn_at_millis is null""")
                .params(event.origin().at().wall().toEpochMilli(), Stamp.reason(event), event.stamp())
                .update();
        jdbc.sql("update person_row set stamp = null where badge = ? and stamp = ?")
                .params(event.badge().value(), event.stamp())
                .update();
    }

    private void qualified(BadgeId badge, Qualification qualification) {
        jdbc.sql("delete from person_qualification_row where badge = ? and word = ?")
                .params(badge.value(), qualification.word())
                .update();
        jdbc.sql("insert into person_qualification_row (badge, word, until_millis) values (?, ?, ?)")
                .params(badge.value(), qualification.word(), qualification.until().toEpochMilli())
                .update();
    }

    private void flag(String sql, PersonEvent event) {
        jdbc.sql(sql).params(event.badge().value()).update();
    }
}
