-- What the chamber session of a kit needs besides parts and filler; rows that follow from the streams kit/....
alter table kit_row add column needs_set boolean default false not null;

create table kit_need_row (
    kit_id varchar(24) not null,
    need_number integer not null,
    type varchar(40) not null,
    title varchar(80) not null,
    need_count integer not null,
    primary key (kit_id, need_number)
);
