-- Not a projection: asking is no event. When each system last asked, to a minute.
create table shop_system_use (
    system_id varchar(24) primary key,
    last_used_at varchar(40) not null
);
