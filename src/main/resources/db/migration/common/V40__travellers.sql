-- Which travellers there are and how to find them; everything else about one is folded from its stream.
create table traveller_row (
    traveller_id varchar(24) not null primary key,
    release_number bigint,
    parent_id varchar(24),
    kit_id varchar(24) not null,
    part_number varchar(40) not null,
    heat_id varchar(24) not null,
    procedure_id varchar(24) not null,
    pieces integer not null,
    phase varchar(20) not null,
    demo boolean not null,
    version bigint not null
);

create index traveller_row_by_kit on traveller_row (kit_id);
create index traveller_row_by_heat on traveller_row (heat_id);
create index traveller_row_by_phase on traveller_row (phase);
create index traveller_row_by_release on traveller_row (release_number);
