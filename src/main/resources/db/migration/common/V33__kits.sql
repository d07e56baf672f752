-- Rows that follow from the streams kit/...; times are ISO 8601 in UTC.
create table kit_row (
    kit_id varchar(24) primary key,
    title varchar(80) not null,
    session_due varchar(40),
    closed boolean not null
);

create table kit_line_row (
    kit_id varchar(24) not null,
    line_number integer not null,
    part_number varchar(24) not null,
    description varchar(80) not null,
    drawing_revision varchar(4) not null,
    quantity_count integer not null,
    procedure_id varchar(24) not null,
    heat_id varchar(24),
    primary key (kit_id, line_number)
);
