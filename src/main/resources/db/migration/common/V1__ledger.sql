-- The ledger. Positions rise by one without a hole; a stream's versions do too.
create table ledger_entry (
    position bigint primary key,
    stream varchar(80) not null,
    version bigint not null,
    type varchar(80) not null,
    json varchar(1000000) not null,
    previous varchar(64) not null,
    hash varchar(64) not null
);

-- Descending, so that a stream's end is found at once; H2 reads an index in its own direction only.
create unique index ledger_entry_chain on ledger_entry (stream, version desc);
