-- How fast the noted clock ran, and which node noted it down.
alter table shop_clock add column speed double precision default 1 not null;
alter table shop_clock add column noted_by varchar(40) default '' not null;
