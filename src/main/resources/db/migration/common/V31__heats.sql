-- Rows that follow from the streams heat/...; times are ISO 8601 in UTC.
create table heat_row (
    heat_id varchar(24) primary key,
    grade varchar(12) not null,
    form varchar(40) not null,
    dimensions varchar(60) not null,
    maker varchar(80) not null,
    certificate_number varchar(40) not null,
    received_at varchar(40) not null,
    hold_reason varchar(200)
);
