-- Rows that follow from the streams meter/...; a rebuild from the ledger makes the same rows.
create table meter_row (
    meter_id varchar(24) primary key,
    station_id varchar(24) not null
);

create index meter_row_by_station on meter_row (station_id);

-- Not a projection: secrets stay out of the ledger. Several meters in one device share its token.
create table meter_token (
    meter_id varchar(24) primary key,
    token_hash varchar(64) not null
);

create index meter_token_by_hash on meter_token (token_hash);
