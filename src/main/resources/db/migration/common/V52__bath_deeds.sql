-- What was done to baths: fills, additions, locks. Rows that follow from the streams bath/....
create table bath_deed_row (
    position bigint primary key,
    station_id varchar(24) not null,
    fill_number integer not null,
    done_at varchar(40) not null,
    what varchar(20) not null,
    addend varchar(24),
    litres varchar(40),
    cause varchar(20),
    reason varchar(200),
    workings varchar(16000) not null,
    signed_by varchar(80) not null
);

create index bath_deed_row_by_station on bath_deed_row (station_id, position);
