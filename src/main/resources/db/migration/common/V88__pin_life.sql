-- Not projections, as person_pin: secrets stay out of the ledger. 0: set before its time was written down.
alter table person_pin add column set_millis bigint default 0 not null;
alter table person_pin add column first_pin boolean default false not null;

-- The last few PINs of each badge, which are not taken again.
create table person_pin_before (
    badge varchar(24) not null,
    set_millis bigint not null,
    pin_hash varchar(100) not null
);

create index person_pin_before_badge on person_pin_before (badge, set_millis);
