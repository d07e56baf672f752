-- Rows that follow from the streams supply/...; a rebuild from the ledger makes the same rows.
create table supply_row (
    supply_id varchar(24) primary key,
    kind varchar(12) not null,
    type varchar(40) not null,
    title varchar(60) not null,
    lot varchar(40) not null,
    maker varchar(60) not null,
    last_day date,
    touches_uncleaned boolean not null,
    touches_cleaned boolean not null,
    standing varchar(12) not null,
    contamination varchar(200)
);
