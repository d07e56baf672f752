-- Projection of the people streams: disposable, made again from the ledger.
create table person_row (
    badge varchar(24) primary key,
    name varchar(80) not null,
    active boolean not null,
    stamp varchar(24),
    pin_set boolean not null,
    pin_locked boolean not null
);

create table person_role_row (
    badge varchar(24) not null,
    role varchar(20) not null,
    primary key (badge, role)
);

create table person_qualification_row (
    badge varchar(24) not null,
    word varchar(40) not null,
    until_millis bigint not null,
    primary key (badge, word)
);

-- Every stamp number ever issued; the key is one more guard against issuing it twice.
create table stamp_row (
    stamp varchar(24) primary key,
    badge varchar(24) not null,
    issued_at_millis bigint not null,
    withdrawn_at_millis bigint,
    withdrawn_for varchar(200)
);

-- Not a projection: secrets stay out of the ledger, so they cannot be made again from it.
create table person_pin (
    badge varchar(24) primary key,
    pin_hash varchar(100) not null,
    failures integer not null,
    next_try_millis bigint not null
);

-- Not a projection: what stands on which tablet now. The token itself is only in the tablet's cookie.
create table tablet (
    label varchar(40) primary key,
    token_hash varchar(64) not null unique,
    badge varchar(24),
    signed_in_millis bigint,
    active_millis bigint,
    station_class varchar(40),
    open_card varchar(24)
);

create table tablet_station (
    label varchar(40) not null,
    station varchar(24) not null,
    primary key (label, station)
);
