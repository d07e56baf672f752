-- Rows that follow from the streams shop-system/...; a rebuild from the ledger makes the same rows.
create table shop_system_row (
    system_id varchar(24) primary key,
    title varchar(80) not null,
    scopes varchar(40) not null,
    answering_badge varchar(24),
    answering_name varchar(80),
    tokens_made integer not null,
    token_sha256 varchar(64),
    made_at varchar(40),
    made_millis bigint,
    made_by varchar(24),
    withdrawn_reason varchar(200),
    withdrawn_at varchar(40),
    withdrawn_millis bigint,
    withdrawn_by varchar(24)
);

create index shop_system_row_by_token on shop_system_row (token_sha256);
