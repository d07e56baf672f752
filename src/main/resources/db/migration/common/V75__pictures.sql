-- Not projections: the bytes of pictures stay out of the ledger, which names them by their SHA-256. They lie in parts,
-- because one value of this type has a million bytes at most in one of the two databases.
create table picture (
    sha256 varchar(64) primary key,
    type varchar(8) not null,
    width_pixels integer not null,
    height_pixels integer not null,
    size_bytes integer not null,
    stored_at varchar(40) not null,
    stored_by varchar(24) not null
);

create table picture_part (
    sha256 varchar(64) not null,
    number integer not null,
    bytes bytea not null,
    primary key (sha256, number)
);
