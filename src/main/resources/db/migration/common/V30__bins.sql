-- Rows that follow from the streams bin/...; a rebuild from the ledger makes the same rows.
create table bin_row (
    bin_id varchar(24) primary key,
    bin_class varchar(20) not null,
    capacity_count integer,
    closed boolean not null,
    fitness varchar(10) not null,
    retired boolean not null
);

create table bin_content_row (
    bin_id varchar(24) not null,
    traveller_id varchar(24) not null,
    put_in_position bigint not null,
    primary key (bin_id, traveller_id)
);

create index bin_content_row_by_traveller on bin_content_row (traveller_id, put_in_position);
