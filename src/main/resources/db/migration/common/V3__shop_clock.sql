-- Where the shop's elapsed time line stood when it was last noted; one row.
create table shop_clock (
    id integer primary key,
    elapsed_millis bigint not null,
    shop_wall_millis bigint not null,
    machine_wall_millis bigint not null,
    boot_id varchar(80) not null,
    uptime_millis bigint not null
);
