-- Whether a flyer's log is shared, whether the flyer's answers rest on the pool, and on which snapshot of it.
alter table flyer add column pool_sharing boolean default false not null;
alter table flyer add column pool_using boolean default true not null;
alter table flyer add column pool_snapshot integer;

-- What the pool knew at a time, never changed. It belongs to no flyer: small, and the same on every part of a distributed database.
create table pool_snapshot (
    number integer not null primary key,
    given_by varchar(100),
    stored_at timestamp(6) with time zone not null,
    checksum varchar(64) not null unique,
    document varchar(20000) not null
);

-- Who took part in a snapshot made here, and what the others alone teach them. Snapshots taken in have no rows here.
create table pool_share (
    flyer_id uuid not null references flyer (id),
    snapshot integer not null references pool_snapshot (number),
    fleet_version bigint not null,
    digest varchar(64) not null,
    others varchar(20000),
    primary key (flyer_id, snapshot)
);

create index pool_share_by_snapshot on pool_share (snapshot, flyer_id);
