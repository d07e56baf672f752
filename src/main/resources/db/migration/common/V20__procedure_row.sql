create table procedure_row (
    procedure_id varchar(24) not null,
    version bigint not null,
    revision varchar(3) not null,
    sha256 varchar(64) not null,
    approved_by varchar(24) not null,
    primary key (procedure_id, version)
);
