-- Rows that follow from the streams joint/...; a rebuild from the ledger makes the same rows.
create table joint_row (
    joint_id varchar(40) primary key,
    kit_id varchar(24) not null,
    session_id varchar(24) not null,
    welder_id varchar(24) not null,
    running boolean not null,
    settled boolean not null
);

create index joint_row_by_kit on joint_row (kit_id);
create index joint_row_by_session on joint_row (session_id);
create index joint_row_not_settled on joint_row (settled);
