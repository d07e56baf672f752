-- Readings of meters, too many for the ledger; the ledger gets the hash of each stretch that proves something.
-- Not projections. Readings become blocks of about a thousand; until then they lie in series_tail as they came in.
create table series_block (
    meter_id varchar(24) not null,
    number bigint not null,
    bytes bytea not null,
    primary key (meter_id, number)
);

-- What charts need of each block. through: the last row of series_tail that is in this block or an earlier one.
create table series_span (
    meter_id varchar(24) not null,
    from_millis bigint not null,
    number bigint not null,
    to_millis bigint not null,
    points integer not null,
    first_value double precision not null,
    last_value double precision not null,
    low double precision not null,
    low_at bigint not null,
    high double precision not null,
    high_at bigint not null,
    flags integer not null,
    through bigint not null,
    primary key (meter_id, from_millis, number)
);

create index series_span_by_number on series_span (meter_id, number);

create table series_tail (
    meter_id varchar(24) not null,
    number bigint not null,
    bytes bytea not null,
    primary key (meter_id, number)
);
