-- Where a tablet stands was never asked: the label of the station is scanned at each step.
drop table tablet_station;
alter table tablet drop column station_class;
