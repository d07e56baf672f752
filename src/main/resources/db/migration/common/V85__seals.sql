-- Not projections: signed heads of the tree over the ledger, and the tree's hashes, so that a proof and a start read a
-- few rows. heads.txt beside the database is the first to hold a head; these rows follow.
create table ledger_seal (
    size bigint primary key,
    root varchar(64) not null,
    note varchar(4000) not null,
    sealed_millis bigint not null
);

-- 256 hashes of 32 bytes: at level 0 of leaves, at level n of full subtrees of 256^n leaves; and the root over them.
create table ledger_tile (
    level integer not null,
    tile_index bigint not null,
    root varchar(64) not null,
    hashes bytea not null,
    primary key (level, tile_index)
);
