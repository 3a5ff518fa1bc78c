-- A name in use is unique; an archived row gives its name back.
create table powder (
    flyer_id uuid not null references flyer (id),
    id uuid not null,
    name varchar(80) not null,
    name_in_use varchar(80),
    lot varchar(80),
    granulation varchar(40),
    force_value varchar(48) not null,
    force_unit varchar(12) not null,
    relative_uncertainty varchar(48) not null,
    note varchar(500),
    created_at timestamp(6) with time zone not null,
    archived_at timestamp(6) with time zone,
    version bigint not null,
    primary key (flyer_id, id),
    unique (flyer_id, name_in_use)
);

create index powder_newest on powder (flyer_id, created_at desc, id desc);

create table pin_batch (
    flyer_id uuid not null references flyer (id),
    id uuid not null,
    name varchar(80) not null,
    thread varchar(12) not null,
    lot varchar(80),
    note varchar(500),
    pulls integer not null,
    created_at timestamp(6) with time zone not null,
    archived_at timestamp(6) with time zone,
    version bigint not null,
    primary key (flyer_id, id)
);

create index pin_batch_newest on pin_batch (flyer_id, created_at desc, id desc);

create table pull_test (
    flyer_id uuid not null,
    id uuid not null,
    batch_id uuid not null,
    sequence integer not null,
    force_value varchar(48) not null,
    force_unit varchar(12) not null,
    at timestamp(6) with time zone not null,
    primary key (flyer_id, id),
    unique (flyer_id, batch_id, sequence),
    foreign key (flyer_id, batch_id) references pin_batch (flyer_id, id)
);
