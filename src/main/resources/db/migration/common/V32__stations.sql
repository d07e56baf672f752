-- Rows that follow from the streams station/....
create table station_row (
    station_id varchar(24) primary key,
    station_class varchar(40) not null,
    title varchar(60) not null,
    needs_qualification boolean not null,
    out_of_use_reason varchar(200)
);
