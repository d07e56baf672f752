-- Rows that follow from the streams traveller/...; times are wall time in milliseconds since 1970.
-- What touched which pieces. A step of no name and pass 0 stand for contact that goes with no step.
create table trace_contact (
    position bigint not null,
    number integer not null,
    traveller_id varchar(24) not null,
    recorded_as varchar(24) not null,
    pieces varchar(4000) not null,
    piece_count integer not null,
    kind varchar(12) not null,
    label varchar(24) not null,
    lot varchar(40) not null,
    type varchar(40) not null,
    step_id varchar(40) not null,
    pass integer not null,
    from_millis bigint not null,
    until_millis bigint,
    primary key (position, number)
);

-- Holds every column that counting asks for, so that a busy thing's contacts are counted without reading their rows.
create index trace_contact_by_thing on trace_contact
    (kind, label, lot, from_millis, until_millis, traveller_id, piece_count);
create index trace_contact_by_traveller on trace_contact (traveller_id, step_id, pass);

-- Where the pieces are now, and the event that began contact with the bin that they are in.
create table trace_traveller (
    traveller_id varchar(24) not null primary key,
    parent_id varchar(24),
    kit_id varchar(24) not null,
    heat_id varchar(24) not null,
    part_number varchar(40) not null,
    part_description varchar(80) not null,
    drawing_revision varchar(10) not null,
    pieces varchar(4000) not null,
    phase varchar(20) not null,
    quarantine boolean not null,
    suspect boolean not null,
    bin_id varchar(24),
    bin_class varchar(20),
    bin_closed boolean,
    bin_position bigint not null,
    step_id varchar(40)
);

create index trace_traveller_by_parent on trace_traveller (parent_id);

-- Which lots have been under which label.
create table trace_thing (
    kind varchar(12) not null,
    label varchar(24) not null,
    lot varchar(40) not null,
    type varchar(40) not null,
    first_position bigint not null,
    primary key (kind, label, lot)
);

create index trace_thing_by_label on trace_thing (label);
create index trace_thing_by_lot on trace_thing (kind, lot);
