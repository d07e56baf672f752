-- Rows that follow from the streams bath/...; times are ISO 8601 in UTC, decimals are text.
create table bath_row (
    station_id varchar(24) primary key,
    liquid varchar(20) not null,
    fill_number integer not null
);

create table bath_analysis_row (
    station_id varchar(24) not null,
    sample_number varchar(24) not null,
    fill_number integer not null,
    taken_at varchar(40) not null,
    entered_at varchar(40) not null,
    method varchar(80) not null,
    workings varchar(16000) not null,
    signed_by varchar(80) not null,
    position bigint not null,
    primary key (station_id, sample_number)
);

create table bath_value_row (
    station_id varchar(24) not null,
    sample_number varchar(24) not null,
    quantity varchar(24) not null,
    measured varchar(40) not null,
    in_limits boolean not null,
    primary key (station_id, sample_number, quantity)
);
