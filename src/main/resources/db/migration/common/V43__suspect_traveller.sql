-- Open nonconformances of suspicion. A closed traveller that has one has not ended.
create table suspect_traveller (
    traveller_id varchar(24) not null,
    nonconformance integer not null,
    primary key (traveller_id, nonconformance)
);
