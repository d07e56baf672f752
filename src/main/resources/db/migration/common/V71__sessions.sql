-- Rows that follow from the streams session/...; a rebuild from the ledger makes the same rows.
create table session_row (
    session_id varchar(24) primary key,
    number bigint,
    kit_id varchar(24) not null,
    chamber_id varchar(24) not null,
    phase varchar(12) not null,
    is_over boolean not null,
    position bigint not null
);

create index session_row_by_kit on session_row (kit_id);

-- What is checked in or inside; what left again is not here.
create table session_item_row (
    session_id varchar(24) not null,
    label varchar(24) not null,
    primary key (session_id, label)
);

create index session_item_row_by_label on session_item_row (label);
