-- Rows that follow from the streams chamber/... and argon/...; times are ISO 8601 in UTC, decimals are text.
create table chamber_row (
    station_id varchar(24) primary key
);

-- One line for each source in sources: its label, a space, standard litres.
create table argon_used_row (
    station_id varchar(24) not null,
    session_id varchar(24) primary key,
    counted_at varchar(40) not null,
    forecast_litres varchar(40) not null,
    by_content_litres varchar(40),
    by_flow_litres varchar(40),
    unproven_seconds bigint not null,
    sources varchar(4000) not null,
    position bigint not null
);

create table argon_row (
    supply_id varchar(24) primary key
);

create table argon_reading_row (
    supply_id varchar(24) not null,
    read_at varchar(40) not null,
    elapsed_millis bigint not null,
    pressure varchar(40),
    temperature varchar(40),
    level_percent varchar(40),
    meter varchar(24),
    position bigint primary key
);
