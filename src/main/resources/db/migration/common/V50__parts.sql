-- Rows that follow from the streams part/...; a rebuild from the ledger makes the same rows. Measures that a shape
-- does not have are empty; lengths in millimetres, areas in square, volumes in cubic centimetres.
create table part_row (
    part_number varchar(24) primary key,
    shape varchar(10) not null,
    diameter_mm double precision,
    wall_mm double precision,
    length_mm double precision,
    width_mm double precision,
    thickness_mm double precision,
    bore varchar(10),
    outside_area_cm2 double precision,
    inside_area_cm2 double precision,
    volume_cm3 double precision,
    weighed_g double precision
);

-- How much a bin takes besides capacity_count lots; decimals as they were given.
alter table bin_row add column capacity_pieces integer;
alter table bin_row add column capacity_square_metres varchar(24);
alter table bin_row add column capacity_kilograms varchar(24);
