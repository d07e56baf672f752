-- Not a projection: what nodes that do not lead hand to the one that keeps the readings. Rows without bytes ask it to
-- settle a meter up to until_millis. A row is removed once what it says is done and stored.
create table series_post (
    number bigint generated always as identity primary key,
    meter_id varchar(24) not null,
    until_millis bigint not null,
    bytes bytea
);
