-- At which joint of the weld map contact was; empty for contact at none. At a joint some pieces of a lot are touched and
-- others not, so that counting has to know which contacts are such.
alter table trace_contact add column joint varchar(31) default '' not null;

drop index trace_contact_by_thing;
create index trace_contact_by_thing on trace_contact
    (kind, label, lot, from_millis, until_millis, traveller_id, piece_count, joint);
