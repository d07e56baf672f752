-- Rows that follow from the streams argon/...: which source fed which chamber, from when until when.
create table argon_connection_row (
    supply_id varchar(24) not null,
    station_id varchar(24) not null,
    connected_millis bigint not null,
    disconnected_millis bigint,
    position bigint primary key
);

create index argon_connection_station on argon_connection_row (station_id, connected_millis);
